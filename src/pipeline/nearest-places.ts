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
  const left = new Map<string, number>();
  const add = (on: string, route: Route, places: number): void => {
    const name = `${on} ${route}`;
    left.set(name, (left.get(name) ?? 0) + places);
  };
  for (const { on, route, places } of sessions) add(on, route, places);
  for (const { on, route } of placed) add(on, route, -1);
  const days = [...new Map(sessions.map((one) => [`${one.on} ${one.route}`, one])).entries()];
  days.sort(([a], [b]) => (a < b ? -1 : 1));
  return visits.map((visit) => {
    let best: NearestPlace | undefined;
    for (const [name, { on, route }] of days) {
      if ((left.get(name) ?? 0) < 1 || !isServed(visit, route)) continue;
      const daysOutside = outside(visit, on);
      if (best !== undefined && Math.abs(best.daysOutside) <= Math.abs(daysOutside)) continue;
      best = { on, session: route, daysOutside };
    }
    if (best !== undefined) add(best.on, best.session, -1);
    return best;
  });
}

const isServed = ({ followUps: [first] }: VisitToCome, session: Route): boolean =>
  first !== undefined && SERVES[first.item.route].some((route) => route === session);

const outside = ({ earliestOn, latestOn }: VisitToCome, on: string): number =>
  on < earliestOn ? daysBetween(earliestOn, on) : daysBetween(latestOn, on);
