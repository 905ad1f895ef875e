import type { CheckedBundle } from '../conformance/index.js';
import { type Checked, failed } from '../kernel/index.js';
import type { AttemptResult, Claim, Outbox } from '../pipeline/index.js';
import { POISON_LIMIT } from './backoff.js';
import type { Clock } from './clock.js';
import type { Gate } from './gate.js';
import { holdLease } from './lease.js';
import type { DeliveryLog } from './log.js';
import type { Target } from './target.js';
import type { Failure, Verdict } from './verdict.js';

export interface AttemptDeps {
  readonly outbox: Outbox;
  readonly prepare: (version: string) => Checked<CheckedBundle> | Promise<Checked<CheckedBundle>>;
  readonly target: Target;
  readonly clock: Clock;
  readonly log: DeliveryLog;
  readonly gate: Gate;
  readonly leaseMs: number;
}

/**
 * Works on one claim from beginning to end, and never throws: a fault of the store while the
 * result is written leaves the claim to its lease, after which the attempt is repeated.
 *
 * @param stopNow breaks the work off; the claim is then given back unharmed
 */
export async function attend(claim: Claim, deps: AttemptDeps, stopNow: AbortSignal): Promise<void> {
  const lease = holdLease(claim, deps);
  try {
    const verdict = await attempt(claim, deps, AbortSignal.any([stopNow, lease.lost]));
    if (lease.lost.aborted) return deps.log('claim-lost', fields(claim));

    const stopped = stopNow.aborted && verdict.kind === 'failed' && verdict.fault === 'stopped';
    const result = stopped ? RELEASE : deps.gate.learn(claim, verdict);
    const written = await deps.outbox.settle(claim, result);
    if (!written) return deps.log('claim-lost', fields(claim));
    report(claim, verdict, stopped ? 'released' : eventOf(result), deps.log);
  } catch {
    deps.log('store-unavailable', fields(claim));
  } finally {
    lease.end();
  }
}

/** Gives a claim back unharmed, to be taken up again at once. */
export async function giveBack(claim: Claim, outbox: Outbox): Promise<void> {
  await outbox.settle(claim, RELEASE);
}

const RELEASE: AttemptResult = {
  kind: 'retry',
  failureClass: 'unknown',
  reason: 'The service was stopped in the middle of an attempt.',
  afterMs: 0,
  counts: false,
};

const STOPPED: Failure = {
  kind: 'failed',
  failureClass: 'unknown',
  fault: 'stopped',
  reason: RELEASE.reason,
  hold: false,
};

async function attempt(claim: Claim, deps: AttemptDeps, signal: AbortSignal): Promise<Verdict> {
  if (claim.attempts >= POISON_LIMIT) {
    const reason = `The record was taken up ${claim.attempts} times without any result.`;
    return caseFault('poison', reason);
  }
  const prepared = await prepare(claim, deps);
  if (!prepared.ok) {
    const rules = [...new Set(prepared.problems.map(({ rule }) => rule))].slice(0, 20).join(', ');
    return caseFault('not-conformant', `The record does not pass its checks: ${rules}.`);
  }
  if (signal.aborted) return STOPPED;
  try {
    return await deps.target.deliver(prepared.value, signal);
  } catch {
    return caseFault('internal', 'The record could not be turned into a transaction.');
  }
}

async function prepare(claim: Claim, deps: AttemptDeps): Promise<Checked<CheckedBundle>> {
  try {
    return await deps.prepare(claim.version);
  } catch {
    const message = 'The record could not be mapped; this is a fault of the program.';
    return failed([{ rule: 'internal', pointer: '', message, expected: 'a mapped record' }]);
  }
}

const caseFault = (fault: string, reason: string): Failure => ({
  kind: 'failed',
  failureClass: 'case',
  fault,
  reason,
  hold: false,
});

function eventOf(result: AttemptResult) {
  return result.kind === 'retry' ? 'retry-planned' : result.kind;
}

function report(
  claim: Claim,
  verdict: Verdict,
  event: ReturnType<typeof eventOf> | 'released',
  log: DeliveryLog,
): void {
  const failure = verdict.kind === 'failed' ? verdict : undefined;
  const all = {
    ...fields(claim),
    ...(failure === undefined ? {} : { class: failure.failureClass, fault: failure.fault }),
    ...(failure?.status === undefined ? {} : { status: failure.status }),
  };
  log(event, all);
  if (failure?.failureClass === 'non-conformant-server') log('non-conformant-server', all);
}

const fields = (claim: Claim) => ({
  caseId: claim.caseId,
  state: claim.state,
  attempt: claim.attempts + 1,
});
