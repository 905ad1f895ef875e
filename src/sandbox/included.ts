import type { Include } from './include.js';
import type { Query } from './query.js';
import { nameOf, readNewest, type Stored } from './resource-store.js';
import type { SandboxDatabase } from './tables.js';

interface Name {
  readonly type: string;
  readonly id: string;
}

/**
 * What comes along with the matches of one page: each once, and no match again.
 *
 * Source: HL7 FHIR R4, Search, section "Including other resources in result".
 */
export async function includedWith(
  db: SandboxDatabase,
  { includes, revIncludes }: Query,
  matches: readonly Stored[],
): Promise<readonly Stored[]> {
  if (matches.length === 0) return [];
  const names: Name[] = [];
  for (const include of includes) names.push(...(await targets(db, include, matches)));
  for (const include of revIncludes) names.push(...(await sources(db, include, matches)));
  const newest = await readNewest(db, names);
  const known = new Set(matches.map(nameOf));
  return [...newest].flatMap(([name, stored]) => (known.has(name) ? [] : [stored]));
}

async function targets(
  db: SandboxDatabase,
  { source, param, target }: Include,
  matches: readonly Stored[],
): Promise<readonly Name[]> {
  const ids = matches.flatMap(({ type, id }) => (type === source ? [id] : []));
  if (ids.length === 0) return [];
  const rows = await db
    .selectFrom('search_value')
    .select(['target', 'target_id as id'])
    .distinct()
    .where('type', '=', source)
    .where('param', '=', param)
    .where('id', 'in', ids)
    .where('target_id', 'is not', null)
    .execute();
  return rows
    .map(({ target: name, id }) => ({ type: name?.split('/')[0] ?? '', id: id ?? '' }))
    .filter(({ type }) => target === undefined || type === target);
}

async function sources(
  db: SandboxDatabase,
  { source, param, target }: Include,
  matches: readonly Stored[],
): Promise<readonly Name[]> {
  const names = matches.filter(({ type }) => target === undefined || type === target).map(nameOf);
  if (names.length === 0) return [];
  return await db
    .selectFrom('search_value')
    .select(['type', 'id'])
    .distinct()
    .where('type', '=', source)
    .where('param', '=', param)
    .where('target', 'in', names)
    .execute();
}
