import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { createWorker, type Worker, type WorkerDeps } from '../../src/delivery/worker.js';
import { type Checked, failed, InvariantError, passed } from '../../src/kernel/index.js';
import { type ManualClock, manualClock, settled } from './support/manual-clock.js';
import {
  bundleFor,
  DELIVERED,
  failure,
  hanging,
  type LogLine,
  type MemoryOutbox,
  memoryOutbox,
  type ScriptedTarget,
  scriptedTarget,
} from './support/worker-doubles.js';

interface World {
  readonly clock: ManualClock;
  readonly outbox: MemoryOutbox;
  readonly target: ScriptedTarget;
  readonly worker: Worker;
  readonly lines: LogLine[];
}

let stopAll: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const stop of stopAll) await stop();
  stopAll = [];
});

async function world(
  options: WorkerDeps['options'] = {},
  prepare: WorkerDeps['prepare'] = (version) => passed(bundleFor(version)),
): Promise<World> {
  const clock = manualClock();
  const outbox = memoryOutbox(clock);
  const target = scriptedTarget();
  const lines: LogLine[] = [];
  const log: WorkerDeps['log'] = (event, fields) => lines.push({ event, ...fields });
  const chance = () => 0.5;
  const worker = createWorker({ outbox, prepare, target, clock, chance, log, options });
  await worker.start();
  await settled();
  stopAll.push(async () => {
    outbox.broken = false;
    const stopped = worker.stop();
    await clock.advance(60_000);
    await stopped;
  });
  return { clock, outbox, target, worker, lines };
}

const events = ({ lines }: World) => lines.map(({ event }) => event);
const resultsOf = ({ outbox }: World, caseId: string) =>
  outbox.results.filter((one) => one.caseId === caseId).map(({ result }) => result);

describe('the worker', () => {
  it('delivers what is queued, as soon as it is told of it', async () => {
    const w = await world();
    w.outbox.put('a');
    await settled();
    expect(resultsOf(w, 'a')).toEqual([DELIVERED]);
    expect(w.lines).toEqual([{ event: 'delivered', caseId: 'a', state: 1, attempt: 1 }]);
  });

  it('finds what nobody told it of by looking from time to time', async () => {
    const w = await world({ pollMs: 5_000 });
    await (await w.outbox.onQueued(() => undefined))();
    w.outbox.put('a');
    await w.clock.advance(4_999);
    expect(w.target.delivered).toEqual([]);
    await w.clock.advance(1);
    expect(w.target.delivered).toEqual(['a']);
  });

  it('has no more in flight than it may', async () => {
    const w = await world({ concurrency: 3 });
    w.target.answer = hanging;
    w.outbox.put('a', 'b', 'c', 'd', 'e');
    await settled();
    expect(w.target.delivered).toHaveLength(3);
    expect(w.worker.health()).toEqual({ state: 'closed', inFlight: 3 });
  });

  it('delivers everything in the end, whatever passes in between', async () => {
    const verdicts = fc.constantFrom(
      failure('destination', 'refused'),
      failure('destination', 'status-429', { status: 429, waitMs: 7_000 }),
      failure('bounded', 'status-500', { status: 500 }),
      { kind: 'waiting-patient', reason: 'r' } as const,
      DELIVERED,
    );
    await fc.assert(
      fc.asyncProperty(fc.array(verdicts, { maxLength: 12 }), async (script) => {
        const w = await world();
        const left = [...script];
        w.target.answer = () => left.shift() ?? DELIVERED;
        w.outbox.put('a', 'b', 'c');
        await w.clock.advance(3_600_000);
        const delivered = w.outbox.results.filter(({ result }) => result.kind === 'delivered');
        expect(delivered.map(({ caseId }) => caseId).sort()).toEqual(['a', 'b', 'c']);
      }),
      { numRuns: 15 },
    );
  });
});

