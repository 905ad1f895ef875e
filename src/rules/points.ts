import type { Citation } from '../kernel/index.js';
import { invariant } from '../kernel/index.js';
import {
  type Condition,
  type ConditionOn,
  isNeeds,
  type Needs,
  type Read,
  truthOf,
} from './condition.js';
import { missingFields, possibleResults, type Question } from './question.js';

/** An item of a score: what it asks for, and its points, which may be negative. */
export interface Item<When = Condition> {
  readonly item: string;
  readonly when: When;
  readonly points: number;
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** The items of a score over one kind of question. */
export type ItemsOf<Q> = readonly Item<ConditionOn<Q>>[];

/** A sum of points, or what is missing for it and between which totals it then lies. */
export type Total =
  | { readonly kind: 'total'; readonly total: number; readonly counted: readonly Item[] }
  | {
      readonly kind: 'indeterminate';
      readonly missing: readonly string[];
      readonly lowest: number;
      readonly highest: number;
    };

/**
 * Adds up the items that hold. A total is never below 0.
 *
 * @returns without a total, its possible range: each missing field with every value it can take
 */
export function addUp(items: readonly Item[], question: Question): Total {
  const sums = [...possibleResults(question, (read) => countedItems(items, read))];
  const totals = sums.map(totalOf);
  const [counted] = sums;
  invariant(counted !== undefined, 'every field of a question has a value to try out');
  const missing = missingFields(question);
  if (missing.length === 0) return { kind: 'total', total: totalOf(counted), counted };
  return {
    kind: 'indeterminate',
    missing,
    lowest: Math.min(...totals),
    highest: Math.max(...totals),
  };
}

const totalOf = (counted: readonly Item[]): number =>
  Math.max(
    0,
    counted.reduce((sum, { points }) => sum + points, 0),
  );

function countedItems(items: readonly Item[], read: Read): readonly Item[] | Needs {
  const truths = items.map((item) => ({ item, truth: truthOf(item.when, read) }));
  const needs = truths.map(({ truth }) => truth).find(isNeeds);
  return needs ?? truths.filter(({ truth }) => truth === true).map(({ item }) => item);
}
