import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { type Counts, checkCounts } from './counts.js';

export const RATE_CITES = [cite('esdPractice', 'events over observations', 'derived')];

/**
 * Share of observations with the event, in percent, unrounded.
 *
 * Source: arithmetic.
 * Indeterminate: without an observation there is no rate.
 *
 * @throws InvariantError when the counts are none
 */
export function ratePercent(counts: Counts): Finding<number> {
  checkCounts(counts);
  if (counts.of === 0) return indeterminate(['of']);
  return determined((100 * counts.events) / counts.of, RATE_CITES);
}
