import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { afterAll } from 'vitest';
import { type AnyDatabase, prepareSandbox } from '../../../src/sandbox/index.js';
import { testDatabase } from '../../support/database.js';

export interface SandboxDatabase {
  readonly db: AnyDatabase;
  readonly pool: pg.Pool;
}

/**
 * A database of this test file alone that holds an empty sandbox and nothing else. Call it at the
 * top of the file; it goes when the tests of the file are done.
 */
export async function sandboxDatabase(): Promise<SandboxDatabase> {
  const { url } = await testDatabase('none');
  const pool = new pg.Pool({ connectionString: url, max: 5 });
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
  afterAll(async () => await db.destroy());
  await prepareSandbox(db);
  return { db, pool };
}
