import { applyWrites } from './apply.js';
import type { Create, Update } from './interaction.js';
import type { JsonObject } from './json.js';
import type { Preferences } from './preferences.js';
import { Refusal } from './refusal.js';
import { locationOf, type Reply, versionHeaders } from './reply.js';
import {
  type Key,
  nameOf,
  readHistory,
  readNewest,
  readVersion,
  type Stored,
} from './resource-store.js';
import type { SandboxDatabase } from './tables.js';
import type { World } from './world.js';
import { holdWriterLock } from './writer-lock.js';

/** Source: HL7 FHIR R4, RESTful API, "read". */
export async function answerRead(db: SandboxDatabase, key: Key): Promise<Reply> {
  const stored = (await readNewest(db, [key])).get(nameOf(key));
  return found(key, stored);
}

/** Source: HL7 FHIR R4, RESTful API, "vread". */
export async function answerVersion(
  db: SandboxDatabase,
  key: Key,
  version: string,
): Promise<Reply> {
  const stored = /^\d{1,9}$/.test(version)
    ? await readVersion(db, key, Number(version))
    : undefined;
  return found(key, stored);
}

/** Every version of one resource, the newest first. Source: RESTful API, "history". */
export async function answerHistory(
  db: SandboxDatabase,
  key: Key,
  { base }: World,
): Promise<Reply> {
  const versions = await readHistory(db, key);
  if (versions.length === 0) throw notFound(key);
  const body = {
    resourceType: 'Bundle',
    type: 'history',
    total: versions.length,
    link: [{ relation: 'self', url: `${base}/${nameOf(key)}/_history` }],
    entry: versions.map((stored) => toHistoryEntry(stored, base)),
  };
  return { status: 200, headers: {}, body };
}

function toHistoryEntry(stored: Stored, base: string): JsonObject {
  const url = stored.method === 'POST' ? stored.type : nameOf(stored);
  return {
    fullUrl: `${base}/${nameOf(stored)}`,
    resource: stored.resource,
    request: { method: stored.method, url },
    response: {
      status: stored.version === 1 ? '201 Created' : '200 OK',
      etag: `W/"${stored.version}"`,
      lastModified: new Date(stored.updatedMs).toISOString(),
    },
  };
}

/** Source: HL7 FHIR R4, RESTful API, "create", "update" and their conditional forms. */
export async function answerWrite(
  db: SandboxDatabase,
  interaction: Create | Update,
  world: World,
  { returns }: Preferences,
): Promise<Reply> {
  const [written] = await db.transaction().execute(async (tx) => {
    await holdWriterLock(tx);
    return await applyWrites(tx, [{ interaction, place: '' }], world);
  });
  if (written === undefined) throw new Refusal(500, 'exception', 'Nothing was written.');
  const { stored, created } = written;
  return {
    status: created ? 201 : 200,
    headers: { ...versionHeaders(stored), Location: `${world.base}/${locationOf(stored)}` },
    ...(returns === 'minimal' ? {} : { body: stored.resource }),
  };
}

function found(key: Key, stored: Stored | undefined): Reply {
  if (stored === undefined) throw notFound(key);
  return { status: 200, headers: versionHeaders(stored), body: stored.resource };
}

const notFound = ({ type }: Key) =>
  new Refusal(404, 'not-found', `There is no such ${type} on this server.`);
