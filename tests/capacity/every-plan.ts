import type { Placed } from '../../src/capacity/index.js';
import type { Instance } from './instances.js';
import { compareRanks, type PlanRank, rankOf } from './plan-rank.js';

/** The best rank of all plans there are: every item tried at every session, and without one. */
export function bestOfEveryPlan(instance: Instance): PlanRank {
  const { items, sessions } = instance;
  const left = sessions.map(({ places }) => places);
  let best = rankOf([], instance);
  const place = (at: number, placed: readonly Placed[]): void => {
    const item = items[at];
    if (item === undefined) {
      const rank = rankOf(placed, instance);
      if (compareRanks(rank, best) > 0) best = rank;
      return;
    }
    place(at + 1, placed);
    for (const [s, { on, route }] of sessions.entries()) {
      const fits = route === item.route || route === 'both';
      if (!fits || on < item.earliestOn || on > item.latestOn || (left[s] ?? 0) === 0) continue;
      left[s] = (left[s] ?? 0) - 1;
      place(at + 1, [...placed, { key: item.key, on, route }]);
      left[s] = (left[s] ?? 0) + 1;
    }
  };
  place(0, []);
  return best;
}
