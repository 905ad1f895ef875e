import { sql } from 'kysely';
import { invariant } from '../kernel/index.js';
import { isObject, type Json, type JsonObject } from './json.js';
import { isResourceType, type ResourceType } from './resource-types.js';
import { type SearchValue, searchValues } from './search-values.js';
import type { SandboxDatabase } from './tables.js';

export interface Key {
  readonly type: ResourceType;
  readonly id: string;
}

/** One version of a resource. */
export interface Stored extends Key {
  readonly version: number;
  readonly updatedMs: number;
  /** HTTP method by which it came. */
  readonly method: string;
  readonly resource: JsonObject;
}

export const nameOf = ({ type, id }: Key): string => `${type}/${id}`;

/** @returns the newest versions of those that exist, by Type/id */
export async function readNewest(
  db: SandboxDatabase,
  keys: readonly { type: string; id: string }[],
): Promise<ReadonlyMap<string, Stored>> {
  if (keys.length === 0) return new Map();
  const rows = await db
    .selectFrom('resource')
    .innerJoin('version', (join) =>
      join
        .onRef('version.type', '=', 'resource.type')
        .onRef('version.id', '=', 'resource.id')
        .onRef('version.version', '=', 'resource.version'),
    )
    .selectAll('version')
    .where(
      sql<boolean>`(resource.type, resource.id) in (select * from unnest(
        ${keys.map(({ type }) => type)}::text[], ${keys.map(({ id }) => id)}::text[]))`,
    )
    .execute();
  return new Map(rows.map((row) => [`${row.type}/${row.id}`, toStored(row)]));
}

export async function readVersion(
  db: SandboxDatabase,
  { type, id }: Key,
  version: number,
): Promise<Stored | undefined> {
  const row = await db
    .selectFrom('version')
    .selectAll()
    .where('type', '=', type)
    .where('id', '=', id)
    .where('version', '=', version)
    .executeTakeFirst();
  return row === undefined ? undefined : toStored(row);
}

/** @returns every version, the newest first; none when there never was such a resource */
export async function readHistory(
  db: SandboxDatabase,
  { type, id }: Key,
): Promise<readonly Stored[]> {
  const rows = await db
    .selectFrom('version')
    .selectAll()
    .where('type', '=', type)
    .where('id', '=', id)
    .orderBy('version', 'desc')
    .execute();
  return rows.map(toStored);
}

/** Makes each the newest version of its resource. What it is found by is written apart. */
export async function writeVersions(tx: SandboxDatabase, all: readonly Stored[]): Promise<void> {
  if (all.length === 0) return;
  const rows = all.map(({ type, id, version, updatedMs, method, resource }) => ({
    type,
    id,
    version,
    updated_ms: updatedMs,
    method,
    content: JSON.stringify(resource),
  }));
  await sql`insert into sandbox.version
    select * from json_to_recordset(${JSON.stringify(rows)}::json) as written (
      type text, id text, version integer, updated_ms double precision, method text, content text)
    `.execute(tx);
  await sql`insert into sandbox.resource
    select type, id, version, updated_ms from json_to_recordset(${JSON.stringify(rows)}::json)
      as written (type text, id text, version integer, updated_ms double precision)
    on conflict (type, id) do update
      set version = excluded.version, updated_ms = excluded.updated_ms`.execute(tx);
}

/** Takes the place of what these resources could be found by. */
export async function writeSearchValues(
  tx: SandboxDatabase,
  all: readonly (Key & { readonly resource: JsonObject })[],
  base: string,
): Promise<void> {
  if (all.length === 0) return;
  await sql`delete from sandbox.search_value where (type, id) in (select * from unnest(
    ${all.map(({ type }) => type)}::text[], ${all.map(({ id }) => id)}::text[]))`.execute(tx);
  const rows: readonly (SearchValue & Key)[] = all.flatMap(({ type, id, resource }) =>
    searchValues(type, resource, base).map((value) => ({ type, id, ...value })),
  );
  await sql`insert into sandbox.search_value
    select * from json_to_recordset(${JSON.stringify(rows)}::json) as written (
      type text, id text, param text, system text, code text, target text, target_id text,
      low_ms double precision, high_ms double precision, exact text, folded text)`.execute(tx);
}

interface VersionRow {
  readonly type: string;
  readonly id: string;
  readonly version: number;
  readonly updated_ms: number;
  readonly method: string;
  readonly content: string;
}

function toStored(row: VersionRow): Stored {
  const resource: Json = JSON.parse(row.content);
  invariant(isObject(resource), 'a stored version is a resource');
  const { type, id, version, method } = row;
  invariant(isResourceType(type), 'a stored version is of a known type');
  return { type, id, version, updatedMs: row.updated_ms, method, resource };
}
