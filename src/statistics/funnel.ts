import { invariant } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { checkShare, type Interval } from './counts.js';
import { binomialOrFewer } from './distributions.js';

export const FUNNEL_CITES = [
  cite('spiegelhalter2005', 'control limits of a proportion, normal form', 'published'),
];
export const EXACT_FUNNEL_CITES = [
  cite('funnelSmall2012', 'abstract: normal limits misjudge at low expected counts', 'published'),
];

/**
 * Limits between which the rate of a unit that meets the target is expected, by the normal
 * approximation: target +/- z sqrt(target (1 - target) / n), cut to 0 and 1. Not for small n.
 *
 * Source: spiegelhalter2005; z = 1.96 for 95 % and 3.09 for 99.8 % from memory.
 *
 * @param target share of 0 to 1, ends included
 * @param of observations of the unit, 1 or more
 * @param z quantile of the normal distribution, positive
 * @throws InvariantError for anything else
 */
export function normalFunnelLimits(target: number, of: number, z: number): Interval {
  checkTarget(target, of);
  invariant(z > 0 && Number.isFinite(z), 'z is positive');
  const half = z * Math.sqrt((target * (1 - target)) / of);
  return { lower: Math.max(0, target - half), upper: Math.min(1, target + half) };
}

/**
 * The same limits from the binomial distribution itself, for any n. Rates strictly outside are
 * beyond expectation: under the target each side has at most half of what the level leaves.
 *
 * Source: funnelSmall2012 asks for them; the counts follow from the distribution.
 *
 * @param level share of units at the target that lie within, above 0 and below 1
 * @throws InvariantError for a target outside 0 to 1, no observation or no such level
 */
export function exactFunnelLimits(target: number, of: number, level: number): Interval {
  checkTarget(target, of);
  checkShare('a level', level);
  const tail = (1 - level) / 2;
  return {
    lower: fewest(target, of, tail) / of,
    upper: (of - fewest(1 - target, of, tail)) / of,
  };
}

/** The fewest events that are expected: these or fewer have more than the tail. */
function fewest(probability: number, of: number, tail: number): number {
  let below = -1;
  let found = of;
  while (found - below > 1) {
    const middle = Math.floor((below + found) / 2);
    if (binomialOrFewer(middle, of, probability) > tail) found = middle;
    else below = middle;
  }
  return found;
}

function checkTarget(target: number, of: number): void {
  invariant(0 <= target && target <= 1, 'a target lies between 0 and 1');
  invariant(Number.isSafeInteger(of) && of > 0, 'a rate has observations');
}
