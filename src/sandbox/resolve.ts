import { sql } from 'kysely';
import { type Identified, onlyMatch } from './identify.js';
import { placeOfResource } from './interaction.js';
import { linksIn, relink } from './links.js';
import { readCriteria } from './query.js';
import { targetOf } from './reference.js';
import { Refusal } from './refusal.js';
import { nameOf } from './resource-store.js';
import { isResourceType } from './resource-types.js';
import type { SandboxDatabase } from './tables.js';
import type { World } from './world.js';

/** An entry's own address on the server it names: everything before Type/id. */
const ROOT = /^(https?:.+\/)[A-Z][A-Za-z]+\/[A-Za-z0-9\-.]{1,64}$/;
const ABSOLUTE = /^[A-Za-z][A-Za-z0-9+.-]*:/;

/**
 * Gives every link to another entry the address that the entry has on this server.
 *
 * Source: HL7 FHIR R4, RESTful API, "transaction"; Bundle, "Resolving references in Bundles".
 */
export function renameOwn(writes: readonly Identified[]): readonly Identified[] {
  const addresses = new Map<string, string>();
  for (const write of writes) {
    if (write.fullUrl !== undefined) addresses.set(write.fullUrl, nameOf(write));
  }
  if (addresses.size === 0) return writes;
  return writes.map((write) => {
    const [, root] = ROOT.exec(write.fullUrl ?? '') ?? [];
    const rename = (address: string) =>
      addresses.get(address) ?? (root === undefined ? root : addresses.get(root + address));
    return { ...write, resource: relink(write.resource, rename) };
  });
}

/**
 * Puts literal references in the place of conditional ones.
 *
 * Source: HL7 FHIR R4, RESTful API, "Conditional References": no match or several fail the whole
 * transaction.
 *
 * @returns the same object for every write that had none
 * @throws Refusal 400 without a match, 412 with several
 */
export async function resolveConditions(
  tx: SandboxDatabase,
  writes: readonly Identified[],
  world: World,
): Promise<readonly Identified[]> {
  const answers = new Map<string, string>();
  const resolved: Identified[] = [];
  for (const write of writes) {
    const links = write.found ? [] : linksIn(write.resource, placeOfResource(write));
    const before = answers.size;
    let conditional = false;
    for (const { reference, expression } of links) {
      const target = targetOf(reference, world.base);
      if (target.kind !== 'conditional') continue;
      conditional = true;
      if (answers.has(reference)) continue;
      answers.set(reference, await literalFor(tx, target, expression, write.place, world));
    }
    const same = !conditional && answers.size === before;
    const resource = relink(write.resource, (address) => answers.get(address));
    resolved.push(same ? write : { ...write, resource });
  }
  return resolved;
}

async function literalFor(
  tx: SandboxDatabase,
  { type, query }: { type: string; query: string },
  expression: string,
  place: string,
  { supports, base }: World,
): Promise<string> {
  if (!supports.conditionalReference || place === '') {
    const message = 'A conditional reference is not possible here.';
    throw new Refusal(400, 'not-supported', message, { expression });
  }
  const id = isResourceType(type)
    ? await onlyMatch(tx, readCriteria(type, query, base), expression)
    : undefined;
  if (id !== undefined) return `${type}/${id}`;
  const message = `No ${isResourceType(type) ? type : 'resource'} matches the condition.`;
  throw new Refusal(400, 'not-found', message, { expression });
}

/**
 * Refuses a literal reference to a resource that this server does not have.
 *
 * @throws Refusal with the status that was set; 400 for a text that is no reference
 */
export async function refuseMissingTargets(
  tx: SandboxDatabase,
  writes: readonly Identified[],
  world: World,
): Promise<void> {
  const wanted = new Map<string, { type: string; id: string; expression: string }>();
  const written = new Set(writes.map(nameOf));
  for (const write of writes.filter(({ found }) => !found)) {
    for (const { reference, expression } of linksIn(write.resource, placeOfResource(write))) {
      const target = targetOf(reference, world.base);
      if (target.kind === 'ours') {
        const name = `${target.type}/${target.id}`;
        if (!written.has(name)) wanted.set(name, { ...target, expression });
      } else if (target.kind === 'elsewhere') refuseUnreachable(reference, expression);
    }
  }
  const missing = await firstMissing(tx, [...wanted.values()]);
  if (missing === undefined) return;
  const type = isResourceType(missing.type) ? missing.type : 'resource';
  const message = `The ${type} that is referred to does not exist on this server.`;
  const { expression } = missing;
  throw new Refusal(world.missingReferenceStatus, 'not-found', message, { expression });
}

function refuseUnreachable(reference: string, expression: string): void {
  if (/^urn:(?:uuid|oid):/.test(reference)) {
    throw new Refusal(400, 'not-found', 'No entry has the address referred to.', { expression });
  }
  if (ABSOLUTE.test(reference)) return;
  throw new Refusal(400, 'value', 'This is no reference.', { expression });
}

async function firstMissing<T extends { type: string; id: string }>(
  tx: SandboxDatabase,
  wanted: readonly T[],
): Promise<T | undefined> {
  if (wanted.length === 0) return undefined;
  const rows = await tx
    .selectFrom('resource')
    .select(['type', 'id'])
    .where(
      sql<boolean>`(type, id) in (select * from unnest(
        ${wanted.map(({ type }) => type)}::text[], ${wanted.map(({ id }) => id)}::text[]))`,
    )
    .execute();
  const there = new Set(rows.map(({ type, id }) => `${type}/${id}`));
  return wanted.find(({ type, id }) => !there.has(`${type}/${id}`));
}
