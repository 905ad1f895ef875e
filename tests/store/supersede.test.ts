import { beforeEach, describe, expect, it } from 'vitest';
import type { AttemptResult, Claim } from '../../src/pipeline/index.js';
import { createOutbox, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const outbox = createOutbox(database, { worker: 'one' });

const LEASE_MS = 60_000;
const DELIVERED: AttemptResult = {
  kind: 'delivered',
  detail: 'as sent',
  locations: ['Procedure/1'],
};
const WAITING: AttemptResult = { kind: 'waiting-patient', reason: 'No patient.', afterMs: 60_000 };
const DEAD: AttemptResult = { kind: 'dead-letter', failureClass: 'case', reason: 'Refused.' };
const RETRY: AttemptResult = {
  kind: 'retry',
  failureClass: 'bounded',
  reason: 'No answer.',
  afterMs: 60_000,
  counts: true,
};

async function claimed(): Promise<Claim> {
  const claim = await outbox.claim(LEASE_MS);
  if (claim === undefined) throw new Error('nothing was due');
  return claim;
}

/** Without the first three, which every case has: received, assessed and queued 1. */
const events = async (caseId: string) =>
  (await store.read(caseId))?.timeline.slice(3).map(({ event, state }) => `${event} ${state}`);

const NEWER = ['received 2', 'assessed 2'];

beforeEach(() => database.pool.query('delete from outbox'));

describe('a newer state of a case', () => {
  it('takes the place of one that waits its turn', async () => {
    await store.inCase('waits', accept('waits', 1));
    await store.inCase('waits', accept('waits', 2));
    expect((await claimed()).state).toBe(2);
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
    expect(await events('waits')).toEqual([...NEWER, 'superseded 1', 'queued 2', 'sending 2']);
  });

  it.each([
    ['waits for the patient', WAITING, 'waiting-patient 1'],
    ['is to be tried again later', RETRY, 'retry-planned 1'],
  ])('is due at once when the older %s, and counts anew', async (name, result, event) => {
    await store.inCase(name, accept(name, 1));
    await outbox.settle(await claimed(), result);
    await store.inCase(name, accept(name, 2));
    expect(await claimed()).toMatchObject({ caseId: name, state: 2, attempts: 0 });
    expect(await events(name)).toEqual([
      'sending 1',
      event,
      ...NEWER,
      'superseded 1',
      'queued 2',
      'sending 2',
    ]);
  });

  it.each([
    ['was delivered', DELIVERED, 'delivered 1'],
    ['is a dead letter', DEAD, 'dead-letter 1'],
  ])('is queued after one that %s, whose end stays as it is', async (name, result, event) => {
    await store.inCase(name, accept(name, 1));
    await outbox.settle(await claimed(), result);
    await store.inCase(name, accept(name, 2));
    expect((await store.read(name))?.delivery).toMatchObject({ name: 'queued', attempts: 0 });
    expect((await store.read(name))?.delivery.reason).toBeUndefined();
    expect(await events(name)).toEqual(['sending 1', event, ...NEWER, 'queued 2']);
  });
});

describe('a newer state that comes while the older is on its way', () => {
  it('is not sent beside it, and the answer still is about the older', async () => {
    await store.inCase('way', accept('way', 1));
    await claimed();
    await store.inCase('way', accept('way', 2));
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
    expect((await store.read('way'))?.delivery).toMatchObject({ name: 'sending', state: 1 });
    expect((await store.read('way'))?.state).toBe(2);
  });

  it.each([
    ['delivered', DELIVERED, 'delivered 1'],
    ['failed', RETRY, 'superseded 1'],
    ['without its patient', WAITING, 'superseded 1'],
    ['refused for good', DEAD, 'superseded 1'],
  ])('is due at once when that is %s', async (name, result, event) => {
    await store.inCase(name, accept(name, 1));
    const older = await claimed();
    await store.inCase(name, accept(name, 2));
    expect(await outbox.settle(older, result)).toBe(true);
    expect(await outbox.nextDueInMs()).toBe(0);
    expect(await claimed()).toMatchObject({ state: 2, version: '{"state":2}', attempts: 0 });
    expect(await events(name)).toEqual(['sending 1', ...NEWER, 'queued 2', event, 'sending 2']);
  });

  it('keeps where the older was delivered', async () => {
    await store.inCase('places', accept('places', 1));
    const older = await claimed();
    await store.inCase('places', accept('places', 2));
    await outbox.settle(older, DELIVERED);
    const { rows } = await database.pool.query('select delivered_state, locations from outbox');
    expect(rows).toEqual([{ delivered_state: 1, locations: ['Procedure/1'] }]);
  });

  it('makes a third supersede the second, which never was on its way', async () => {
    await store.inCase('third', accept('third', 1));
    const older = await claimed();
    await store.inCase('third', accept('third', 2));
    await store.inCase('third', accept('third', 3));
    await outbox.settle(older, DELIVERED);
    expect((await claimed()).state).toBe(3);
    expect(await events('third')).toEqual([
      'sending 1',
      ...NEWER,
      'queued 2',
      'received 3',
      'assessed 3',
      'superseded 2',
      'queued 3',
      'delivered 1',
      'sending 3',
    ]);
  });

  it('is sent in its place, counting anew, when the worker of the older died', async () => {
    await store.inCase('died', accept('died', 1));
    await claimed();
    await store.inCase('died', accept('died', 2));
    await database.pool.query(`update outbox set due_at = now() - interval '1 second'`);
    expect(await claimed()).toMatchObject({ state: 2, attempts: 0 });
    expect(await events('died')).toEqual([
      'sending 1',
      ...NEWER,
      'queued 2',
      'superseded 1',
      'sending 2',
    ]);
  });
});
