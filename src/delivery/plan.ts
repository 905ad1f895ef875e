import type { AttemptResult, Claim, FailureClass } from '../pipeline/index.js';
import { ATTEMPT_LIMITS, backoffMs, patientWaitMs } from './backoff.js';
import { PROBE_EVERY_MS } from './breaker.js';
import type { Failure, Verdict } from './verdict.js';

export interface PlanContext {
  /** Milliseconds since 1970. */
  readonly now: number;
  /** From 0 up to, not including, 1. */
  readonly chance: number;
  /** So many cases fail alike that the destination is at fault. */
  readonly destinationWide: boolean;
  /** Destination faults in a row, this one included. */
  readonly targetFailures: number;
}

/** What follows from one attempt: done, when to try again, or that a person must look at it. */
export function planResult(verdict: Verdict, claim: Claim, context: PlanContext): AttemptResult {
  switch (verdict.kind) {
    case 'delivered':
      return verdict;
    case 'waiting-patient': {
      const waitedMs = Math.max(0, context.now - Date.parse(claim.queuedAt));
      const afterMs = patientWaitMs(waitedMs, context.chance);
      return { kind: 'waiting-patient', reason: verdict.reason, afterMs };
    }
    case 'failed':
      return planFailure(verdict, claim, context);
  }
}

function planFailure(failure: Failure, claim: Claim, context: PlanContext): AttemptResult {
  const { failureClass, reason } = failure;
  switch (failureClass) {
    case 'case':
    case 'ambiguous':
      return { kind: 'dead-letter', failureClass, reason };
    case 'destination':
      return freeRetry(reason, failure.waitMs ?? shortWait(context));
    case 'bounded':
    case 'unknown':
    case 'non-conformant-server':
      if (context.destinationWide) {
        const afterMs = failure.waitMs ?? backoffMs(context.targetFailures, context.chance);
        return freeRetry(`Several records fail alike. ${reason}`, afterMs);
      }
      return countedRetry(failureClass, failure, claim, context);
  }
}

/** The breaker keeps the target at rest; the case itself is ready as soon as that ends. */
function shortWait(context: PlanContext): number {
  return Math.min(PROBE_EVERY_MS, backoffMs(context.targetFailures, context.chance));
}

function freeRetry(reason: string, afterMs: number): AttemptResult {
  return { kind: 'retry', failureClass: 'destination', reason, afterMs, counts: false };
}

function countedRetry(
  failureClass: Extract<FailureClass, keyof typeof ATTEMPT_LIMITS>,
  failure: Failure,
  claim: Claim,
  context: PlanContext,
): AttemptResult {
  const attempts = claim.attempts + 1;
  if (attempts >= ATTEMPT_LIMITS[failureClass]) {
    const reason = `Given up after ${attempts} attempts. ${failure.reason}`;
    return { kind: 'dead-letter', failureClass, reason };
  }
  const afterMs = failure.waitMs ?? backoffMs(claim.attempts, context.chance);
  return { kind: 'retry', failureClass, reason: failure.reason, afterMs, counts: true };
}
