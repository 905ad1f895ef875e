import type { Placed, Route, Session } from '../capacity/index.js';
import { daysBetween } from '../kernel/index.js';
import type { VisitToCome } from './visits-to-come.js';

/** A day outside the window of a visit; whether it may be is for a person to say. */
export interface NearestPlace {
  readonly on: string;
  /** Of the session. */
  readonly session: Route;
  /** From the nearest day of the window; negative: before it. */
  readonly daysOutside: number;
}

/** Which sessions an examination can be in. */
const SERVES = { upper: ['upper', 'both'], lower: ['lower', 'both'] } as const;

/**
 * For each visit the place nearest to its window, of two the earlier, among those that are left.
 * Visits choose in their order, and none is given twice.
 *
 * @param placed what has a place already
 */
export function nearestPlaces(
  visits: readonly VisitToCome[],
  sessions: readonly Session[],
  placed: readonly Placed[],
): readonly (NearestPlace | undefined)[] {
  const [firstOn = ''] = sessions.map(({ on }) => on).sort();
  const openings = new Map<string, Opening>();
  const add = (on: string, session: Route, places: number): void => {
    const name = `${on} ${session}`;
    const day = openings.get(name)?.day ?? daysBetween(firstOn, on);
    openings.set(name, { on, session, day, left: (openings.get(name)?.left ?? 0) + places });
  };
  for (const { on, route, places } of sessions) add(on, route, places);
  for (const { on, route } of placed) add(on, route, -1);
  const names = [...openings.keys()].sort();
  return visits.map((visit) => {
    const first = daysBetween(firstOn, visit.earliestOn);
    const last = daysBetween(firstOn, visit.latestOn);
    let best: NearestPlace | undefined;
    for (const name of names) {
      const { on, session, day, left } = openings.get(name) ?? NONE;
      if (left < 1 || !isServed(visit, session)) continue;
      const daysOutside = day < first ? day - first : day - last;
      if (best !== undefined && Math.abs(best.daysOutside) <= Math.abs(daysOutside)) continue;
      best = { on, session, daysOutside };
    }
    if (best !== undefined) add(best.on, best.session, -1);
    return best;
  });
}

interface Opening {
  readonly on: string;
  readonly session: Route;
  /** From the first session. */
  readonly day: number;
  readonly left: number;
}

const NONE: Opening = { on: '', session: 'both', day: 0, left: 0 };

const isServed = ({ followUps: [first] }: VisitToCome, session: Route): boolean =>
  first !== undefined && SERVES[first.item.route].some((route) => route === session);
