import { daysBetween } from '../kernel/index.js';
import { type OpenItem, type Route, SERVED_BY, type Session } from './demand.js';

/** All places of one day and route: which of them an item gets makes no difference. */
export interface Opening {
  readonly on: string;
  readonly route: Route;
  readonly places: number;
  /** Days from the first opening. */
  readonly day: number;
}

/** The openings by date, and for each route where those are that serve it. */
export interface Openings {
  readonly list: readonly Opening[];
  readonly serving: Readonly<Record<Route, Int32Array>>;
}

const ORDER: readonly Route[] = ['upper', 'lower', 'both'];

/** Adds up the sessions of a day and route; their order plays no part. */
export function toOpenings(sessions: readonly Session[]): Openings {
  const places = new Map<string, number>();
  for (const { on, route, places: more } of sessions) {
    const name = `${on} ${ORDER.indexOf(route)}`;
    if (more > 0) places.set(name, (places.get(name) ?? 0) + more);
  }
  const names = [...places.keys()].sort();
  const first = names[0]?.slice(0, 10) ?? '';
  const list = names.map((name): Opening => {
    const on = name.slice(0, 10);
    const route = ORDER[Number(name.slice(11))] ?? 'both';
    return { on, route, places: places.get(name) ?? 0, day: daysBetween(first, on) };
  });
  const serving = (route: Route): Int32Array =>
    Int32Array.from(
      [...list.keys()].filter((at) => SERVED_BY[route].includes(list[at]?.route ?? 'both')),
    );
  return {
    list,
    serving: { upper: serving('upper'), lower: serving('lower'), both: serving('both') },
  };
}

/** Where the openings are that serve an item inside its window, by date. */
export function openFor(item: OpenItem, { list, serving }: Openings): Int32Array {
  const all = serving[item.route];
  const firstWhere = (holds: (on: string) => boolean): number => {
    let [low, high] = [0, all.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (holds(list[all[middle] ?? 0]?.on ?? '')) high = middle;
      else low = middle + 1;
    }
    return low;
  };
  return all.subarray(
    firstWhere((on) => on >= item.earliestOn),
    firstWhere((on) => on > item.latestOn),
  );
}
