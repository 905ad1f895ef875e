import { setTimeout as delay } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { createRecordStore, openDatabase } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept, entry, state } from './samples.js';
import { untilSomebodyWaits } from './waiting.js';

const test = await testDatabase();
const database = await test.open();
const other = await test.open();
const store = createRecordStore(database);
const second = createRecordStore(other);

const entriesOf = (caseId: string) => store.inCase(caseId, (journal) => journal.entries());

describe('work on one case', () => {
  it('is rolled back whole when it throws, and throws what it threw', async () => {
    const fault = new Error('of the work');
    const work = store.inCase('thrown', async (journal) => {
      await accept('thrown')(journal);
      throw fault;
    });
    await expect(work).rejects.toBe(fault);
    expect(await entriesOf('thrown')).toEqual([]);
    expect(await store.read('thrown')).toBeUndefined();
  });

  it('waits for the same case in another program and then sees what that committed', async () => {
    const steps: string[] = [];
    let entered: () => void = () => {};
    const inside = new Promise<void>((done) => {
      entered = done;
    });
    const first = store.inCase('shared', async (journal) => {
      entered();
      await delay(50);
      await accept('shared')(journal);
      steps.push('first ends');
    });
    await inside;
    const after = await second.inCase('shared', async (journal) => {
      steps.push('second begins');
      return (await journal.entries()).length;
    });
    await first;
    expect(steps).toEqual(['first ends', 'second begins']);
    expect(after).toBe(1);
  });

  it('does not wait for another case', async () => {
    const inner = await store.inCase('one', () => second.inCase('two', async () => 'done'));
    expect(inner).toBe('done');
  });

  it('takes one of 40 equal messages pushed at once through two programs', async () => {
    const push = (at: number) =>
      (at % 2 === 0 ? store : second).inCase('pushed', async (journal) => {
        if ((await journal.entries()).length > 0) return 'repeat';
        await accept('pushed')(journal);
        return 'accepted';
      });
    const answers = await Promise.all(Array.from({ length: 40 }, (_, i) => push(i)));
    expect(answers.filter((answer) => answer === 'accepted')).toHaveLength(1);
    expect(await entriesOf('pushed')).toHaveLength(1);
  });

  it('refuses to touch another case than the locked one', async () => {
    const wrong = store.inCase('locked', (journal) => journal.append(entry('unlocked')));
    await expect(wrong).rejects.toThrow('the case that is locked');
    const saved = store.inCase('locked', (journal) => journal.saveState(state('unlocked')));
    await expect(saved).rejects.toThrow('the case that is locked');
  });

  it('refuses the same revision twice as a fault of the program, naming the constraint', async () => {
    await store.inCase('twice', accept('twice', 1));
    const again = store.inCase('twice', (journal) => journal.append(entry('twice', 1)));
    await expect(again).rejects.toThrow(InvariantError);
    await expect(again).rejects.toThrow('journal_one_message_a_revision');
    await expect(again).rejects.not.toThrow('twice');
  });

  it('runs again from the beginning when it was the victim of a deadlock', async () => {
    // https://www.postgresql.org/docs/18/explicit-locking.html#LOCKING-DEADLOCKS
    await store.inCase('again', accept('again', 1));
    const quick = await openDatabase(`${test.url}?options=-c%20deadlock_timeout%3D20ms`);
    const rival = await other.pool.connect();
    await rival.query(`begin; set local deadlock_timeout = '1min';
      update facts set unit = 'rival' where case_id = 'again'`);
    let runs = 0;
    const work = createRecordStore(quick).inCase('again', async (journal) => {
      runs += 1;
      if (runs === 2) await rival.query('commit');
      await accept('again', 2)(journal);
    });
    await untilSomebodyWaits(database.pool);
    await rival.query(`update outbox set worker = 'rival' where case_id = 'again'`);
    await work;
    rival.release();
    await quick.close();
    expect(runs).toBe(2);
    expect((await entriesOf('again')).map(({ revision }) => revision)).toEqual([1, 2]);
    expect((await store.read('again'))?.state).toBe(2);
  });
});
