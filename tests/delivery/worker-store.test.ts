import { setTimeout as delay } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CheckedBundle } from '../../src/conformance/index.js';
import {
  createFhirClient,
  createTarget,
  createWorker,
  systemClock,
  type Worker,
  type WorkerDeps,
} from '../../src/delivery/index.js';
import { passed } from '../../src/kernel/index.js';
import type { Outbox } from '../../src/pipeline/index.js';
import { createOutbox, createRecordStore } from '../../src/store/index.js';
import { entry as message, state } from '../store/samples.js';
import { until } from '../store/waiting.js';
import { testDatabase } from '../support/database.js';
import { startRecordingServer } from './support/recording-server.js';
import { checked, entry, PATIENT, RECORD_NUMBER } from './support/sample-bundle.js';
import { reply, SAMPLE_TYPES } from './support/stub-server.js';
import type { LogLine } from './support/worker-doubles.js';

const test = await testDatabase();
const database = await test.open();
const elsewhere = await test.open();
const store = createRecordStore(database);
const outbox = createOutbox(database, { worker: 'one' });
const rival = createOutbox(elsewhere, { worker: 'two' });
const server = await startRecordingServer();

/** One resource for each case, which says which state it was made of. */
function prepare(version: string) {
  const { caseId, number } = JSON.parse(version);
  const note = [{ text: `state ${number}` }];
  const condition = entry(
    { resourceType: 'Condition', subject: PATIENT, note },
    `${caseId}.lesion1`,
  );
  const identifier = { system: 'https://unit.example/id/case', value: caseId };
  const bundle: CheckedBundle = { ...checked([condition]), identifier };
  return passed(bundle);
}

const accept = (caseId: string, number = 1) =>
  store.inCase(caseId, async (journal) => {
    await journal.append(message(caseId, number));
    await journal.saveState(state(caseId, number, JSON.stringify({ caseId, number })));
  });

let workers: Worker[] = [];
let lines: LogLine[] = [];

async function startWorker(on: Outbox, options: WorkerDeps['options'] = {}): Promise<Worker> {
  const { baseUrl } = server.stub;
  const worker = createWorker({
    outbox: on,
    prepare,
    target: createTarget({
      client: createFhirClient({ baseUrl, deadlineMs: 10_000 }),
      baseUrl,
      needs: { types: SAMPLE_TYPES, mode: 'auto', largestBundle: 10 },
      missingPatient: 'require',
      allowed: { allowHttp: false, allowedHosts: [] },
      clock: systemClock,
    }),
    clock: systemClock,
    chance: () => 0,
    log: (event, fields) => lines.push({ event, ...fields }),
    options: { pollMs: 50, graceMs: 500, ...options },
  });
  workers.push(worker);
  await worker.start();
  return worker;
}

beforeEach(async () => {
  await database.pool.query('truncate outbox');
  server.kept.clear();
  server.posts.length = 0;
  server.mostOfOneCase = 0;
  server.answer = (_caseId, finish) => finish();
  lines = [];
});
afterEach(async () => {
  await Promise.all(workers.map((worker) => worker.stop()));
  workers = [];
});

const standing = async (caseId: string) => (await store.read(caseId))?.delivery.name;
const delivered = (caseId: string) => until(async () => (await standing(caseId)) === 'delivered');
const notes = () => [...server.kept.values()].map((text) => JSON.parse(text).note[0].text);

