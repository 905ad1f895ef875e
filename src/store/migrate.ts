import { Kysely, Migrator, PostgresDialect, sql } from 'kysely';
import type pg from 'pg';
import { InvariantError } from '../kernel/index.js';
import { MEND_CHANGES } from './mend-changes.js';
import { MIGRATIONS, migrationProvider } from './migrations/all.js';
import { openPool } from './pool.js';
import { StoreRefused } from './store-refused.js';

/**
 * Brings the database to the newest schema. All that is missing is done in one transaction under
 * a lock of the migrator: cut short it leaves nothing behind, and of several programs one does it
 * while the others wait. On a database that is there already it does nothing.
 *
 * @param config of a connection of its own, without the limits that serve requests
 * @throws StoreRefused when a newer release has changed the schema
 */
export async function migrate(config: pg.ClientConfig): Promise<void> {
  const pool = openPool({ ...config, max: 1 }, () => {});
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
  try {
    await refuseNewer(db);
    const { error } = await new Migrator({ db, provider: migrationProvider }).migrateToLatest();
    if (error !== undefined) {
      throw error instanceof Error ? error : new InvariantError('A migration failed.');
    }
    await pool.query(MEND_CHANGES);
  } finally {
    await db.destroy();
  }
}

async function refuseNewer(db: Kysely<unknown>): Promise<void> {
  const table = await sql<{ found: boolean }>`
    select to_regclass('kysely_migration') is not null as found`.execute(db);
  if (table.rows[0]?.found !== true) return;
  const done = await sql<{ name: string }>`select name from kysely_migration`.execute(db);
  const unknown = done.rows.map(({ name }) => name).filter((name) => !(name in MIGRATIONS));
  if (unknown.length === 0) return;
  throw new StoreRefused(
    `The database was changed by a newer release (${unknown.join(', ')}), which this one does ` +
      'not know. Start the newer release, or restore the database to one of this age.',
  );
}
