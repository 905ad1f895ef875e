import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { type Counts, checkCounts, checkShare, type Interval } from './counts.js';
import { normalQuantile } from './distributions.js';

export const WILSON_CITES = [
  cite('newcombe1998', 'method 3: score interval without continuity correction', 'recalled'),
];

/**
 * Wilson score interval of a proportion, without continuity correction:
 * centre = (x + z^2/2) / (n + z^2), half width = z sqrt(x (n - x) / n + z^2/4) / (n + z^2).
 *
 * Source: newcombe1998, method 3 (from memory).
 * Indeterminate: without an observation there is no rate.
 *
 * @param level of confidence, above 0 and below 1
 * @throws InvariantError when the counts or the level are none
 */
export function wilsonInterval(counts: Counts, level: number): Finding<Interval> {
  checkCounts(counts);
  checkShare('a level', level);
  const { events, of } = counts;
  if (of === 0) return indeterminate(['of']);
  const z = normalQuantile((1 + level) / 2);
  const centre = events + z ** 2 / 2;
  const half = z * Math.sqrt((events * (of - events)) / of + z ** 2 / 4);
  const weight = of + z ** 2;
  return determined(
    {
      // Exact at the ends, where the two terms cancel but for binary fractions.
      lower: events === 0 ? 0 : (centre - half) / weight,
      upper: events === of ? 1 : (centre + half) / weight,
    },
    WILSON_CITES,
  );
}
