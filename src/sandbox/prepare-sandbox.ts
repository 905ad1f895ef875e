import { sql } from 'kysely';
import { type AnyDatabase, inSandbox } from './tables.js';
import { holdWriterLock } from './writer-lock.js';

const STATEMENTS = [
  'create schema if not exists sandbox',
  `create table if not exists sandbox.resource (
     type text not null, id text not null, version integer not null,
     updated_ms double precision not null, primary key (type, id))`,
  `create table if not exists sandbox.version (
     type text not null, id text not null, version integer not null,
     updated_ms double precision not null, method text not null, content text not null,
     primary key (type, id, version))`,
  `create table if not exists sandbox.search_value (
     type text not null, id text not null, param text not null, system text, code text,
     target text, target_id text, low_ms double precision, high_ms double precision,
     exact text, folded text)`,
  `create index if not exists search_value_of_resource
     on sandbox.search_value (type, id, param)`,
  `create index if not exists search_value_by_code
     on sandbox.search_value (code, param, type) where code is not null`,
  `create index if not exists search_value_by_target
     on sandbox.search_value (target, param, type) where target is not null`,
  `create index if not exists search_value_by_date
     on sandbox.search_value (type, param, low_ms) where low_ms is not null`,
  `create table if not exists sandbox.page (
     token uuid primary key, created_ms double precision not null, type text not null,
     query text not null, ids text[] not null)`,
] as const;

/**
 * Creates the schema `sandbox` with its tables, where they are not there yet. Touches nothing
 * else of the database; may be called at every start, and by several processes at once.
 */
export async function prepareSandbox(db: AnyDatabase): Promise<void> {
  await inSandbox(db)
    .transaction()
    .execute(async (tx) => {
      await holdWriterLock(tx);
      for (const statement of STATEMENTS) await sql.raw(statement).execute(tx);
    });
}

/** Forgets everything the sandbox holds, as a server that was set up anew. */
export async function wipeSandbox(db: AnyDatabase): Promise<void> {
  const statement =
    'truncate sandbox.resource, sandbox.version, sandbox.search_value, sandbox.page';
  await sql.raw(statement).execute(inSandbox(db));
}
