import type { AttemptResult, Claim } from '../pipeline/index.js';
import { backoffMs } from './backoff.js';
import { type BreakerEvent, type BreakerState, initialBreaker, stepBreaker } from './breaker.js';
import type { Clock } from './clock.js';
import type { DeliveryLog } from './log.js';
import { planResult } from './plan.js';
import type { ProbeResult } from './probe.js';
import { addFailure, isDestinationWide, noSpread, type Spread } from './spread.js';
import type { Target } from './target.js';
import type { Failure, Verdict } from './verdict.js';

/** How the target stands, for readiness and for people. */
export interface TargetHealth {
  readonly state: BreakerState['kind'] | 'paused';
  /** Why it is not in use, a plain sentence without patient data. */
  readonly reason?: string;
}

/** Keeps the target from being asked when it cannot answer, and tells of its going and coming. */
export interface Gate {
  /** How many records may be in flight now, at most `wanted`. */
  permits(wanted: number): number;
  /** Milliseconds until a closed gate may open, undefined while it is open. */
  waitMs(): number | undefined;
  /** Probes the target if that is due; a probe that was aborted teaches nothing. */
  probeIfDue(target: Target, signal: AbortSignal): Promise<void>;
  /** Learns from an attempt. @returns what is to become of the case */
  learn(claim: Claim, verdict: Verdict): AttemptResult;
  health(): TargetHealth;
}

export interface GateDeps {
  readonly clock: Clock;
  /** From 0 up to, not including, 1. */
  readonly chance: () => number;
  readonly log: DeliveryLog;
}

interface Standing {
  breaker: BreakerState;
  spread: Spread;
  pausedUntil: number;
  reason: string | undefined;
}

export function createGate(deps: GateDeps): Gate {
  const now = () => deps.clock.now();
  const standing: Standing = {
    breaker: initialBreaker(now()),
    spread: noSpread,
    pausedUntil: 0,
    reason: undefined,
  };
  return {
    permits: (wanted) => permits(standing, wanted, now()),
    waitMs: () => waitMs(standing, now()),
    probeIfDue: async (target, signal) => {
      const { breaker } = standing;
      if (breaker.kind !== 'starting' && breaker.kind !== 'open') return;
      if (breaker.probeAt > now()) return;
      const result = await target.probe(signal);
      if (!signal.aborted) learnProbe(standing, deps, result);
    },
    learn: (claim, verdict) => learn(standing, deps, claim, verdict),
    health: () => {
      const { breaker, reason } = standing;
      const paused = breaker.kind === 'closed' && standing.pausedUntil > now();
      const known = reason === undefined ? {} : { reason };
      return { state: paused ? 'paused' : breaker.kind, ...known };
    },
  };
}

function permits(standing: Standing, wanted: number, now: number): number {
  if (standing.pausedUntil > now) return 0;
  switch (standing.breaker.kind) {
    case 'closed':
      return wanted;
    case 'half-open':
      return Math.min(1, wanted);
    case 'starting':
    case 'open':
      return 0;
  }
}

function waitMs(standing: Standing, now: number): number | undefined {
  const { breaker } = standing;
  if (breaker.kind === 'starting' || breaker.kind === 'open') {
    return Math.max(0, breaker.probeAt - now);
  }
  return standing.pausedUntil > now ? standing.pausedUntil - now : undefined;
}

function step(standing: Standing, deps: GateDeps, event: BreakerEvent, fault?: Cause): void {
  const { state, alert } = stepBreaker(standing.breaker, event);
  standing.breaker = state;
  if (state.kind === 'closed') standing.reason = undefined;
  if (fault !== undefined && state.kind !== 'closed') standing.reason = fault.reason;
  if (alert === 'up') deps.log('target-up', {});
  if (alert === 'down') deps.log('target-down', causeFields(fault));
}

type Cause = Pick<Failure, 'fault' | 'reason' | 'status'>;

const causeFields = (cause: Cause | undefined) => ({
  ...(cause === undefined ? {} : { fault: cause.fault }),
  ...(cause?.status === undefined ? {} : { status: cause.status }),
});

function learnProbe(standing: Standing, deps: GateDeps, result: ProbeResult): void {
  if (result.kind === 'usable') step(standing, deps, { kind: 'probe-ok' });
  else step(standing, deps, { kind: 'probe-failed', now: deps.clock.now() }, result);
}

function learn(standing: Standing, deps: GateDeps, claim: Claim, verdict: Verdict): AttemptResult {
  const now = deps.clock.now();
  const destinationWide = verdict.kind === 'failed' && learnFailure(standing, deps, claim, verdict);
  if (verdict.kind !== 'failed') learnAnswer(standing, deps);
  const { breaker } = standing;
  const targetFailures = breaker.kind === 'starting' ? 0 : breaker.failures;
  const context = { now, chance: deps.chance(), destinationWide, targetFailures };
  return planResult(verdict, claim, context);
}

function learnAnswer(standing: Standing, deps: GateDeps): void {
  standing.spread = noSpread;
  step(standing, deps, { kind: 'answered' });
}

/** @returns whether so many cases failed alike that the destination is at fault */
function learnFailure(standing: Standing, deps: GateDeps, claim: Claim, failure: Failure): boolean {
  const { failureClass } = failure;
  if (failureClass === 'case' || failureClass === 'ambiguous') {
    const fromTarget = failureClass === 'ambiguous' || failure.status !== undefined;
    if (fromTarget) learnAnswer(standing, deps);
    return false;
  }
  if (failureClass !== 'destination') {
    standing.spread = addFailure(standing.spread, claim.caseId, failure);
    if (!isDestinationWide(standing.spread)) return false;
  }
  learnDestinationFault(standing, deps, failure);
  return failureClass !== 'destination';
}

function learnDestinationFault(standing: Standing, deps: GateDeps, failure: Failure): void {
  const now = deps.clock.now();
  const alike = failure.failureClass !== 'destination';
  const asksToWait = failure.waitMs ?? defaultPauseMs(standing, deps, failure);
  standing.pausedUntil = Math.max(standing.pausedUntil, now + asksToWait);
  const event = { now, hold: failure.hold || alike, until: standing.pausedUntil };
  step(standing, deps, { kind: 'fault', ...event }, failure);
}

/** A server that says it is busy is left alone for a while even if it does not say how long. */
function defaultPauseMs(standing: Standing, deps: GateDeps, failure: Failure): number {
  const busy = failure.status === 429 || failure.status === 503;
  const failures = standing.breaker.kind === 'closed' ? standing.breaker.failures : 0;
  return busy ? backoffMs(failures, deps.chance()) : 0;
}
