import { invariant } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { checkShare } from './counts.js';

export const CUSUM_CITES = [
  cite('cusumPrograms', 'sequential form; second source, identical to the letter', 'recalled'),
];

/** What a learning curve is held to; shares of 0 to 1. */
export interface CusumAims {
  /** Failure rate that is acceptable. */
  readonly acceptable: number;
  /** Failure rate that is not; higher. */
  readonly unacceptable: number;
  /** Risk to call an acceptable rate unacceptable. */
  readonly alpha: number;
  /** Risk to call an unacceptable rate acceptable. */
  readonly beta: number;
}

/** How the curve moves, and where it crosses a limit. */
export interface CusumParameters {
  /** A success lowers the curve by this, a failure raises it by the rest to 1. */
  readonly step: number;
  /** At or above it the rate is unacceptable. */
  readonly upperLimit: number;
  /** At or below it the rate is acceptable; negative. */
  readonly lowerLimit: number;
  /** Successes in a row that lead from 0 to the lower limit. */
  readonly successesToLower: number;
}

/**
 * Step and limits of the cumulative sum of a learning curve, as a sequential test:
 * P = ln(p1/p0), Q = ln((1-p0)/(1-p1)), step = Q/(P+Q), limits ln((1-beta)/alpha)/(P+Q) and
 * -ln((1-alpha)/beta)/(P+Q).
 *
 * Source: cusumPrograms (second source).
 *
 * @throws InvariantError unless 0 < p0 < p1 < 1, and the risks are positive and below 1 together
 */
export function cusumParameters(aims: CusumAims): CusumParameters {
  const { acceptable: p0, unacceptable: p1, alpha, beta } = aims;
  for (const [name, value] of Object.entries(aims)) checkShare(name, value);
  invariant(p0 < p1, 'an unacceptable rate is above the acceptable one');
  invariant(alpha + beta < 1, 'both risks together are below 1');
  const p = Math.log(p1 / p0);
  const q = Math.log((1 - p0) / (1 - p1));
  const lower = Math.log((1 - alpha) / beta);
  return {
    step: q / (p + q),
    upperLimit: Math.log((1 - beta) / alpha) / (p + q),
    lowerLimit: -lower / (p + q),
    successesToLower: wholeFrom(lower / q),
  };
}

/** The next whole number; one that binary fractions missed by less than 1 in 10^12 is reached. */
const wholeFrom = (value: number): number => Math.ceil(value - value * 1e-12);
