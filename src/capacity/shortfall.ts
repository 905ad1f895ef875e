import type { Route } from './demand.js';

/** How many places lack for a route in a month: the items without one whose target lies in it. */
export interface Shortfall {
  /** YYYY-MM */
  readonly month: string;
  readonly route: Route;
  readonly places: number;
}

/** By month, then route; a month and route where nothing lacks has no row. */
export function shortfallOf(
  unplaced: readonly { readonly route: Route; readonly targetOn: string }[],
): readonly Shortfall[] {
  const rows = new Map<string, Shortfall>();
  for (const { route, targetOn } of unplaced) {
    const month = targetOn.slice(0, 7);
    const name = `${month} ${route}`;
    rows.set(name, { month, route, places: (rows.get(name)?.places ?? 0) + 1 });
  }
  return [...rows.keys()].sort().flatMap((name) => rows.get(name) ?? []);
}
