import { applyWrites, type Written } from './apply.js';
import { entityTag, type Request, type Write } from './interaction.js';
import type { JsonObject } from './json.js';
import { Refusal } from './refusal.js';
import { locationOf } from './reply.js';
import { nameOf, readNewest, type Stored } from './resource-store.js';
import { findAll, readPage, toSearchset } from './search.js';
import type { SandboxDatabase } from './tables.js';
import type { World } from './world.js';
import { holdWriterLock } from './writer-lock.js';

/**
 * Carries out a transaction: everything, or nothing.
 *
 * Source: HL7 FHIR R4, RESTful API, "Transaction Processing Rules" and "Transaction Response":
 * reads come after all writes; the answers stand in the order of the entries.
 *
 * @param withResources whether the written resources come back too
 * @returns a Bundle of type transaction-response
 * @throws Refusal, and then nothing was written
 */
export async function runTransaction(
  db: SandboxDatabase,
  requests: readonly Request[],
  world: World,
  withResources: boolean,
): Promise<JsonObject> {
  return await db.transaction().execute(async (tx) => {
    await holdWriterLock(tx);
    const writes = requests.filter(isWrite);
    const results = await applyWrites(tx, writes, world);
    const answers = new Map<Request, JsonObject>();
    for (const [index, write] of writes.entries()) {
      const result = results[index];
      if (result !== undefined) answers.set(write, toAnswer(result, world, withResources));
    }
    for (const request of requests) {
      if (!isWrite(request)) answers.set(request, await answerRead(tx, request, world));
    }
    const entry = requests.flatMap((request) => answers.get(request) ?? []);
    return {
      resourceType: 'Bundle',
      type: 'transaction-response',
      ...(entry.length === 0 ? {} : { entry }),
    };
  });
}

const isWrite = (request: Request): request is Write =>
  request.interaction.kind === 'create' || request.interaction.kind === 'update';

function toAnswer({ stored, created }: Written, world: World, withResource: boolean): JsonObject {
  return {
    fullUrl: `${world.base}/${nameOf(stored)}`,
    ...(withResource ? { resource: stored.resource } : {}),
    response: {
      status: created ? '201 Created' : '200 OK',
      location: locationOf(stored),
      ...versionOf(stored),
    },
  };
}

async function answerRead(
  tx: SandboxDatabase,
  { interaction, place }: Request,
  { base }: World,
): Promise<JsonObject> {
  if (interaction.kind === 'find') {
    const { query } = interaction;
    const ids = await findAll(tx, query);
    const page = query.countOnly ? undefined : await readPage(tx, query, ids);
    const links = { self: `${base}/${query.type}?${query.applied}` };
    const resource = toSearchset(base, ids.length, links, page);
    return { resource, response: { status: '200 OK' } };
  }
  if (interaction.kind !== 'read') throw new Refusal(400, 'invalid', 'This entry is no read.');
  const stored = (await readNewest(tx, [interaction])).get(nameOf(interaction));
  if (stored === undefined) {
    const message = `There is no such ${interaction.type} on this server.`;
    throw new Refusal(404, 'not-found', message, { expression: place });
  }
  return {
    fullUrl: `${base}/${nameOf(stored)}`,
    resource: stored.resource,
    response: { status: '200 OK', ...versionOf(stored) },
  };
}

const versionOf = (stored: Stored) => ({
  etag: entityTag(stored.version),
  lastModified: new Date(stored.updatedMs).toISOString(),
});
