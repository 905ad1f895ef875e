import { Kysely, Migrator, PostgresDialect } from 'kysely';
import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { createRecordStore } from '../../src/store/index.js';
import { migrationProvider } from '../../src/store/migrations/all.js';
import { testDatabase } from '../support/database.js';
import { accept, entry, state } from './samples.js';

const test = await testDatabase();
const older = await testDatabase('none');
const database = await test.open();
const [store, other] = [createRecordStore(database), createRecordStore(await test.open())];
const NOON = '2026-05-20T12:00:00.000Z';

const save = (caseId: string, deadlineAt?: string) =>
  store.inCase(caseId, async (journal) => {
    await journal.append(entry(caseId));
    const due = deadlineAt === undefined ? {} : { deadlineAt };
    await journal.saveState({ ...state(caseId), ...due });
  });

describe('cases whose deadline has come', () => {
  it('are found to the moment, by instant and not by text, a page at a time', async () => {
    await save('d-1', '2026-05-20T14:00:00+02:00');
    await save('d-2', '2026-05-20T10:00:00-02:01');
    await save('d-3');
    await save('d-4', '2026-05-01T00:00:00+02:00');
    expect(await store.pastDeadline(NOON, 10)).toEqual(['d-1', 'd-4']);
    expect(await store.pastDeadline(NOON, 1)).toEqual(['d-1']);
    expect(await store.pastDeadline(NOON, 1, 'd-1')).toEqual(['d-4']);
    expect(await store.pastDeadline('2026-05-20T12:01:00Z', 10)).toEqual(['d-1', 'd-2', 'd-4']);
  });

  it('are others once the deadline is another, or none', async () => {
    await store.inCase('d-1', (journal) => journal.saveDeadline('2026-06-01T00:00:00Z'));
    await store.inCase('d-4', (journal) => journal.saveDeadline(undefined));
    expect(await store.pastDeadline(NOON, 10)).toEqual([]);
    await store.inCase('d-1', accept('d-1', 2));
    expect(await store.pastDeadline('2027-01-01T00:00:00Z', 10)).toEqual(['d-2']);
  });
});

describe('work that one program does', () => {
  it('is done by one of two, and by the other when the first has ended', async () => {
    let end: () => void = () => {};
    const first = store.alone(
      () =>
        new Promise((resolve) => {
          end = resolve;
        }),
    );
    await expect.poll(async () => await other.alone(async () => {})).toBe(false);
    end();
    expect(await first).toBe(true);
    expect(await other.alone(async () => {})).toBe(true);
  });

  it('throws what the work throws, and lets the next one in', async () => {
    const fault = new TypeError('of the work');
    await expect(store.alone(() => Promise.reject(fault))).rejects.toBe(fault);
    expect(await other.alone(async () => {})).toBe(true);
  });
});

describe('the turn of a day', () => {
  it('is taken once, and again a day later', async () => {
    const at = (text: string) => store.dailyTurn('t', text);
    expect(await Promise.all([at(NOON), other.dailyTurn('t', NOON)])).toContain(true);
    expect(await at('2026-05-21T11:59:59.999Z')).toBe(false);
    expect(await store.dailyTurn('another', NOON)).toBe(true);
    expect(await at('2026-05-21T12:00:00.000Z')).toBe(true);
    expect(await at('2026-05-21T12:00:00.000Z')).toBe(false);
  });

  it('is taken by one of two at the same moment', async () => {
    const both = [store, other].map((one) => one.dailyTurn('same moment', NOON));
    expect((await Promise.all(both)).filter(Boolean)).toHaveLength(1);
  });
});

describe('two sources that use the same number', () => {
  it('have a line of revisions each', async () => {
    await store.inCase('lines', async (journal) => {
      await journal.append(entry('lines'));
      await journal.append({ ...entry('lines'), source: 'unit-b' });
    });
    const sources = (await store.entries('lines')).map(({ source }) => source);
    expect(sources).toEqual(['unit-a', 'unit-b']);
  });
});

describe('cases that were kept before time was told', () => {
  /** A database as the release before has left it. */
  async function leaveOld(): Promise<void> {
    const pool = new pg.Pool({ connectionString: older.url });
    const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
    const migrator = new Migrator({ db, provider: migrationProvider });
    const { error } = await migrator.migrateTo('0006-after-the-case');
    expect(error).toBeUndefined();
    const rows = [
      ['kept', 'en-bloc', true, null, false],
      ['interim', 'en-bloc', null, 'interim', false],
      ['reported', 'en-bloc', true, 'final', false],
      ['lost', 'en-bloc', false, null, false],
      ['not cut', 'not-started', null, null, false],
      ['withdrawn', 'en-bloc', true, null, true],
    ];
    for (const row of rows) {
      await pool.query(
        `insert into facts (case_id, state, source, organ, operator, scope_in_at,
           lesion_long_axis_mm, resection_outcome, specimen_retrieved, pathology_status, withdrawn)
         values ($1, 1, 'a', 'colon', 'o', '2026-03-02T08:00:00+01:00', 20, $2, $3, $4, $5)`,
        row,
      );
      await pool.query(
        `insert into outbox (case_id, source, state, status, since, queued_at)
         values ($1, 'a', 1, 'delivered', now(), now())`,
        [row[0]],
      );
    }
    await pool.query(
      `insert into outbox (case_id, source, state, status, since, queued_at)
       values ('waits', 'a', 1, 'waiting-case', now(), now())`,
    );
    await db.destroy();
  }

  it('wait for pathology where they did, and are all looked at once', async () => {
    await leaveOld();
    const kept = createRecordStore(await older.open());
    const found = await kept.search({ searchKeys: {}, awaiting: 'pathology', limit: 10 });
    expect(found.map(({ caseId }) => caseId)).toEqual(['interim', 'kept']);
    const tomorrow = new Date(Date.now() + 86_400_000).toISOString();
    expect(await kept.pastDeadline(tomorrow, 10)).toHaveLength(6);
    expect(await kept.pastDeadline(tomorrow, 10)).not.toContain('waits');
    expect(await kept.countWaiting(tomorrow)).toBe(1);
    expect(await kept.countWaiting('2020-01-01T00:00:00Z')).toBe(0);
  });
});
