import type { CheckedBundle } from '../../../src/conformance/index.js';
import type { DeliveryEvent, DeliveryLogFields } from '../../../src/delivery/log.js';
import type { ProbeResult } from '../../../src/delivery/probe.js';
import type { Target } from '../../../src/delivery/target.js';
import type { Failure, Verdict } from '../../../src/delivery/verdict.js';
import type { AttemptResult, Claim, Outbox } from '../../../src/pipeline/index.js';
import type { ManualClock } from './manual-clock.js';

interface Row {
  readonly caseId: string;
  readonly dueAt: number;
  readonly attempts: number;
  readonly fence: number;
  readonly sending: boolean;
}

/** An outbox in memory, for the scheduling alone; leases run out as the clock says. */
export interface MemoryOutbox extends Outbox {
  put(...caseIds: readonly string[]): void;
  /** Gives the claim of a case to somebody else. */
  steal(caseId: string): void;
  readonly results: { readonly caseId: string; readonly result: AttemptResult }[];
  /** While true, every call fails as when the database is gone. */
  broken: boolean;
}

export function memoryOutbox(clock: ManualClock): MemoryOutbox {
  const rows = new Map<string, Row>();
  let wake: () => void = () => undefined;
  let fence = 0;
  const guard = () => {
    if (outbox.broken) throw new Error('gone');
  };
  const change = (caseId: string, by: Partial<Row>) => {
    const row = rows.get(caseId);
    if (row !== undefined) rows.set(caseId, { ...row, ...by });
  };
  const holds = (claim: Claim) => rows.get(claim.caseId)?.fence === claim.fence;
  const outbox: MemoryOutbox = {
    results: [],
    broken: false,
    put: (...caseIds) => {
      for (const caseId of caseIds) {
        rows.set(caseId, { caseId, dueAt: clock.now(), attempts: 0, fence: 0, sending: false });
      }
      wake();
    },
    steal: (caseId) => {
      fence += 1;
      change(caseId, { fence });
    },
    claim: async (leaseMs) => {
      guard();
      const due = [...rows.values()].filter(({ dueAt }) => dueAt <= clock.now());
      const row = due.sort((a, b) => a.dueAt - b.dueAt)[0];
      if (row === undefined) return undefined;
      fence += 1;
      const dueAt = clock.now() + leaseMs;
      change(row.caseId, { dueAt, fence, attempts: row.attempts + 1, sending: true });
      const queuedAt = new Date(clock.now()).toISOString();
      return {
        caseId: row.caseId,
        state: 1,
        version: row.caseId,
        attempts: row.attempts,
        queuedAt,
        fence,
      };
    },
    settle: async (claim, result) => {
      guard();
      if (!holds(claim)) return false;
      outbox.results.push({ caseId: claim.caseId, result });
      const attempts = claim.attempts + (result.kind === 'retry' && result.counts ? 1 : 0);
      if (result.kind === 'delivered' || result.kind === 'dead-letter') rows.delete(claim.caseId);
      else change(claim.caseId, { dueAt: clock.now() + result.afterMs, attempts, sending: false });
      return true;
    },
    extend: async (claim, leaseMs) => {
      guard();
      if (!holds(claim)) return false;
      change(claim.caseId, { dueAt: clock.now() + leaseMs });
      return true;
    },
    onQueued: async (callback) => {
      wake = callback;
      return async () => {
        wake = () => undefined;
      };
    },
    nextDueInMs: async () => {
      guard();
      const dues = [...rows.values()].map(({ dueAt }) => dueAt - clock.now());
      return dues.length === 0 ? undefined : Math.max(0, Math.min(...dues));
    },
    counts: () => Promise.reject(new Error('not counted here')),
  };
  return outbox;
}

/** A target that does what the test says, and remembers what it was asked. */
export interface ScriptedTarget extends Target {
  readonly delivered: string[];
  probes: number;
  probing: ProbeResult;
  answer: (caseId: string, signal: AbortSignal) => Verdict | Promise<Verdict>;
}

const caseIds = new WeakMap<object, string>();

/** A Bundle that the scripted target knows by its case. */
export function bundleFor(caseId: string): CheckedBundle {
  const bundle = { resourceType: 'Bundle', type: 'transaction' } as CheckedBundle;
  caseIds.set(bundle, caseId);
  return bundle;
}

export function scriptedTarget(): ScriptedTarget {
  const target: ScriptedTarget = {
    delivered: [],
    probes: 0,
    probing: { kind: 'usable', mode: 'client-id' },
    answer: () => DELIVERED,
    probe: async () => {
      target.probes += 1;
      return target.probing;
    },
    deliver: async (bundle, signal) => {
      const caseId = caseIds.get(bundle) ?? '';
      target.delivered.push(caseId);
      return target.answer(caseId, signal);
    },
  };
  return target;
}

export const DELIVERED: Verdict = { kind: 'delivered', detail: '1 created', locations: [] };

export const failure = (
  failureClass: Failure['failureClass'],
  fault: string,
  more: Partial<Failure> = {},
): Failure => ({ kind: 'failed', failureClass, fault, reason: 'Why.', hold: false, ...more });

/** A target that never answers until it is broken off. */
export const hanging = (_caseId: string, signal: AbortSignal) =>
  new Promise<Verdict>((resolve) => {
    signal.addEventListener('abort', () => resolve(failure('unknown', 'stopped')));
  });

export interface LogLine extends DeliveryLogFields {
  readonly event: DeliveryEvent;
}
