import { createRequire } from 'node:module';
import type { Urgency } from '../../src/capacity/index.js';
import { type Instance, URGENCIES } from './instances.js';
import { type PlanRank, WEIGHT, weighted } from './plan-rank.js';

// The types of the package describe its CommonJS form alone.
const { default: loadHighs }: typeof import('highs') = createRequire(import.meta.url)('highs');
const highs = await loadHighs();

interface Pair {
  readonly name: string;
  readonly item: number;
  readonly session: number;
  readonly urgency: Urgency;
  readonly cost: number;
}

/**
 * The best rank by linear programming (HiGHS): each item at most one place, each session at most
 * its places, one aim after the other, each held while the next is sought. The optimum of such a
 * programme is reached at whole numbers: the matrix of a transport problem is totally unimodular,
 * and what is held is a face of its polytope (Hoffman and Kruskal 1956, from memory).
 */
export function bestByLinearProgramme(instance: Instance): PlanRank {
  const pairs = pairsOf(instance);
  if (pairs.length === 0) return [0, 0, 0, 0, 0, 0];
  const limits = limitsOf(instance, pairs);
  const held: string[] = [];
  const seek = (aim: 'Maximize' | 'Minimize', sum: string): number => {
    if (sum === '') return 0;
    const model = `${aim}\n obj: ${sum}\nSubject To\n${[...limits, ...held].join('\n')}\nEnd\n`;
    const { Status, ObjectiveValue } = highs.solve(model);
    if (Status !== 'Optimal') throw new Error(`the programme is ${Status}`);
    const value = Math.round(ObjectiveValue);
    if (Math.abs(value - ObjectiveValue) > 1e-4) throw new Error('the optimum is not whole');
    held.push(` held${held.length}: ${sum} = ${value}`);
    return value;
  };
  const all = (of: readonly Pair[]) => of.map(({ name }) => name).join(' + ');
  const count = seek('Maximize', all(pairs));
  const byUrgency = [...URGENCIES]
    .reverse()
    .map((urgency) => seek('Maximize', all(pairs.filter((pair) => pair.urgency === urgency))));
  const off = pairs.filter(({ cost }) => cost > 0);
  const days = seek('Minimize', off.map(({ name, cost }) => `${cost} ${name}`).join(' + '));
  return [count, ...byUrgency, 0 - days];
}

/**
 * The same in one aim, to be solved again and again: each item placed is worth more than all the
 * days that others may lose, by the weight of its urgency.
 *
 * @returns what solves it and gives the days off target, weighted, less what the items are worth
 */
export function asOneProgramme(instance: Instance): { readonly solve: () => number } {
  const pairs = pairsOf(instance);
  const worth =
    1 +
    instance.items.reduce(
      (sum, { earliestOn, latestOn, urgency }) => sum + weighted(earliestOn, latestOn, urgency),
      0,
    );
  const sum = pairs
    .map(({ name, cost, urgency }) => `- ${worth * WEIGHT[urgency] - cost} ${name}`)
    .join(' ');
  const model = `Minimize\n obj: ${sum}\nSubject To\n${limitsOf(instance, pairs).join('\n')}\nEnd\n`;
  return {
    solve: () => {
      const { Status, ObjectiveValue } = highs.solve(model);
      if (Status !== 'Optimal') throw new Error(`the programme is ${Status}`);
      return ObjectiveValue;
    },
  };
}

function pairsOf({ items, sessions }: Instance): readonly Pair[] {
  return items.flatMap((item, i) =>
    sessions.flatMap(({ on, route, places }, s) => {
      const fits = route === item.route || route === 'both';
      if (!fits || places === 0 || on < item.earliestOn || on > item.latestOn) return [];
      const cost = weighted(on, item.targetOn, item.urgency);
      return [{ name: `x${i}_${s}`, item: i, session: s, urgency: item.urgency, cost }];
    }),
  );
}

function limitsOf({ items, sessions }: Instance, pairs: readonly Pair[]): readonly string[] {
  const limit = (name: string, of: readonly Pair[], most: number): readonly string[] =>
    of.length === 0 ? [] : [` ${name}: ${of.map((pair) => pair.name).join(' + ')} <= ${most}`];
  return [
    ...items.flatMap((_item, i) =>
      limit(
        `item${i}`,
        pairs.filter(({ item }) => item === i),
        1,
      ),
    ),
    ...sessions.flatMap(({ places }, s) =>
      limit(
        `session${s}`,
        pairs.filter(({ session }) => session === s),
        places,
      ),
    ),
  ];
}
