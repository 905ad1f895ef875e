import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { type Counts, checkCounts, checkShare, type Interval } from './counts.js';
import { betaQuantile } from './distributions.js';

export const CLOPPER_PEARSON_CITES = [
  cite('clopperPearson1934', 'exact interval; as quantiles of beta distributions', 'recalled'),
];

/**
 * Exact interval of a proportion: the rates under which as many events or more, and as few or
 * fewer, have half of what the level leaves. The ends are quantiles of beta distributions and
 * are right to seven digits, which is what the library gives.
 *
 * Source: clopperPearson1934 (from memory).
 * Indeterminate: without an observation there is no rate.
 *
 * @param level of confidence, above 0 and below 1
 * @throws InvariantError when the counts or the level are none
 */
export function clopperPearsonInterval(counts: Counts, level: number): Finding<Interval> {
  checkCounts(counts);
  checkShare('a level', level);
  const { events, of } = counts;
  if (of === 0) return indeterminate(['of']);
  const tail = (1 - level) / 2;
  return determined(
    {
      lower: events === 0 ? 0 : betaQuantile(tail, events, of - events + 1),
      upper: events === of ? 1 : betaQuantile(1 - tail, events + 1, of - events),
    },
    CLOPPER_PEARSON_CITES,
  );
}
