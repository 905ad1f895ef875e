import type { Assignment, Placed, Urgency } from '../../src/capacity/index.js';
import { type Instance, URGENCIES } from './instances.js';

/** What a plan is worth: items placed, then those of each urgency from the highest, then days. */
export type PlanRank = readonly number[];

/** The weights that the design gives the words, written once more. */
export const WEIGHT: Readonly<Record<Urgency, number>> = {
  routine: 1,
  urgent: 2,
  asap: 4,
  stat: 8,
};
const DAY_MS = 86_400_000;

/** Days off target by the weight of the urgency. */
export const weighted = (from: string, to: string, urgency: Urgency): number =>
  (WEIGHT[urgency] * Math.abs(Date.parse(from) - Date.parse(to))) / DAY_MS;

export function rankOf(placed: readonly Placed[], { items }: Instance): PlanRank {
  const of = placed.flatMap(({ key, on }) =>
    items.filter((item) => item.key === key).map((item) => ({ ...item, on })),
  );
  const counts = URGENCIES.map((urgency) => of.filter((item) => item.urgency === urgency).length);
  const days = of.reduce((sum, item) => sum + weighted(item.on, item.targetOn, item.urgency), 0);
  return [of.length, ...counts.reverse(), 0 - days];
}

/** Above 0 when the first plan is better. */
export function compareRanks(a: PlanRank, b: PlanRank): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

const serves = (session: string, item: string): boolean => session === item || session === 'both';

/** What is wrong with a plan, whether good or bad: nothing for one that can be carried out. */
export function faultsOf(plan: Assignment, { items, sessions }: Instance): readonly string[] {
  const said = [...plan.placed, ...plan.unplaced].map(({ key }) => key).sort();
  const known = items.map(({ key }) => key).sort();
  const outside = plan.placed.filter(
    ({ key, on, route }) =>
      !items.some(
        (item) =>
          item.key === key &&
          item.earliestOn <= on &&
          on <= item.latestOn &&
          serves(route, item.route),
      ),
  );
  const overbooked = plan.placed.filter(({ on, route }) => {
    const here = (each: { on: string; route: string }) => each.on === on && each.route === route;
    const places = sessions.filter(here).reduce((sum, session) => sum + session.places, 0);
    return plan.placed.filter(here).length > places;
  });
  const wronglyNone = plan.unplaced.filter(
    ({ key, why }) =>
      (why === 'no-session') ===
      items.some(
        (item) =>
          item.key === key &&
          sessions.some(
            ({ on, route, places }) =>
              places > 0 &&
              item.earliestOn <= on &&
              on <= item.latestOn &&
              serves(route, item.route),
          ),
      ),
  );
  return [
    ...(JSON.stringify(said) === JSON.stringify(known) ? [] : ['not each item once']),
    ...(outside.length === 0 ? [] : ['outside the window or route']),
    ...(overbooked.length === 0 ? [] : ['more items than places']),
    ...(wronglyNone.length === 0 ? [] : ['the reason is not true']),
    ...(plan.weightedDays === 0 - (rankOf(plan.placed, { items, sessions }).at(-1) ?? 0)
      ? []
      : ['the sum of days is not that of the plan']),
    ...(plan.shortfall.reduce((sum, { places }) => sum + places, 0) === plan.unplaced.length
      ? []
      : ['the shortfall is not what lacks']),
  ];
}
