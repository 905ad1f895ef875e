import { describe, expect, it } from 'vitest';
import { createOutbox, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const other = await test.open();
const store = createRecordStore(database);
const outbox = createOutbox(other, { worker: 'one' });

/** One of about 25 claims met a state in the middle of its commit, where that was still harmful. */
const CLAIMS = 150;
const CASES = ['a', 'b', 'c', 'd', 'e', 'f'];

/** Rows that somebody has claimed. */
async function sending(): Promise<number> {
  const { sending } = await outbox.counts();
  return sending;
}

describe('a claim that meets a state in the middle of its commit', () => {
  it('gives it to the worker, and leaves no row claimed by nobody', async () => {
    let over = false;
    const writers = CASES.map(async (caseId) => {
      for (let number = 1; !over; number += 1) await store.inCase(caseId, accept(caseId, number));
    });
    let claims = 0;
    let claimedByNobody = 0;
    while (claims < CLAIMS && claimedByNobody === 0) {
      const claim = await outbox.claim(60_000);
      if (claim === undefined) claimedByNobody += await sending();
      else {
        claims += 1;
        expect(claim.version).toBe(`{"state":${claim.state}}`);
        await outbox.settle(claim, { kind: 'delivered', detail: 'as sent', locations: [] });
      }
    }
    over = true;
    await Promise.all(writers);
    expect(claimedByNobody).toBe(0);
  });

  it('would be caught: a row that is claimed shows in the counts', async () => {
    await store.inCase('g', accept('g'));
    while ((await outbox.claim(60_000)) === undefined) await sending();
    expect(await sending()).toBeGreaterThan(0);
  });
});
