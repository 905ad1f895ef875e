import type { CheckedBundle } from '../conformance/index.js';
import type { Checked } from '../kernel/index.js';
import type { Claim, Outbox } from '../pipeline/index.js';
import { type AttemptDeps, attend, giveBack } from './attend.js';
import type { Clock } from './clock.js';
import { createGate, type Gate, type TargetHealth } from './gate.js';
import type { DeliveryLog } from './log.js';
import type { Target } from './target.js';

/*
 * What happens to a state of a case, in words.
 *
 * It is queued in the outbox. The worker claims it (one claim per case, held by a lease and a
 * fencing number), maps and checks it, finds its patient at the target, addresses it and posts
 * it once. Then exactly one of:
 *
 *   delivered        the target says, entry by entry, that all of it is there
 *   waiting-patient  the target does not know the patient: looked at again, slowly, for ever
 *   retry            the target is at fault (no attempt of the case is used up), or nobody
 *                    knows what happened, or the target asks to try again (bounded)
 *   dead-letter      the record is at fault, a person must choose, or a bound was reached
 *
 * An attempt whose outcome is unknown is repeated with the identical transaction: every write
 * in it is idempotent. When the program dies in an attempt, the lease ends and the next claim
 * repeats it; the outbox has counted the attempt before, so a record that kills the program
 * becomes a dead letter too. When the claim is lost to another worker, the post is broken off
 * and its result is not written.
 *
 * Faults of the target open a breaker: nothing is claimed until a probe of /metadata succeeds,
 * then one record at a time until one of them arrives.
 */

export interface WorkerDeps {
  readonly outbox: Outbox;
  /** Maps and checks a record version. A failure or an exception is a fault of the case. */
  readonly prepare: (version: string) => Checked<CheckedBundle> | Promise<Checked<CheckedBundle>>;
  readonly target: Target;
  readonly clock: Clock;
  /** From 0 up to, not including, 1. */
  readonly chance: () => number;
  readonly log: DeliveryLog;
  readonly options?: Partial<WorkerOptions>;
}

export interface WorkerOptions {
  /** Records in flight at the same time. */
  readonly concurrency: number;
  /** A claim without a sign of life for so long goes to another worker. */
  readonly leaseMs: number;
  /** Longest time between two looks into the outbox. */
  readonly pollMs: number;
  /** How long `stop` waits for posts in flight before it breaks them off. */
  readonly graceMs: number;
}

export interface Worker {
  start(): Promise<void>;
  /** Claims nothing more, waits for what is in flight, gives back the rest; for good. */
  stop(): Promise<void>;
  health(): TargetHealth & { readonly inFlight: number };
}

const DEFAULTS: WorkerOptions = {
  concurrency: 4,
  leaseMs: 60_000,
  pollMs: 5_000,
  graceMs: 10_000,
};

interface Running {
  readonly deps: WorkerDeps;
  readonly options: WorkerOptions;
  readonly gate: Gate;
  /** Breaks off a probe. */
  readonly stopProbe: AbortController;
  /** The attempts in flight, each with what breaks it off. */
  readonly inFlight: Map<Promise<void>, AbortController>;
  active: boolean;
  pumping: Promise<void> | undefined;
  again: boolean;
  cancelTimer: () => void;
  unsubscribe: () => Promise<void>;
}

export function createWorker(deps: WorkerDeps): Worker {
  const running: Running = {
    deps,
    options: { ...DEFAULTS, ...deps.options },
    gate: createGate(deps),
    stopProbe: new AbortController(),
    inFlight: new Map(),
    active: false,
    pumping: undefined,
    again: false,
    cancelTimer: () => undefined,
    unsubscribe: () => Promise.resolve(),
  };
  let stopping: Promise<void> | undefined;
  return {
    start: async () => {
      running.active = true;
      running.unsubscribe = await deps.outbox.onQueued(() => pump(running));
      pump(running);
    },
    stop: () => {
      stopping ??= stop(running);
      return stopping;
    },
    health: () => ({ ...running.gate.health(), inFlight: running.inFlight.size }),
  };
}

/** Claims as much as may be in flight; called whenever something may have changed. */
function pump(running: Running): void {
  if (!running.active) return;
  running.again = true;
  running.pumping ??= pumpUntilQuiet(running).finally(() => {
    running.pumping = undefined;
    if (running.again) pump(running);
  });
}

async function pumpUntilQuiet(running: Running): Promise<void> {
  const { clock, log } = running.deps;
  running.cancelTimer();
  let waitMs = running.options.pollMs;
  try {
    while (running.again && running.active) {
      running.again = false;
      waitMs = await claimWhatIsDue(running);
    }
  } catch {
    log('store-unavailable', {});
    running.again = false;
    waitMs = running.options.pollMs;
  }
  if (running.active) running.cancelTimer = clock.after(waitMs, () => pump(running));
}

/** @returns milliseconds until the next look is worth while */
async function claimWhatIsDue(running: Running): Promise<number> {
  const { deps, gate, inFlight, options } = running;
  await gate.probeIfDue(deps.target, running.stopProbe.signal);
  while (running.active && inFlight.size < gate.permits(options.concurrency)) {
    const claim = await deps.outbox.claim(options.leaseMs);
    if (claim === undefined) {
      const dueMs = (await deps.outbox.nextDueInMs()) ?? options.pollMs;
      return Math.min(Math.max(dueMs, 1), options.pollMs);
    }
    if (running.active) begin(running, claim);
    else await giveBack(claim, deps.outbox);
  }
  return Math.min(gate.waitMs() ?? options.pollMs, options.pollMs);
}

function begin(running: Running, claim: Claim): void {
  const { deps, gate, inFlight, options } = running;
  const attempt: AttemptDeps = { ...deps, gate, leaseMs: options.leaseMs };
  const breakOff = new AbortController();
  const work = attend(claim, attempt, breakOff.signal).finally(() => {
    inFlight.delete(work);
    pump(running);
  });
  inFlight.set(work, breakOff);
}

/** After this, whatever still hangs is left to its lease. */
const LAST_WAIT_MS = 5_000;

async function stop(running: Running): Promise<void> {
  const { clock } = running.deps;
  const { graceMs } = running.options;
  running.active = false;
  running.cancelTimer();
  running.stopProbe.abort();
  await running.unsubscribe().catch(() => undefined);
  const cancelGrace = clock.after(graceMs, () => {
    for (const breakOff of running.inFlight.values()) breakOff.abort();
  });
  let cancelLast = (): void => undefined;
  const tooLong = new Promise<void>((resolve) => {
    cancelLast = clock.after(graceMs + LAST_WAIT_MS, resolve);
  });
  await Promise.race([drained(running), tooLong]);
  cancelGrace();
  cancelLast();
}

async function drained(running: Running): Promise<void> {
  await running.pumping;
  while (running.inFlight.size > 0) await Promise.all(running.inFlight.keys());
}
