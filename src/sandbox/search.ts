import { includedWith } from './included.js';
import type { JsonObject } from './json.js';
import type { Query } from './query.js';
import { nameOf, readNewest, type Stored } from './resource-store.js';
import { matchingIds } from './search-sql.js';
import type { SandboxDatabase } from './tables.js';

/** One page of an answer. */
export interface Found {
  readonly matches: readonly Stored[];
  readonly included: readonly Stored[];
}

/** @returns the ids of all matches, in order */
export async function findAll(db: SandboxDatabase, query: Query): Promise<readonly string[]> {
  return (await matchingIds(db, query).execute()).map(({ id }) => id);
}

/** Reads one page of the matches, with what was asked to come along. */
export async function readPage(
  db: SandboxDatabase,
  query: Query,
  ids: readonly string[],
): Promise<Found> {
  const keys = ids.map((id) => ({ type: query.type, id }));
  const newest = await readNewest(db, keys);
  const matches = keys.flatMap((key) => newest.get(nameOf(key)) ?? []);
  return { matches, included: await includedWith(db, query, matches) };
}

export interface Links {
  readonly self: string;
  readonly next?: string;
}

/**
 * The answer to a search. Source: HL7 FHIR R4, Search, sections "Response" and "Paging".
 *
 * @param total all matches, on whichever page
 * @param found undefined when only the count was asked for
 */
export function toSearchset(
  base: string,
  total: number,
  links: Links,
  found: Found | undefined,
): JsonObject {
  const entry = [
    ...(found?.matches ?? []).map((stored) => toEntry(base, stored, 'match')),
    ...(found?.included ?? []).map((stored) => toEntry(base, stored, 'include')),
  ];
  const link = Object.entries(links).map(([relation, url]) => ({ relation, url }));
  return {
    resourceType: 'Bundle',
    type: 'searchset',
    total,
    link,
    ...(entry.length === 0 ? {} : { entry }),
  };
}

const toEntry = (base: string, stored: Stored, mode: 'match' | 'include'): JsonObject => ({
  fullUrl: `${base}/${nameOf(stored)}`,
  resource: stored.resource,
  search: { mode },
});