describe('a record that is at fault', () => {
  const throws = (): Checked<never> => {
    throw new InvariantError('no');
  };
  const fails = (): Checked<never> =>
    failed([{ rule: 'dr-bdl-4', pointer: '', message: 'm', expected: 'e' }]);

  it.each([
    ['throws in mapping', throws, 'internal'],
    ['is not conformant', fails, 'dr-bdl-4'],
  ])('and %s becomes a dead letter with its rule, while others flow', async (_what, act, rule) => {
    const w = await world({ concurrency: 1 }, (version) =>
      version === 'bad' ? act() : passed(bundleFor(version)),
    );
    w.outbox.put('bad', 'good');
    await settled();
    const reason = `The record does not pass its checks: ${rule}.`;
    expect(resultsOf(w, 'bad')).toEqual([{ kind: 'dead-letter', failureClass: 'case', reason }]);
    expect(resultsOf(w, 'good')).toEqual([DELIVERED]);
    expect(w.target.delivered).toEqual(['good']);
  });

  it('and was taken up too often without a result is not taken up again', async () => {
    const w = await world();
    const claim = w.outbox.claim;
    w.outbox.claim = async (leaseMs) => {
      const taken = await claim(leaseMs);
      return taken === undefined ? undefined : { ...taken, attempts: 15 };
    };
    w.outbox.put('poison');
    await settled();
    expect(resultsOf(w, 'poison')).toMatchObject([{ kind: 'dead-letter', failureClass: 'case' }]);
    expect(w.target.delivered).toEqual([]);
  });

  it('does not count against the target', async () => {
    const w = await world();
    w.target.answer = () => failure('case', 'status-422', { status: 422 });
    w.outbox.put('a', 'b', 'c', 'd', 'e', 'f');
    await settled();
    expect(w.worker.health().state).toBe('closed');
    expect(events(w)).toEqual(Array(6).fill('dead-letter'));
  });
});

describe('a target that is down', () => {
  it('is left alone after five faults in a row, uses up no attempt, and is told of once', async () => {
    const w = await world({ concurrency: 1 });
    w.target.answer = () => failure('destination', 'refused');
    w.target.probing = { kind: 'unusable', fault: 'refused', reason: 'It refuses.' };
    w.outbox.put('a', 'b', 'c');
    await w.clock.advance(3_600_000);
    expect(w.target.delivered).toHaveLength(5);
    expect(w.outbox.results.every(({ result }) => result.kind === 'retry' && !result.counts)).toBe(
      true,
    );
    expect(w.lines.filter(({ event }) => event === 'target-down')).toHaveLength(1);
    expect(w.target.probes).toBeGreaterThan(100);
    expect(w.worker.health()).toMatchObject({ state: 'open', reason: 'It refuses.' });

    w.target.answer = () => DELIVERED;
    w.target.probing = { kind: 'usable', mode: 'client-id' };
    await w.clock.advance(60_000);
    expect(w.target.delivered).toHaveLength(8);
    expect(w.lines.filter(({ event }) => event === 'target-up')).toHaveLength(1);
    expect(w.worker.health()).toEqual({ state: 'closed', inFlight: 0 });
  });

  it('is held at once when it is wrongly set up', async () => {
    const w = await world({ concurrency: 1 });
    w.target.answer = () => failure('destination', 'status-401', { status: 401, hold: true });
    w.outbox.put('a', 'b');
    await settled();
    expect(w.target.delivered).toEqual(['a']);
    expect(w.lines).toContainEqual({ event: 'target-down', fault: 'status-401', status: 401 });
  });

  it('gets one record after a probe, not all of them', async () => {
    const w = await world({ concurrency: 4 });
    w.target.answer = () => failure('destination', 'status-403', { status: 403, hold: true });
    w.outbox.put('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h');
    await settled();
    const before = w.target.delivered.length;
    w.target.answer = hanging;
    await w.clock.advance(30_000);
    expect(w.target.delivered.length).toBe(before + 1);
    expect(w.worker.health()).toMatchObject({ state: 'half-open', inFlight: 1 });
  });

  it('is not asked before it has been probed', async () => {
    const clock = manualClock();
    const outbox = memoryOutbox(clock);
    const target = scriptedTarget();
    target.probing = { kind: 'unusable', fault: 'no-transaction', reason: 'No transactions.' };
    const lines: LogLine[] = [];
    const worker = createWorker({
      outbox,
      target,
      clock,
      prepare: (version) => passed(bundleFor(version)),
      chance: () => 0,
      log: (event, fields) => lines.push({ event, ...fields }),
    });
    outbox.put('a');
    await worker.start();
    await clock.advance(90_000);
    expect(target.delivered).toEqual([]);
    expect(lines).toEqual([{ event: 'target-down', fault: 'no-transaction' }]);
    expect(worker.health()).toMatchObject({ state: 'starting', reason: 'No transactions.' });
    await worker.stop();
    expect(clock.waiting()).toEqual([]);
  });

  it('rests for everybody as long as it asks to', async () => {
    const w = await world({ concurrency: 1 });
    w.target.answer = () => failure('destination', 'status-429', { status: 429, waitMs: 60_000 });
    w.outbox.put('a', 'b');
    await w.clock.advance(59_000);
    expect(w.target.delivered).toEqual(['a']);
    expect(w.worker.health()).toMatchObject({ state: 'paused' });
    w.target.answer = () => DELIVERED;
    await w.clock.advance(2_000);
    expect(w.target.delivered.sort()).toEqual(['a', 'a', 'b']);
  });
});

