import { beforeEach, describe, expect, it } from 'vitest';
import type { AttemptResult, Claim } from '../../src/pipeline/index.js';
import { createOutbox, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const elsewhere = await test.open();
const store = createRecordStore(database);
const outbox = createOutbox(database, { worker: 'one' });
const rival = createOutbox(elsewhere, { worker: 'two' });

const LEASE_MS = 60_000;
const DELIVERED: AttemptResult = {
  kind: 'delivered',
  detail: 'as sent',
  locations: ['Procedure/1'],
};
const REASON = 'The server did not answer.';
const retry = (afterMs: number, counts = true): AttemptResult => ({
  kind: 'retry',
  failureClass: 'bounded',
  reason: REASON,
  afterMs,
  counts,
});

/** Moves the end of waits and leases into the past: the clock that counts is the database's. */
const makeDue = (caseId: string) =>
  database.pool.query(
    `update outbox set due_at = now() - interval '1 second' where case_id = $1 and due_at is not null`,
    [caseId],
  );

const events = async (caseId: string) =>
  (await store.read(caseId))?.timeline.map(({ event, state }) => `${event} ${state}`);

async function claimed(from = outbox): Promise<Claim> {
  const claim = await from.claim(LEASE_MS);
  if (claim === undefined) throw new Error('nothing was due');
  return claim;
}

beforeEach(() => database.pool.query('delete from outbox'));

describe('a claim', () => {
  it('takes the case that is due longest, with the newest state and its version', async () => {
    await store.inCase('claim-b', accept('claim-b'));
    await store.inCase('claim-a', accept('claim-a'));
    expect(await outbox.claim(LEASE_MS)).toMatchObject({
      caseId: 'claim-b',
      state: 1,
      version: '{"state":1}',
      attempts: 0,
    });
    expect((await claimed()).caseId).toBe('claim-a');
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
  });

  it('is never given twice to two workers that both take all they get', async () => {
    const ids = Array.from({ length: 60 }, (_, i) => `many-${i}`);
    await Promise.all(ids.map((id) => store.inCase(id, accept(id))));
    const takeAll = async (from: typeof outbox): Promise<string[]> => {
      const claim = await from.claim(LEASE_MS);
      return claim === undefined ? [] : [claim.caseId, ...(await takeAll(from))];
    };
    const workers = [outbox, rival, outbox, rival, outbox, rival];
    const taken = (await Promise.all(workers.map(takeAll))).flat();
    const left = await takeAll(outbox);
    expect([...taken, ...left].sort()).toEqual([...ids].sort());
  });

  it('passes over a case that somebody is just claiming, without waiting', async () => {
    await store.inCase('locked', accept('locked'));
    const holder = await elsewhere.pool.connect();
    await holder.query(`begin; select 1 from outbox where case_id = 'locked' for update`);
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
    await holder.query('rollback');
    holder.release();
    expect((await claimed()).caseId).toBe('locked');
  });

  it('is given again at once when its lease has run out, and counts the lost attempt', async () => {
    await store.inCase('lost', accept('lost'));
    const first = await claimed();
    expect(await rival.claim(LEASE_MS)).toBeUndefined();
    await makeDue('lost');
    const second = await claimed(rival);
    expect(second).toMatchObject({ caseId: 'lost', attempts: 1, queuedAt: first.queuedAt });
    expect(second.fence).toBeGreaterThan(first.fence);
  });

  it('counts every attempt that killed its worker, so that the case can be set aside', async () => {
    await store.inCase('poison', accept('poison'));
    const attempts: number[] = [];
    for (let death = 0; death < 4; death += 1) {
      attempts.push((await claimed()).attempts);
      await makeDue('poison');
    }
    expect(attempts).toEqual([0, 1, 2, 3]);
  });

  it('can be held longer, by its holder alone', async () => {
    await store.inCase('long', accept('long'));
    const claim = await claimed();
    await makeDue('long');
    expect(await outbox.extend(claim, LEASE_MS)).toBe(true);
    expect(await rival.claim(LEASE_MS)).toBeUndefined();
    await makeDue('long');
    await claimed(rival);
    expect(await outbox.extend(claim, LEASE_MS)).toBe(false);
  });
});

describe('a result', () => {
  it('that is late, after another worker took the case, is refused and changes nothing', async () => {
    await store.inCase('late', accept('late'));
    const slow = await claimed();
    await makeDue('late');
    const quick = await claimed(rival);
    expect(await outbox.settle(slow, { ...DELIVERED, locations: ['Procedure/late'] })).toBe(false);
    expect((await store.read('late'))?.delivery.name).toBe('sending');
    expect(await rival.settle(quick, DELIVERED)).toBe(true);
    expect(await outbox.settle(slow, retry(0))).toBe(false);
    expect((await store.read('late'))?.delivery.name).toBe('delivered');
    expect(await events('late')).toEqual([
      'received 1',
      'assessed 1',
      'queued 1',
      'sending 1',
      'sending 1',
      'delivered 1',
    ]);
  });

  it('can be given once', async () => {
    await store.inCase('once', accept('once'));
    const claim = await claimed();
    expect(await outbox.settle(claim, DELIVERED)).toBe(true);
    expect(await outbox.settle(claim, DELIVERED)).toBe(false);
  });

  it('after the lease, but before anybody else took the case, still counts', async () => {
    await store.inCase('slow', accept('slow'));
    const claim = await claimed();
    await makeDue('slow');
    expect(await outbox.settle(claim, DELIVERED)).toBe(true);
    expect(await rival.claim(LEASE_MS)).toBeUndefined();
  });

  it('delivered: nothing is due, and the places on the server are kept', async () => {
    await store.inCase('delivered', accept('delivered'));
    await outbox.settle(await claimed(), DELIVERED);
    expect(await outbox.nextDueInMs()).toBeUndefined();
    const { rows } = await database.pool.query(
      `select delivered_state, locations from outbox where case_id = 'delivered'`,
    );
    expect(rows).toEqual([{ delivered_state: 1, locations: ['Procedure/1'] }]);
  });

  it('retry: waits as long as it says, and counts', async () => {
    await store.inCase('retry', accept('retry'));
    await outbox.settle(await claimed(), retry(30_000));
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
    const dueIn = (await outbox.nextDueInMs()) ?? 0;
    expect(dueIn).toBeGreaterThan(20_000);
    expect(dueIn).toBeLessThanOrEqual(30_000);
    expect((await store.read('retry'))?.delivery).toMatchObject({
      name: 'queued',
      attempts: 1,
      reason: REASON,
    });
    await makeDue('retry');
    expect((await claimed()).attempts).toBe(1);
  });

  it('retry that does not count gives its attempt back', async () => {
    await store.inCase('free', accept('free'));
    for (let i = 0; i < 3; i += 1) await outbox.settle(await claimed(), retry(0, false));
    expect((await claimed()).attempts).toBe(0);
  });

  it('waiting for the patient: has a name of its own and does not count', async () => {
    await store.inCase('patient', accept('patient'));
    const waiting = {
      kind: 'waiting-patient',
      reason: 'No patient yet.',
      afterMs: 60_000,
    } as const;
    await outbox.settle(await claimed(), waiting);
    expect((await store.read('patient'))?.delivery).toMatchObject({
      name: 'waiting-patient',
      attempts: 0,
      reason: 'No patient yet.',
    });
    expect(await outbox.claim(LEASE_MS)).toBeUndefined();
  });

  it('dead letter: is never due again and says class, reason, first and last failure', async () => {
    await store.inCase('dead', accept('dead'));
    await outbox.settle(await claimed(), retry(0));
    const dead = { kind: 'dead-letter', failureClass: 'case', reason: 'Refused.' } as const;
    await outbox.settle(await claimed(), dead);
    expect(await outbox.nextDueInMs()).toBeUndefined();
    const { rows } = await database.pool.query(`
      select status, failure_class, reason, attempts, first_failed_at < last_failed_at as spread
      from outbox where case_id = 'dead'`);
    expect(rows).toEqual([
      {
        status: 'dead-letter',
        failure_class: 'case',
        reason: 'Refused.',
        attempts: 2,
        spread: true,
      },
    ]);
  });
});

describe('the counts', () => {
  it('name every state, with zero where there is none', async () => {
    for (const id of ['n-1', 'n-2', 'n-3']) await store.inCase(id, accept(id));
    await outbox.settle(await claimed(), DELIVERED);
    await claimed();
    expect(await outbox.counts()).toEqual({
      queued: 1,
      sending: 1,
      delivered: 1,
      'waiting-patient': 0,
      'waiting-case': 0,
      'dead-letter': 0,
    });
  });
});
