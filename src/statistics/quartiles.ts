import { invariant } from '../kernel/index.js';

/** The middle of values and the ends of their middle half. */
export interface QuartileValues {
  readonly q1: number;
  readonly median: number;
  readonly q3: number;
}

/** A value and how often it occurs. */
export interface CountedValue {
  readonly value: number;
  readonly count: number;
}

/**
 * Quartiles by linear interpolation between ranks: rank 1 + (n - 1) p, as percentile_cont of SQL.
 *
 * Source: Hyndman RJ, Fan Y. Am Stat 1996;50:361-365, definition 7 (from memory).
 *
 * @returns undefined without a value
 * @throws InvariantError for a value that is no number
 */
export function quartilesOfCounted(values: readonly CountedValue[]): QuartileValues | undefined {
  invariant(
    values.every(({ value }) => Number.isFinite(value)),
    'quartiles are of numbers',
  );
  const sorted = values.filter(({ count }) => count > 0).toSorted((a, b) => a.value - b.value);
  const n = sorted.reduce((sum, { count }) => sum + count, 0);
  if (n === 0) return undefined;
  const at = (share: number): number => {
    const rank = (n - 1) * share;
    const below = valueAt(sorted, Math.floor(rank));
    const above = valueAt(sorted, Math.ceil(rank));
    return below + (above - below) * (rank - Math.floor(rank));
  };
  return { q1: at(0.25), median: at(0.5), q3: at(0.75) };
}

/** The same of values that are told one by one. */
export const quartiles = (values: readonly number[]): QuartileValues | undefined =>
  quartilesOfCounted(values.map((value) => ({ value, count: 1 })));

/** @param rank counted from 0 */
function valueAt(sorted: readonly CountedValue[], rank: number): number {
  let left = rank;
  for (const { value, count } of sorted) {
    if (left < count) return value;
    left -= count;
  }
  return sorted.at(-1)?.value ?? 0;
}
