import { checkShare } from './counts.js';
import type { CusumParameters } from './cusum.js';

/** Where the curves stand after one observation. */
export interface CusumStep {
  readonly failed: boolean;
  /** Failures less the target for each observation; rising is worse. */
  readonly simple: number;
  /** Sequential test: a success lowers it by the step, a failure raises it by the rest to 1. */
  readonly sequential: number;
  /** Which limit this observation reached; the test then starts anew at 0. */
  readonly reached?: 'acceptable' | 'unacceptable';
}

/**
 * Both forms of the cumulative sum of a learning curve, one step an observation.
 *
 * Source: cusumPrograms (second source). That the test starts anew at a limit is common practice.
 *
 * @param target failure rate of the simple form, between 0 and 1
 * @throws InvariantError for another target
 */
export function cusumCurve(
  failures: readonly boolean[],
  target: number,
  { step, upperLimit, lowerLimit }: CusumParameters,
): readonly CusumStep[] {
  checkShare('a target', target);
  let failed = 0;
  let sequential = 0;
  return failures.map((isFailure, i) => {
    failed += Number(isFailure);
    const value = sequential + (isFailure ? 1 - step : -step);
    const reached = limitAt(value, upperLimit, lowerLimit);
    sequential = reached === undefined ? value : 0;
    return {
      failed: isFailure,
      // From the counts, so that binary fractions do not add up.
      simple: failed - (i + 1) * target,
      sequential: value,
      ...(reached === undefined ? {} : { reached }),
    };
  });
}

/** Sums of many steps miss a limit by a binary fraction; that much is reached. */
const NEAR = 1e-9;

function limitAt(value: number, upper: number, lower: number): CusumStep['reached'] {
  if (value >= upper - NEAR) return 'unacceptable';
  return value <= lower + NEAR ? 'acceptable' : undefined;
}
