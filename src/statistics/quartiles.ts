import { invariant } from '../kernel/index.js';

/** The middle of values and the ends of their middle half. */
export interface QuartileValues {
  readonly q1: number;
  readonly median: number;
  readonly q3: number;
}

/**
 * Quartiles by linear interpolation between ranks: rank 1 + (n - 1) p, as percentile_cont of SQL.
 *
 * Source: Hyndman RJ, Fan Y. Am Stat 1996;50:361-365, definition 7 (from memory).
 *
 * @returns undefined without a value
 * @throws InvariantError for a value that is no number
 */
export function quartiles(values: readonly number[]): QuartileValues | undefined {
  invariant(values.every(Number.isFinite), 'quartiles are of numbers');
  const sorted = values.toSorted((a, b) => a - b);
  if (sorted.length === 0) return undefined;
  const at = (share: number): number => {
    const rank = (sorted.length - 1) * share;
    const below = sorted[Math.floor(rank)] ?? 0;
    const above = sorted[Math.ceil(rank)] ?? 0;
    return below + (above - below) * (rank - Math.floor(rank));
  };
  return { q1: at(0.25), median: at(0.5), q3: at(0.75) };
}