describe('the worker on the real store', () => {
  it('delivers a case and keeps where it lies', async () => {
    await startWorker(outbox);
    await accept('s-1');
    await delivered('s-1');
    const timeline = (await store.read('s-1'))?.timeline.map(({ event }) => event);
    expect(timeline?.slice(-3)).toEqual(['queued', 'sending', 'delivered']);
    expect(server.posts).toEqual(['s-1']);
    const { rows } = await database.pool.query('select locations from outbox');
    const [address = ''] = server.kept.keys();
    expect(rows).toEqual([{ locations: [`${address}/_history/1`] }]);
  });

  it('is woken by another process and does not wait for its next look', async () => {
    const worker = await startWorker(rival, { pollMs: 60_000 });
    await until(() => worker.health().state === 'closed');
    await delay(50);
    await accept('s-2');
    await delivered('s-2');
    expect(server.posts).toEqual(['s-2']);
  });

  it('takes up what a dead worker has left, and there is one copy in the end', async () => {
    await accept('s-3');
    const claim = await rival.claim(1);
    expect(claim?.caseId).toBe('s-3');
    await startWorker(outbox);
    await delivered('s-3');
    expect(server.kept.size).toBe(1);
    expect(lines).toMatchObject([{ event: 'delivered', caseId: 's-3', attempt: 2 }]);
    expect(claim && (await rival.settle(claim, DEAD))).toBe(false);
    expect(await standing('s-3')).toBe('delivered');
  });

  it('keeps one copy when the answer is lost after the server has committed', async () => {
    let cuts = 2;
    server.answer = (_caseId, finish, response) => {
      cuts -= 1;
      if (cuts < 0) finish();
      else response.destroy();
    };
    await accept('s-4');
    await startWorker(outbox);
    await delivered('s-4');
    expect(server.posts).toEqual(['s-4', 's-4', 's-4']);
    expect(server.kept.size).toBe(1);
    expect(lines.map(({ event, fault }) => [event, fault])).toEqual([
      ['retry-planned', 'cut'],
      ['retry-planned', 'cut'],
      ['delivered', undefined],
    ]);
  });

  it('becomes a dead letter when it has stopped the program again and again', async () => {
    await accept('s-5');
    for (let death = 0; death < 15; death += 1) {
      await database.pool.query('update outbox set due_at = now() - interval $$1 s$$');
      await rival.claim(60_000);
    }
    await database.pool.query('update outbox set due_at = now() - interval $$1 s$$');
    await startWorker(outbox);
    await until(async () => (await standing('s-5')) === 'dead-letter');
    expect(server.posts).toEqual([]);
  });

  it('sends the newest state alone, and never an older one after it', async () => {
    await accept('s-6', 1);
    await accept('s-6', 2);
    let release: () => void = () => undefined;
    server.answer = (_caseId, finish) => {
      release = finish;
    };
    await startWorker(outbox);
    await until(() => server.posts.length === 1);
    expect(notes()).toEqual(['state 2']);
    await accept('s-6', 3);
    server.answer = (_caseId, finish) => finish();
    release();
    await until(() => server.posts.length === 2);
    await delivered('s-6');
    expect(notes()).toEqual(['state 3']);
  });
});

const DEAD = { kind: 'dead-letter', failureClass: 'case', reason: 'late' } as const;

describe('two workers on one store', () => {
  it('never have one case in flight twice, and each case arrives once', async () => {
    const cases = Array.from({ length: 24 }, (_, index) => `two-${index}`);
    server.answer = (_caseId, finish) => setTimeout(finish, 5);
    await Promise.all([startWorker(outbox), startWorker(rival)]);
    await Promise.all(cases.map((caseId) => accept(caseId)));
    await Promise.all(cases.map(delivered));
    expect(server.mostOfOneCase).toBe(1);
    expect([...server.posts].sort()).toEqual([...cases].sort());
  });

  it('fence off the one that slept beyond its lease', async () => {
    await accept('two-sleeper');
    let wakeUp: (() => void) | undefined;
    server.answer = (_caseId, finish) => {
      if (wakeUp === undefined) wakeUp = finish;
      else finish();
    };
    /* As a paused process: it neither extends its lease nor learns that it was lost. */
    const asleep: Outbox = { ...rival, extend: () => new Promise(() => undefined) };
    await startWorker(asleep, { leaseMs: 60, pollMs: 60_000 });
    await until(() => server.posts.length === 1);
    await startWorker(outbox);
    await delivered('two-sleeper');
    wakeUp?.();
    await until(() => lines.some(({ event }) => event === 'claim-lost'));
    expect(lines.filter(({ event }) => event === 'delivered')).toHaveLength(1);
    expect(server.kept.size).toBe(1);
  });
});

describe('what is written down about a patient whose server is indiscreet', () => {
  const said = [
    { code: 'value', diagnostics: `Patient?identifier=x|${RECORD_NUMBER} is odd` },
    { code: 'invariant', details: { text: RECORD_NUMBER }, expression: [`'${RECORD_NUMBER}'`] },
  ];
  it.each([200, 400, 404, 409, 412, 422, 429, 500, 503])('%i: nothing', async (status) => {
    const outcome = { resourceType: 'OperationOutcome', issue: said };
    server.answer = (_caseId, _finish, response) => reply(response, status, outcome);
    const caseId = `canary-${status}`;
    await accept(caseId);
    await startWorker(outbox);
    await until(() => lines.some((line) => line.caseId === caseId));
    expect(server.kept.values().next().value).toContain(RECORD_NUMBER);
    const { rows } = await database.pool.query('select * from outbox');
    const written = JSON.stringify([rows, await store.read(caseId)]);
    expect(JSON.stringify(lines) + written).not.toContain(RECORD_NUMBER);
    expect(written).toContain(`(${status})`.replace('(200)', 'without a Bundle'));
  });
});

describe('stopping on the real store', () => {
  it('gives back what is in flight, and the next worker delivers it at once', async () => {
    server.answer = () => undefined;
    await accept('stop-1');
    const worker = await startWorker(outbox, { graceMs: 20 });
    await until(() => server.posts.length === 1);
    await worker.stop();
    expect(await store.read('stop-1')).toMatchObject({ delivery: { name: 'queued', attempts: 0 } });
    server.answer = (_caseId, finish) => finish();
    await startWorker(rival);
    await delivered('stop-1');
  });
});
