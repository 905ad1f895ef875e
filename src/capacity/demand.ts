import { invariant, isCalendarDate } from '../kernel/index.js';
import { URGENCY_WEIGHTS, type Urgency } from './urgency.table.js';

/**
 * The way in: of an item, which it needs; of a session, which it offers. `both` needs, or offers,
 * the two at one visit, in one place.
 */
export type Route = 'upper' | 'lower' | 'both';

/** A check that is due and has no appointment yet. */
export interface OpenItem {
  /** Unlike that of any other item. */
  readonly key: string;
  readonly route: Route;
  /** First day of the window, YYYY-MM-DD. */
  readonly earliestOn: string;
  /** The day that the plan asks for, inside the window. */
  readonly targetOn: string;
  /** Last day of the window, itself a part of it. */
  readonly latestOn: string;
  readonly urgency: Urgency;
}

/** Places of a day. Several sessions of one day and route count together. */
export interface Session {
  readonly on: string;
  readonly route: Route;
  /** Whole, 0 or more; an item takes one, whatever its route. */
  readonly places: number;
}

/** Which sessions have what an item needs. */
export const SERVED_BY: Readonly<Record<Route, readonly Route[]>> = {
  upper: ['upper', 'both'],
  lower: ['lower', 'both'],
  both: ['both'],
};

/** @throws InvariantError when keys repeat, a date is none, or a window is out of order */
export function checkItems(items: readonly OpenItem[]): void {
  invariant(
    new Set(items.map(({ key }) => key)).size === items.length,
    'each item has its own key',
  );
  for (const { route, earliestOn, targetOn, latestOn, urgency } of items) {
    invariant(
      [earliestOn, targetOn, latestOn].every(isCalendarDate) &&
        earliestOn <= targetOn &&
        targetOn <= latestOn,
      'a window is three dates in order',
    );
    invariant(Object.hasOwn(SERVED_BY, route), 'an item has a route');
    invariant(Object.hasOwn(URGENCY_WEIGHTS, urgency), 'an item has an urgency');
  }
}

/** @throws InvariantError when a session has no date or route, or no whole number of places */
export function checkSessions(sessions: readonly Session[]): void {
  for (const { on, route, places } of sessions) {
    invariant(isCalendarDate(on), 'a session is on a date');
    invariant(Object.hasOwn(SERVED_BY, route), 'a session has a route');
    invariant(Number.isSafeInteger(places) && places >= 0, 'places are whole, 0 or more');
  }
}
