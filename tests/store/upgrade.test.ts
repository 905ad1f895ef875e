import fc from 'fast-check';
import { Kysely, Migrator, PostgresDialect } from 'kysely';
import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { DIMENSIONS } from '../../src/outcomes/index.js';
import { factColumns } from '../../src/store/fact-columns.js';
import { createRecordStore } from '../../src/store/index.js';
import { migrationProvider } from '../../src/store/migrations/all.js';
import { countFacts, type Facts } from '../support/count-facts.js';
import { testDatabase } from '../support/database.js';
import { madeFacts, putFacts } from '../support/made-facts.js';
import { state } from './samples.js';

const test = await testDatabase('none');

const [made = []] = fc.sample(madeFacts(200, 200), { numRuns: 1, seed: 3 });
/** Written before the words of outcomes were computed: what came later has its default. */
const OLD: Facts = state('case-old').facts;
const COLUMNS_OF_OLD = [
  ...['case_id', 'state', 'source', 'organ', 'operator', 'scope_in_at', 'resection_outcome'],
  ...['lesion_long_axis_mm', 'curability_rule', 'withdrawn', 'awaits_pathology'],
].join(', ');

const rowsOf = async (pool: pg.Pool): Promise<readonly string[]> => {
  const text = factColumns().map((name) => `${name}::text`);
  const { rows } = await pool.query({
    text: `select ${text.join(', ')} from facts order by case_id collate "C"`,
    rowMode: 'array',
  });
  return rows.map((row) => JSON.stringify(row));
};

/** Fires for each statement that writes a table anew (PostgreSQL, Event Triggers, table_rewrite). */
const COUNT_REWRITES = `
  create sequence rewritten;
  create function count_rewrite() returns event_trigger language plpgsql as
    $$ begin perform nextval('rewritten'); end $$;
  create event trigger count_rewrites on table_rewrite execute function count_rewrite()`;

/** Brings the database to an older schema and fills it; what the rows are then. */
async function fillAt(migration: string): Promise<readonly string[]> {
  const pool = new pg.Pool({ connectionString: test.url });
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
  try {
    await new Migrator({ db, provider: migrationProvider }).migrateTo(migration);
    await putFacts({ pool }, [...made, OLD]);
    await pool.query(`
      create temporary table old as
        select ${COLUMNS_OF_OLD} from facts where case_id = 'case-old';
      delete from facts where case_id = 'case-old';
      insert into facts (${COLUMNS_OF_OLD}) select * from old`);
    await pool.query(COUNT_REWRITES);
    return await rowsOf(pool);
  } finally {
    await db.destroy();
  }
}

describe('facts that an older release has written', () => {
  it('are the same after the upgrade, count as new ones do, and were written anew once', async () => {
    const before = await fillAt('0012-appointments-seen');
    const database = await test.open();
    expect(await rowsOf(database.pool)).toEqual(before);
    expect(before.filter((row) => row.includes('not computed'))).toHaveLength(1);

    const asked = { filters: {} };
    const by = { cells: [...DIMENSIONS], values: [] };
    const counted = await countFacts(made).tally(asked, by);
    const { cells, ...others } = await createRecordStore(database).outcomes.read((counts) =>
      counts.tally(asked, by),
    );
    expect(cells).toHaveLength(counted.cells.length);
    expect(cells).toEqual(expect.arrayContaining([...counted.cells]));
    expect(new Set(others.firstChecks)).toEqual(new Set(counted.firstChecks));
    expect(new Set(others.watched)).toEqual(new Set(counted.watched));

    const { rows } = await database.pool.query('select last_value, is_called from rewritten');
    expect(rows).toEqual([{ last_value: 1, is_called: true }]);
  });
});
