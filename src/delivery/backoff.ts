import type { FailureClass } from '../pipeline/index.js';

/** Source: project definition (fixed defaults of the delivery). */
const BACKOFF = { baseMs: 2_000, factor: 2, capMs: 15 * 60_000 } as const;

/**
 * Attempts that a case may use up in each class that has a limit; the attempt that reaches it
 * is the last. Source: project definition.
 */
export const ATTEMPT_LIMITS = {
  unknown: 12,
  bounded: 8,
  'non-conformant-server': 5,
} as const satisfies Partial<Record<FailureClass, number>>;

/**
 * A case that was taken up this often without any result has stopped the program each time.
 * Larger than every limit above, so that it can be reached in no other way.
 */
export const POISON_LIMIT = 15;

/** How often to look again for a Patient that is not there yet, by the time waited so far. */
export const PATIENT_WAITS = [
  { untilMs: 60 * 60_000, everyMs: 5 * 60_000 },
  { untilMs: 24 * 60 * 60_000, everyMs: 60 * 60_000 },
  { untilMs: Number.POSITIVE_INFINITY, everyMs: 24 * 60 * 60_000 },
] as const;

/**
 * Waiting time before the next attempt, exponential with full jitter: anything between nothing
 * and the whole step, so that many cases do not come back at the same instant.
 *
 * @param failures failures before this wait, 0 or more
 * @param chance from 0 up to, not including, 1
 * @returns milliseconds
 */
export function backoffMs(failures: number, chance: number): number {
  const step = Math.min(BACKOFF.capMs, BACKOFF.baseMs * BACKOFF.factor ** failures);
  return Math.floor(step * chance);
}

/**
 * @param waitedMs how long the case has waited for its Patient
 * @param chance from 0 up to, not including, 1; spreads the next look over a tenth of the wait
 * @returns milliseconds until the next look
 */
export function patientWaitMs(waitedMs: number, chance: number): number {
  const row = PATIENT_WAITS.find((wait) => waitedMs < wait.untilMs) ?? PATIENT_WAITS[2];
  return Math.floor(row.everyMs * (1 + chance / 10));
}