describe('records that fail in a bounded class', () => {
  it('end as dead letters when they are alone with it', async () => {
    const w = await world();
    w.target.answer = (caseId) =>
      caseId === 'sick' ? failure('bounded', 'status-500', { status: 500 }) : DELIVERED;
    w.outbox.put('sick');
    await w.clock.advance(3_600_000);
    expect(resultsOf(w, 'sick')).toHaveLength(8);
    expect(resultsOf(w, 'sick').at(-1)).toMatchObject({
      kind: 'dead-letter',
      failureClass: 'bounded',
    });
    expect(w.worker.health().state).toBe('closed');
  });

  it('are the fault of the target when several fail alike', async () => {
    const w = await world({ concurrency: 1 });
    w.target.answer = () => failure('bounded', 'status-500', { status: 500 });
    w.outbox.put('a', 'b', 'c', 'd');
    await w.clock.advance(24 * 3_600_000);
    expect(w.outbox.results.some(({ result }) => result.kind === 'dead-letter')).toBe(false);
    expect(w.lines.filter(({ event }) => event === 'target-down')).toHaveLength(1);
    w.target.answer = () => DELIVERED;
    await w.clock.advance(3_600_000);
    expect(w.lines.filter(({ event }) => event === 'delivered')).toHaveLength(4);
  });

  it('repeat the very same transaction after an unknown outcome', async () => {
    const versions: string[] = [];
    const w = await world({}, (version) => {
      versions.push(version);
      return passed(bundleFor(version));
    });
    const answers = [failure('unknown', 'cut'), failure('unknown', 'timeout'), DELIVERED];
    w.target.answer = () => answers.shift() ?? DELIVERED;
    w.outbox.put('a');
    await w.clock.advance(60_000);
    expect(versions).toEqual(['a', 'a', 'a']);
    expect(w.lines.map(({ event, attempt }) => [event, attempt])).toEqual([
      ['retry-planned', 1],
      ['retry-planned', 2],
      ['delivered', 3],
    ]);
  });

  it('raise an alarm of their own when the server is not conformant', async () => {
    const w = await world();
    w.target.answer = () => failure('non-conformant-server', 'entry-count', { status: 200 });
    w.outbox.put('a');
    await settled();
    expect(events(w)).toEqual(['retry-planned', 'non-conformant-server']);
  });
});

describe('a claim', () => {
  it('is kept alive as long as its post lasts', async () => {
    const w = await world({ leaseMs: 30_000 });
    w.target.answer = hanging;
    w.outbox.put('a');
    await w.clock.advance(300_000);
    expect(w.target.delivered).toEqual(['a']);
  });

  it('that was lost breaks its post off, and its result is not written', async () => {
    const w = await world({ leaseMs: 30_000 });
    w.target.answer = hanging;
    w.outbox.put('a');
    await settled();
    w.outbox.steal('a');
    await w.clock.advance(10_000);
    expect(w.outbox.results).toEqual([]);
    expect(events(w)).toEqual(['claim-lost']);
    expect(w.worker.health().inFlight).toBe(0);
  });

  it('that was lost says nothing about the target', async () => {
    const w = await world({ leaseMs: 30_000 });
    w.target.answer = hanging;
    w.outbox.put('a', 'b', 'c', 'd');
    await settled();
    for (const caseId of ['a', 'b', 'c', 'd']) w.outbox.steal(caseId);
    await w.clock.advance(10_000);
    expect(events(w)).toEqual(Array(4).fill('claim-lost'));
    expect(w.worker.health().state).toBe('closed');
  });

  it('that was lost while its result was on the way is not written', async () => {
    const w = await world();
    w.target.answer = (caseId) => {
      w.outbox.steal(caseId);
      return DELIVERED;
    };
    w.outbox.put('a');
    await settled();
    expect(w.outbox.results).toEqual([]);
    expect(events(w)).toEqual(['claim-lost']);
  });
});

