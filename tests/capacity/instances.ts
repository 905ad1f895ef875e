import fc from 'fast-check';
import type { OpenItem, Route, Session, Urgency } from '../../src/capacity/index.js';

export interface Instance {
  readonly items: readonly OpenItem[];
  readonly sessions: readonly Session[];
}

/** A day of an invented calendar that begins on 27 December 2027: year's end and a leap day. */
export const dayNumber = (day: number): string =>
  new Date(Date.UTC(2027, 11, 27 + day)).toISOString().slice(0, 10);

export const ROUTES: readonly Route[] = ['upper', 'lower', 'both'];
export const URGENCIES: readonly Urgency[] = ['routine', 'urgent', 'asap', 'stat'];

/** An item from the days of its window on that calendar. */
export const itemOf = (
  key: string,
  route: Route,
  urgency: Urgency,
  [earliest, target, latest]: readonly [number, number, number],
): OpenItem => ({
  key,
  route,
  urgency,
  earliestOn: dayNumber(earliest),
  targetOn: dayNumber(target),
  latestOn: dayNumber(latest),
});

interface Size {
  readonly items: number;
  readonly sessions: number;
  readonly days: number;
  readonly places: number;
}

/** Instances up to a size; sessions of one day and route may come more than once. */
export function instances({ items, sessions, days, places }: Size): fc.Arbitrary<Instance> {
  const day = fc.nat(days - 1);
  const window = fc
    .tuple(day, day, day)
    .map((d) => d.sort((a, b) => a - b) as [number, number, number]);
  const item = fc.tuple(fc.constantFrom(...ROUTES), fc.constantFrom(...URGENCIES), window);
  const session = fc.record({
    on: day.map(dayNumber),
    route: fc.constantFrom(...ROUTES),
    places: fc.nat(places),
  });
  return fc.record({
    items: fc
      .array(item, { maxLength: items })
      .map((list) => list.map((each, i) => itemOf(`item-${i}`, ...each))),
    sessions: fc.array(session, { maxLength: sessions }),
  });
}
