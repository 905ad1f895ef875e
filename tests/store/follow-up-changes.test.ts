import pg from 'pg';
import { describe, expect, it } from 'vitest';
import type { ChangePoint, FollowUpRow, Place } from '../../src/pipeline/index.js';
import { createRecordStore, openDatabase } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { idOf, row, save } from './follow-up-samples.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const { followUps } = store;
/** Made of the same template, so that all that lies in it is the same. */
const copy = await testDatabase();

/** Every change after a point, a page at a time. */
async function changesAfter(point: ChangePoint, limit = 500) {
  const ids: string[] = [];
  let until = point;
  for (;;) {
    const changes = await followUps.changes(until, limit);
    if (changes === undefined) throw new Error('the point is of this database');
    ids.push(...changes.followUps.map(({ id }) => id));
    until = changes.until;
    if (changes.followUps.length < limit) return { ids, until };
  }
}

/**
 * The present point, once no transaction of another database of the server holds back what is told
 * of ours.
 */
async function settled(): Promise<ChangePoint> {
  const text = 'select changed_tx::text as newest from follow_ups order by changed_tx desc limit 1';
  for (;;) {
    const { rows } = await database.pool.query(text);
    const point = await followUps.now();
    if (BigInt(point.transaction) > BigInt(rows[0]?.newest ?? 0)) return point;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** A state that is saved when it is told to, and until then lies uncommitted. */
function slowSave(caseId: string, rows: readonly FollowUpRow[]) {
  let commit = (): void => {};
  let written = (): void => {};
  const isWritten = new Promise<void>((done) => {
    written = done;
  });
  const mayCommit = new Promise<void>((done) => {
    commit = done;
  });
  const saved = store.inCase(caseId, async (journal) => {
    await journal.saveFollowUps(1, { patientKey: 'p', rows });
    written();
    await mayCommit;
  });
  const end = (): Promise<void> => {
    commit();
    return saved;
  };
  return { isWritten, commit: end };
}

describe('changes', () => {
  it('are told once, in order, from the point of the answer before', async () => {
    const start = await settled();
    await save(store, 'a', 1, [row('a-1'), row('a-2')]);
    await save(store, 'b', 1, [row('b-1')]);
    await settled();
    const first = await changesAfter(start);
    expect(first.ids).toEqual(['a-1', 'a-2', 'b-1']);
    expect((await changesAfter(first.until)).ids).toEqual([]);
    await save(store, 'a', 2, [row('a-1')]);
    await settled();
    expect((await changesAfter(first.until)).ids).toEqual(['a-2']);
  });

  it('come a page at a time in the middle of one transaction', async () => {
    const start = await settled();
    await save(
      store,
      'many',
      1,
      ['m-1', 'm-2', 'm-3', 'm-4', 'm-5'].map((id) => row(id)),
    );
    expect((await changesAfter(start, 2)).ids).toEqual(['m-1', 'm-2', 'm-3', 'm-4', 'm-5']);
  });

  it('are not missed where the transaction that began first commits last', async () => {
    const start = await settled();
    const early = slowSave('early', [row('early-1')]);
    await early.isWritten;
    await save(store, 'late', 1, [row('late-1')]);
    const meanwhile = await changesAfter(start);
    expect(meanwhile.ids).toEqual([]);
    await early.commit();
    await settled();
    expect((await changesAfter(meanwhile.until)).ids).toEqual(['early-1', 'late-1']);
  });

  it('would be missed by a reader that goes on from the last number that it has seen', async () => {
    const early = slowSave('early-2', [row('naive-1')]);
    await early.isWritten;
    await save(store, 'late-2', 1, [row('naive-2')]);
    const { pool } = database;
    const seen = await pool.query('select max(changed_tx::text::bigint) as tx from follow_ups');
    await early.commit();
    const after = await pool.query(
      'select id from follow_ups where changed_tx::text::bigint > $1',
      [seen.rows[0]?.tx],
    );
    expect(after.rows).toEqual([]);
  });

  it('are told to two who read while many write, each of them all of it', async () => {
    const start = await settled();
    const cases = Array.from({ length: 40 }, (_, i) => `w-${i}`);
    let writing = true;
    const reader = async () => {
      const seen: string[] = [];
      let until = start;
      for (let last = false; ; ) {
        const { ids, until: next } = await changesAfter(until, 3);
        seen.push(...ids);
        until = next;
        if (last) return seen.filter((id) => id.startsWith('w-'));
        last = !writing;
      }
    };
    const readers = [reader(), reader()];
    await Promise.all(cases.map((id) => save(store, id, 1, [row(`${id}-x`), row(`${id}-y`)])));
    await settled();
    writing = false;
    const expected = cases.flatMap((id) => [`${id}-x`, `${id}-y`]).sort();
    for (const seen of await Promise.all(readers)) expect(seen.sort()).toEqual(expected);
  });

  it('know no point of another database, nor one of a time that has not come', async () => {
    const now = await followUps.now();
    const future = { ...now, transaction: (BigInt(now.transaction) + 1_000_000n).toString() };
    expect(await followUps.changes(future, 10)).toBeUndefined();
    const other = { ...now, mark: '00000000-0000-4000-8000-000000000000' };
    expect(await followUps.changes(other, 10)).toBeUndefined();
    expect(await followUps.changes(now, 10)).toBeDefined();
  });

  it('know no point of a copy of their database, whose transactions go their own way', async () => {
    const copied = createRecordStore(await copy.open()).followUps;
    const marks = async (url: string) => {
      const client = new pg.Client({ connectionString: url });
      await client.connect();
      const { rows } = await client.query('select mark from follow_ups_mark');
      await client.end();
      return rows;
    };
    expect(await marks(copy.url)).toEqual(await marks(test.url));
    const there = { ...(await copied.now()), transaction: '3' };
    expect(await copied.changes(there, 10)).toBeDefined();
    expect(await followUps.changes(there, 10)).toBeUndefined();
  });

  it('begin anew where a database was restored whose transactions lie ahead', async () => {
    const before = await followUps.now();
    await save(store, 'restored', 1, [row('restored-1')]);
    await database.pool.query(
      `update follow_ups set changed_tx = '9000000000000'::xid8 where id = 'restored-1'`,
    );
    expect((await changesAfter(before)).ids).not.toContain('restored-1');
    await (await openDatabase(test.url)).close();
    expect(await followUps.changes(before, 10)).toBeUndefined();
    await settled();
    const now = { ...(await followUps.now()), transaction: '0' };
    expect((await changesAfter(now)).ids).toContain('restored-1');
    const mark = (await followUps.now()).mark;
    await (await openDatabase(test.url)).close();
    expect((await followUps.now()).mark).toBe(mark);
  });
});

describe('paging through 5,000 follow-ups while they change', () => {
  const COUNT = 5_000;
  const dayOf = (n: number): string =>
    new Date(Date.UTC(2028, 0, 1 + (n % 400))).toISOString().slice(0, 10);
  const windowed = (n: number, target = dayOf(n), document = '{}'): FollowUpRow =>
    row(idOf(n), { window: { earliest: target, target, latest: target }, document });
  const caseOf = (n: number): string => `page-${Math.floor(n / 100)}`;
  const numbers = Array.from({ length: COUNT }, (_, n) => n);
  const rowsOf = (caseId: string, make: (n: number) => FollowUpRow) =>
    numbers.filter((n) => caseOf(n) === caseId).map(make);

  it('loses none and repeats none that stays on its day; of one that moves the changes tell', async () => {
    for (const caseId of new Set(numbers.map(caseOf))) {
      await save(
        store,
        caseId,
        1,
        rowsOf(caseId, (n) => windowed(n)),
      );
    }
    const listing = { states: ['open'] as const, from: '2028-01-01', limit: 170 };
    const start = await settled();
    // Of every case that is written anew, each row says something new and one in ten moves.
    const moves = (n: number): boolean => n % 10 === 3 && Number(caseOf(n).slice(5)) % 2 === 0;
    const moved = (n: number): string => dayOf(moves(n) ? n + 200 : n);
    const seen: string[] = [];
    let after: Place | undefined;
    let turn = 0;
    do {
      const page = await followUps.list({ ...listing, ...(after === undefined ? {} : { after }) });
      seen.push(...page.followUps.map(({ id }) => id));
      const caseId = `page-${2 * turn}`;
      if (turn < 25) {
        await save(
          store,
          caseId,
          2,
          rowsOf(caseId, (n) => windowed(n, moved(n), '{"n":2}')),
        );
      }
      turn += 1;
      after = page.next;
    } while (after !== undefined);

    const moving = new Set(numbers.filter(moves).map(idOf));
    const staying = numbers.map(idOf).filter((id) => !moving.has(id));
    expect(seen.filter((id) => !moving.has(id)).sort()).toEqual(staying);
    await settled();
    const told = new Set([...seen, ...(await changesAfter(start)).ids]);
    expect(numbers.map(idOf).filter((id) => !told.has(id))).toEqual([]);
  }, 60_000);
});
