import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { afterAll, inject } from 'vitest';
import {
  type Database,
  type DatabaseOptions,
  openDatabase,
  startOwnPostgres,
} from '../../src/store/index.js';

/** A database of this test file alone, on a real PostgreSQL. */
export interface TestDatabase {
  readonly url: string;
  /** Opens it once more, as another program would; closed at the end by itself. */
  open(options?: DatabaseOptions): Promise<Database>;
}

const TEMPLATE = 'records_template';
/** Serialises the making of the template between test files. */
const TEMPLATE_LOCK = 5_551_212;

/**
 * Makes a fresh database and drops it after the tests of this file. Call it at the top of the
 * file: `const test = await testDatabase();`
 *
 * @param schema `newest`, or `none` for a database without a single table
 */
export async function testDatabase(schema: 'newest' | 'none' = 'newest'): Promise<TestDatabase> {
  const postgres = await startOwnPostgres({ folder: inject('postgresFolder'), durable: false });
  const name = `test_${process.pid}_${randomBytes(4).toString('hex')}`;
  await administer(postgres.url, async (admin) => {
    if (schema === 'newest') await ensureTemplate(admin, postgres.url);
    const template = schema === 'newest' ? TEMPLATE : 'template0';
    await admin.query(`create database ${name} template ${template} strategy file_copy`);
  });
  const url = named(postgres.url, name);
  let opened: readonly Database[] = [];

  afterAll(async () => {
    await Promise.all(opened.map((database) => database.close()));
    await administer(postgres.url, async (admin) => {
      await admin.query(`drop database ${name} with (force)`);
    });
    await postgres.leave();
  });
  return {
    url,
    open: async (options) => {
      const database = await openDatabase(url, options);
      opened = [...opened, database];
      return database;
    },
  };
}

/** Made under another name and renamed, so that it is there whole or not at all. */
async function ensureTemplate(admin: pg.Client, url: string): Promise<void> {
  await admin.query('select pg_advisory_lock($1)', [TEMPLATE_LOCK]);
  const found = await admin.query('select 1 from pg_database where datname = $1', [TEMPLATE]);
  if (found.rowCount === 0) {
    const draft = `${TEMPLATE}_draft`;
    await admin.query(`drop database if exists ${draft} with (force)`);
    await admin.query(`create database ${draft} template template0`);
    await (await openDatabase(named(url, draft))).close();
    await admin.query(`alter database ${draft} rename to ${TEMPLATE}`);
  }
  await admin.query('select pg_advisory_unlock($1)', [TEMPLATE_LOCK]);
}

async function administer(url: string, work: (admin: pg.Client) => Promise<void>): Promise<void> {
  const admin = new pg.Client({ connectionString: named(url, 'postgres') });
  await admin.connect();
  try {
    await work(admin);
  } finally {
    await admin.end();
  }
}

function named(url: string, database: string): string {
  const other = new URL(url);
  other.pathname = `/${database}`;
  return other.href;
}