describe('a store that cannot serve', () => {
  it('stops nothing for good', async () => {
    const w = await world({ leaseMs: 30_000, pollMs: 5_000 });
    w.target.answer = () => {
      w.outbox.broken = true;
      return DELIVERED;
    };
    w.outbox.put('a');
    await w.clock.advance(12_000);
    expect(new Set(events(w))).toEqual(new Set(['store-unavailable']));
    expect(events(w).length).toBeLessThan(6);
    w.outbox.broken = false;
    w.target.answer = () => DELIVERED;
    await w.clock.advance(60_000);
    expect(resultsOf(w, 'a')).toEqual([DELIVERED]);
  });
});

describe('stopping', () => {
  it('waits for what is in flight and claims nothing more', async () => {
    const w = await world({ concurrency: 1 });
    let finish: () => void = () => undefined;
    w.target.answer = () =>
      new Promise((resolve) => {
        finish = () => resolve(DELIVERED);
      });
    w.outbox.put('a', 'b');
    await settled();
    let stopped = false;
    const stopping = w.worker.stop().then(() => {
      stopped = true;
    });
    await w.clock.advance(5_000);
    expect(stopped).toBe(false);
    finish();
    await stopping;
    expect(w.outbox.results.map(({ caseId }) => caseId)).toEqual(['a']);
    expect(w.clock.waiting()).toEqual([]);
  });

  it('gives back, after its grace, what is still in flight', async () => {
    const w = await world({ graceMs: 10_000 });
    w.target.answer = hanging;
    w.outbox.put('a');
    await settled();
    const stopping = w.worker.stop();
    await w.clock.advance(10_000);
    await stopping;
    expect(resultsOf(w, 'a')).toMatchObject([{ kind: 'retry', afterMs: 0, counts: false }]);
    expect(events(w)).toEqual(['released']);
    expect(w.clock.waiting()).toEqual([]);
  });

  it('gives back a claim that was on its way', async () => {
    const w = await world();
    const claim = w.outbox.claim;
    let arrive: () => void = () => undefined;
    w.outbox.claim = async (leaseMs) => {
      await new Promise<void>((resolve) => {
        arrive = resolve;
      });
      return claim(leaseMs);
    };
    w.outbox.put('a');
    await settled();
    const stopping = w.worker.stop();
    arrive();
    await stopping;
    expect(resultsOf(w, 'a')).toMatchObject([{ kind: 'retry', afterMs: 0, counts: false }]);
    expect(w.target.delivered).toEqual([]);
  });

  it('breaks off a probe, and takes that for no fault of the target', async () => {
    const w = await world();
    w.target.answer = () => failure('destination', 'status-401', { hold: true });
    w.outbox.put('a');
    await settled();
    w.target.probe = (signal) =>
      new Promise((resolve) => {
        const broken = { kind: 'unusable', fault: 'stopped', reason: 'Stopped.' } as const;
        signal.addEventListener('abort', () => resolve(broken));
      });
    await w.clock.advance(30_000);
    await w.worker.stop();
    expect(w.worker.health()).toMatchObject({ state: 'open', reason: 'Why.' });
  });

  it('does not wait for ever for what cannot be broken off', async () => {
    const w = await world({ graceMs: 10_000 });
    w.target.answer = () => new Promise(() => undefined);
    w.outbox.put('a');
    await settled();
    const stopping = w.worker.stop();
    await w.clock.advance(15_000);
    await stopping;
    expect(w.outbox.results).toEqual([]);
  });
});
