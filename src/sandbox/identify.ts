import { idOf } from './content.js';
import {
  type Create,
  placeOfResource,
  type Supports,
  type Update,
  type Write,
} from './interaction.js';
import type { JsonObject } from './json.js';
import type { Query } from './query.js';
import { Refusal } from './refusal.js';
import { type Key, nameOf, readNewest, type Stored } from './resource-store.js';
import type { ResourceType } from './resource-types.js';
import { matchingIds } from './search-sql.js';
import type { SandboxDatabase } from './tables.js';

/** A write of which it is known which resource it is about. */
export interface Identified extends Key {
  readonly method: 'POST' | 'PUT';
  readonly place: string;
  readonly fullUrl?: string;
  readonly resource: JsonObject;
  /** By what it was looked for, where it came with criteria. */
  readonly criteria?: Query;
  /** The version before; absent when the resource is new. */
  readonly previous?: Stored;
  /** A conditional create that found its resource: nothing is written. */
  readonly found: boolean;
}

interface Named {
  readonly write: Write;
  readonly id: string;
  readonly found: boolean;
}

/**
 * Finds out which resource each write is about, and whether it may be written.
 *
 * Source: HL7 FHIR R4, RESTful API, "Conditional create", "Conditional update", "update" and
 * "Managing Resource Contention".
 *
 * @throws Refusal 412 for several matches or another version, 400, 405
 */
export async function identify(
  tx: SandboxDatabase,
  writes: readonly Write[],
  supports: Supports,
  newId: () => string,
): Promise<readonly Identified[]> {
  const named: Named[] = [];
  for (const write of writes) named.push(await nameOne(tx, write, newId));
  const keys = named.map(({ write, id }) => ({ type: write.interaction.type, id }));
  const newest = await readNewest(tx, keys);
  return named.map((each) => withPrevious(each, newest, supports));
}

async function nameOne(tx: SandboxDatabase, write: Write, newId: () => string): Promise<Named> {
  const { interaction, place } = write;
  if (interaction.kind === 'create') {
    const { ifNoneExist } = interaction;
    const known = ifNoneExist === undefined ? undefined : await onlyMatch(tx, ifNoneExist, place);
    return { write, id: known ?? newId(), found: known !== undefined };
  }
  const { which } = interaction;
  const given = idOf(interaction.resource);
  const known = 'id' in which ? which.id : await onlyMatch(tx, which.criteria, place);
  if (known !== undefined && given !== undefined && given !== known) {
    throw new Refusal(400, 'invalid', 'The id of the body is not that of the resource.', {
      expression: `${placeOfResource({ place, type: interaction.type })}.id`,
    });
  }
  return { write, id: known ?? given ?? newId(), found: false };
}

/**
 * @returns the id of the one match; undefined when nothing matches
 * @throws Refusal 412 when several match
 */
export async function onlyMatch(
  tx: SandboxDatabase,
  query: Query,
  place: string,
): Promise<string | undefined> {
  const rows = await matchingIds(tx, query).limit(2).execute();
  if (rows.length <= 1) return rows[0]?.id;
  const message = `Several resources of type ${query.type} match the condition.`;
  throw new Refusal(412, 'multiple-matches', message, { expression: place });
}

function withPrevious(
  { write, id, found }: Named,
  newest: ReadonlyMap<string, Stored>,
  supports: Supports,
): Identified {
  const { interaction, place, fullUrl } = write;
  const { type, resource } = interaction;
  const previous = newest.get(nameOf({ type, id }));
  if (interaction.kind === 'update') {
    refuseStale(interaction, previous, place);
    if (previous === undefined) refuseNewId(interaction, supports, place);
  }
  const criteria = criteriaOf(interaction);
  return {
    type,
    id,
    method: interaction.kind === 'create' ? 'POST' : 'PUT',
    place,
    resource,
    found,
    ...(fullUrl === undefined ? {} : { fullUrl }),
    ...(criteria === undefined ? {} : { criteria }),
    ...(previous === undefined ? {} : { previous }),
  };
}

function criteriaOf(interaction: Create | Update): Query | undefined {
  if (interaction.kind === 'create') return interaction.ifNoneExist;
  return 'criteria' in interaction.which ? interaction.which.criteria : undefined;
}

function refuseStale({ ifMatch }: Update, previous: Stored | undefined, place: string): void {
  if (ifMatch === undefined || ifMatch === String(previous?.version)) return;
  const message = 'The version that If-Match names is not the newest.';
  throw new Refusal(412, 'conflict', message, { expression: place });
}

function refuseNewId(update: Update, { updateCreate }: Supports, place: string): void {
  const choosesId = 'id' in update.which || idOf(update.resource) !== undefined;
  if (updateCreate || !choosesId) return;
  const message = 'This server does not let a client choose the id of a new resource.';
  throw new Refusal(405, 'not-supported', message, {
    expression: place,
    headers: { Allow: 'GET' },
  });
}

/** One resource cannot be written twice by one transaction. */
export function refuseOverlap(writes: readonly Identified[]): void {
  const seen = new Set<string>();
  for (const write of writes.filter(({ found }) => !found)) {
    if (seen.has(nameOf(write))) throw overlap(write.place);
    seen.add(nameOf(write));
  }
}

/**
 * The same, for resources that nobody could tell apart before they were written: after the
 * writes, what a write was looked for by must not find another.
 */
export async function refuseLateOverlap(
  tx: SandboxDatabase,
  writes: readonly Identified[],
): Promise<void> {
  const counts = new Map<ResourceType, number>();
  for (const { type } of writes) counts.set(type, (counts.get(type) ?? 0) + 1);
  for (const { type, id, criteria, place, found } of writes) {
    if (criteria === undefined || found || counts.get(type) === 1) continue;
    const rows = await matchingIds(tx, criteria).limit(2).execute();
    if (rows.some((row) => row.id !== id)) throw overlap(place);
  }
}

const overlap = (expression: string) =>
  new Refusal(400, 'duplicate', 'Two entries are about the same resource.', { expression });
