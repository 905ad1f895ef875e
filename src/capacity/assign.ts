import { compareTexts, daysBetween } from '../kernel/index.js';
import { cheapestPlaces, NO_PLACE, type Seeker } from './cheapest-places.js';
import { checkItems, checkSessions, type OpenItem, type Route, type Session } from './demand.js';
import { type Openings, openFor, toOpenings } from './openings.js';
import { type Shortfall, shortfallOf } from './shortfall.js';
import { URGENCY_WEIGHTS } from './urgency.table.js';

/** An item and the day it gets. */
export interface Placed {
  readonly key: string;
  readonly on: string;
  /** Of the session: an item for one route may have a place where both are offered. */
  readonly route: Route;
}

/** An item that gets no day inside its window. */
export interface Unplaced {
  readonly key: string;
  readonly route: Route;
  readonly targetOn: string;
  /** No session serves its route inside its window, or others have all the places. */
  readonly why: 'no-session' | 'full';
}

export interface Assignment {
  /** By date, then key. */
  readonly placed: readonly Placed[];
  /** By target, then key. */
  readonly unplaced: readonly Unplaced[];
  readonly shortfall: readonly Shortfall[];
  /** Days between place and target, each by the weight of its urgency, added up. */
  readonly weightedDays: number;
}

/**
 * Gives open items to places inside their windows: as many items as can have one; among such
 * plans the more urgent items first; among those the least sum of days off target, each weighted
 * by urgency. Exact: no other plan is better. Which of several equal plans is chosen depends on
 * the items and sessions alone, never on the order they come in.
 *
 * @throws InvariantError when an item or a session is none
 */
export function assignPlaces(items: readonly OpenItem[], sessions: readonly Session[]): Assignment {
  checkItems(items);
  checkSessions(sessions);
  const ordered = [...items].sort(byUrgencyThenWindow);
  const openings = toOpenings(sessions);
  const seekers = toSeekers(ordered, openings);
  const openingOf = cheapestPlaces({
    places: Int32Array.from(openings.list, ({ places }) => Math.min(places, items.length)),
    day: Int32Array.from(openings.list, ({ day }) => day),
    seekers,
  });
  return report(ordered, seekers, openings, openingOf);
}

/** Keys decide last, so that the order is the same whatever order came in. */
function byUrgencyThenWindow(a: OpenItem, b: OpenItem): number {
  return (
    URGENCY_WEIGHTS[b.urgency] - URGENCY_WEIGHTS[a.urgency] ||
    compareTexts(a.latestOn, b.latestOn) ||
    compareTexts(a.targetOn, b.targetOn) ||
    compareTexts(a.key, b.key)
  );
}

/**
 * Going without costs more, for each unit of weight, than all deviations together, so no day saved
 * is worth an item. Nor is a count of urgent items ever paid for with more of the less urgent:
 * sets of items that can be placed together are the independent sets of a matroid, where any
 * falling weights above 0 have the same best set, and it is one of the largest.
 *
 * Source: Edmonds and Fulkerson 1965, transversals and matroid partition; Edmonds 1971, matroids
 * and the greedy algorithm (both from memory).
 */
function toSeekers(items: readonly OpenItem[], openings: Openings): readonly Seeker[] {
  const first = openings.list[0]?.on;
  const seekers = items.map((item) => ({
    open: openFor(item, openings),
    target: first === undefined ? 0 : daysBetween(first, item.targetOn),
    weight: URGENCY_WEIGHTS[item.urgency],
  }));
  const mostDays = items.map(({ earliestOn, latestOn }) => daysBetween(earliestOn, latestOn));
  const above = 1 + seekers.reduce((sum, { weight }, i) => sum + weight * (mostDays[i] ?? 0), 0);
  return seekers.map((seeker) => ({ ...seeker, leftOut: above * seeker.weight }));
}

function report(
  items: readonly OpenItem[],
  seekers: readonly Seeker[],
  { list }: Openings,
  openingOf: Int32Array,
): Assignment {
  const placed: Placed[] = [];
  const unplaced: Unplaced[] = [];
  let weightedDays = 0;
  for (const [i, { key, route, targetOn, urgency }] of items.entries()) {
    const opening = list[openingOf[i] ?? NO_PLACE];
    if (opening === undefined) {
      const why = seekers[i]?.open.length === 0 ? 'no-session' : 'full';
      unplaced.push({ key, route, targetOn, why });
      continue;
    }
    placed.push({ key, on: opening.on, route: opening.route });
    weightedDays += URGENCY_WEIGHTS[urgency] * Math.abs(daysBetween(opening.on, targetOn));
  }
  placed.sort((a, b) => compareTexts(a.on, b.on) || compareTexts(a.key, b.key));
  unplaced.sort((a, b) => compareTexts(a.targetOn, b.targetOn) || compareTexts(a.key, b.key));
  return { placed, unplaced, shortfall: shortfallOf(unplaced), weightedDays };
}
