import { describe, expect, it } from 'vitest';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const count = async (table: string) =>
  (await database.pool.query(`select count(*) as n from ${table}`)).rows[0]?.n;

/** SQLSTATE 23000 (https://www.postgresql.org/docs/18/errcodes-appendix.html), given by the guard. */
const REFUSED = { code: '23000' };

describe.each(['journal', 'timeline'])('the %s, which is append-only', (table) => {
  it.each([
    `update ${table} set case_id = 'other'`,
    `update ${table} set case_id = 'other' where false`,
    `delete from ${table}`,
    `truncate ${table}`,
  ])('refuses %s with 23000 and keeps its rows', async (statement) => {
    await store.inCase(`guarded ${statement}`, accept(`guarded ${statement}`));
    const before = await count(table);
    await expect(database.pool.query(statement)).rejects.toMatchObject(REFUSED);
    expect(before).toBeGreaterThan(0);
    expect(await count(table)).toBe(before);
  });
});

describe('the guard of append-only tables', () => {
  it('stands on those tables alone: derived rows may be changed', async () => {
    await store.inCase('derived', accept('derived'));
    await expect(database.pool.query(`delete from facts`)).resolves.toBeDefined();
  });
});
