import { cite } from '../references/index.js';
import type { WordCounts } from './counts.js';

/** What a rate would be at worst and at best, shares of 0 to 1. */
export interface MissingBounds {
  /** Had every missing outcome been "no". */
  readonly ifNo: number;
  /** Had every missing outcome been "yes". */
  readonly ifYes: number;
}

export const BOUNDS_CITES = [
  cite('manski1989', 'worst-case bounds of a share of which some are not observed', 'recalled'),
  cite('horowitzManski2000', 'the same where outcomes are missing', 'recalled'),
];

/**
 * Between which ends the rate lies whatever the missing outcomes were. They are no interval of
 * chance, and tell nothing that the counts do not. Cases whose window is open are in neither end.
 *
 * Source: manski1989 and horowitzManski2000, from memory.
 *
 * @param counts with at least one outcome, told or missing
 */
export function boundsOf({
  yes,
  no,
  missing,
}: Pick<WordCounts, 'yes' | 'no' | 'missing'>): MissingBounds {
  const all = yes + no + missing;
  return { ifNo: yes / all, ifYes: (yes + missing) / all };
}
