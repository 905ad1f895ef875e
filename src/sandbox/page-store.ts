import type { Query } from './query.js';
import { isResourceType, type ResourceType } from './resource-types.js';
import type { SandboxDatabase } from './tables.js';

/** The matches of a search as they were when it was asked, so that no page skips or repeats. */
export interface KeptSearch {
  readonly type: ResourceType;
  readonly params: URLSearchParams;
  readonly ids: readonly string[];
}

const KEPT_MS = 3_600_000;

/**
 * Keeps the matches for the pages to come, for an hour. The links to these pages hold the token
 * alone: what was searched for does not get into an address.
 */
export async function keepSearch(
  db: SandboxDatabase,
  token: string,
  query: Query,
  ids: readonly string[],
  nowMs: number,
): Promise<void> {
  await db
    .deleteFrom('page')
    .where('created_ms', '<', nowMs - KEPT_MS)
    .execute();
  const row = { token, created_ms: nowMs, type: query.type, query: query.applied.toString() };
  await db
    .insertInto('page')
    .values({ ...row, ids: [...ids] })
    .execute();
}

/** @returns undefined when the token is unknown, or its hour has passed */
export async function keptSearch(
  db: SandboxDatabase,
  token: string,
  nowMs: number,
): Promise<KeptSearch | undefined> {
  const row = await db
    .selectFrom('page')
    .selectAll()
    .where('token', '=', token)
    .where('created_ms', '>=', nowMs - KEPT_MS)
    .executeTakeFirst();
  if (row === undefined || !isResourceType(row.type)) return undefined;
  return { type: row.type, params: new URLSearchParams(row.query), ids: row.ids };
}
