import pg from 'pg';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { NOT_TOLD, OUTCOME_FILTERS } from '../../src/contract/index.js';
import { StoreUnavailable } from '../../src/kernel/index.js';
import { FACT_COLUMNS } from '../../src/store/fact-columns.js';
import { openDatabase, StoreRefused } from '../../src/store/index.js';
import { startChild } from '../support/child.js';
import { testDatabase } from '../support/database.js';

const TABLES = [
  ...[
    'appointments_seen',
    'daily_turns',
    'facts',
    'feeds',
    'follow_ups',
    'follow_ups_mark',
    'follow_ups_unfilled',
    'identity_mode',
    'journal',
    'outbox',
    'readiness',
    'search_keys',
    'site',
  ],
  ...['states', 'timeline'],
];

const schemaNone = () => testDatabase('none');
const [once, cut, killed, shared, newer] = [
  await schemaNone(),
  await schemaNone(),
  await schemaNone(),
  await schemaNone(),
  await schemaNone(),
];

async function query(url: string, text: string): Promise<readonly Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(text)).rows;
  } finally {
    await client.end();
  }
}

const tablesOf = async (url: string) =>
  (
    await query(
      url,
      `select table_name from information_schema.tables
       where table_schema = 'public' and table_name not like 'kysely%' order by table_name`,
    )
  ).map((row) => row['table_name']);

const migrationsOf = (url: string) => query(url, 'select name, timestamp from kysely_migration');

afterEach(() => vi.restoreAllMocks());

describe('the schema', () => {
  it('is made on an empty database, and left alone from then on', async () => {
    expect(await tablesOf(once.url)).toEqual([]);
    await once.open();
    expect(await tablesOf(once.url)).toEqual(TABLES);
    const done = await migrationsOf(once.url);
    await once.open();
    expect(await migrationsOf(once.url)).toEqual(done);
  });

  it('has one column for every fact, open where the fact may be, and no other', async () => {
    const database = await once.open();
    const { rows } = await database.pool.query(
      `select column_name as name, is_nullable = 'YES' as nullable
       from information_schema.columns where table_name = 'facts' and is_generated = 'NEVER'
       order by ordinal_position`,
    );
    expect(rows).toEqual(Object.values(FACT_COLUMNS));
  });

  it('has the words of the contract as its types, and one for what was never computed', async () => {
    const database = await once.open();
    const { rows } = await database.pool.query(
      'select t.typname as type, e.enumlabel as word from pg_enum e join pg_type t on t.oid = e.enumtypid',
    );
    const found = rows
      .filter(({ word }) => word !== 'not computed')
      .map(({ type, word }) => `${type} ${word}`);
    const { organ, sizeBand, traineeBand, fibrosis, technique } = OUTCOME_FILTERS;
    const isTold = (word: string) => word !== NOT_TOLD;
    const lists: readonly (readonly [string, readonly string[]])[] = [
      ['organ', organ],
      ['size_band', sizeBand],
      ['trainee_band', traineeBand],
      // Open facts are null.
      ['fibrosis', fibrosis.filter(isTold)],
      ['technique', technique.filter(isTold)],
    ];
    expect(new Set(found)).toEqual(
      new Set(lists.flatMap(([type, words]) => words.map((word) => `${type} ${word}`))),
    );
  });

  it('holds no jsonb, which keeps JSON otherwise than it came', async () => {
    const database = await once.open();
    const { rows } = await database.pool.query(
      `select table_name from information_schema.columns
       where table_schema = 'public' and data_type in ('json', 'jsonb')`,
    );
    expect(rows).toEqual([]);
  });

  it('is made once by several programs that start at the same moment', async () => {
    await Promise.all([shared.open(), shared.open(), shared.open(), shared.open()]);
    expect(await tablesOf(shared.url)).toEqual(TABLES);
    const names = (await migrationsOf(shared.url)).map(({ name }) => name);
    expect(names).toEqual([...new Set(names)].sort());
  });
});

describe('making the schema, cut short', () => {
  it('leaves nothing or all of it, whichever statement was the last', async () => {
    const statements = Reflect.get(pg.Client.prototype, 'query');
    for (let last = 1; ; last += 1) {
      let sent = 0;
      vi.spyOn(pg.Client.prototype, 'query').mockImplementation(function (
        this: pg.Client,
        ...args: unknown[]
      ) {
        sent += 1;
        if (sent === last) Reflect.get(this, 'connection').stream.destroy();
        return Reflect.apply(statements, this, args);
      });
      const opened = await openDatabase(cut.url).catch((error: unknown) => error);
      vi.restoreAllMocks();
      if (sent < last) break;
      expect([[], TABLES]).toContainEqual(await tablesOf(cut.url));
      if (opened instanceof Error) expect(opened).toBeInstanceOf(StoreUnavailable);
      expect(last).toBeLessThan(100);
    }
    await cut.open();
    expect(await tablesOf(cut.url)).toEqual(TABLES);
  });

  it('is finished by the next start when the program was killed in the middle', async () => {
    const child = startChild(
      new URL('./children/migrate-and-die.ts', import.meta.url),
      killed.url,
      'create table outbox',
    );
    expect(await child.ended).toBe('SIGKILL');
    expect(await tablesOf(killed.url)).toEqual([]);
    await killed.open();
    expect(await tablesOf(killed.url)).toEqual(TABLES);
  });
});

describe('a database that a newer release has changed', () => {
  it('is refused, naming what is not known', async () => {
    await (await openDatabase(newer.url)).close();
    await query(newer.url, `insert into kysely_migration values ('9999-later', '2030-01-01')`);
    const opened = openDatabase(newer.url);
    await expect(opened).rejects.toThrow(StoreRefused);
    await expect(opened).rejects.toThrow('9999-later');
  });
});
