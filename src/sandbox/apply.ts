import { sql } from 'kysely';
import { sameContent, withServerMeta } from './content.js';
import { type Identified, identify, refuseLateOverlap, refuseOverlap } from './identify.js';
import type { Write } from './interaction.js';
import { refuseMissingTargets, renameOwn, resolveConditions } from './resolve.js';
import { type Stored, writeSearchValues, writeVersions } from './resource-store.js';
import type { SandboxDatabase } from './tables.js';
import type { World } from './world.js';

/** What became of one write, in the order of the writes. */
export interface Written {
  readonly stored: Stored;
  readonly created: boolean;
}

/**
 * Writes all or nothing: whatever is thrown ends the SQL transaction that this runs in.
 *
 * Order of HL7 FHIR R4 (RESTful API, "Transaction Processing Rules"): POST, PUT, then the
 * conditional references, which can point at what was just written. An update that changes
 * nothing makes no version.
 *
 * @throws Refusal
 */
export async function applyWrites(
  tx: SandboxDatabase,
  writes: readonly Write[],
  world: World,
): Promise<readonly Written[]> {
  const identified = await identify(tx, writes, world.supports, world.newId);
  refuseOverlap(identified);
  const renamed = renameOwn(identified);
  const fresh = renamed.filter(({ found }) => !found);
  await reserve(tx, fresh, world.nowMs);
  await writeSearchValues(tx, fresh, world.base);
  await refuseLateOverlap(tx, fresh);

  const resolved = await resolveConditions(tx, renamed, world);
  const changed = resolved.filter((write, index) => write !== renamed[index] && !write.found);
  await writeSearchValues(tx, changed, world.base);
  await refuseMissingTargets(tx, resolved, world);

  const results = resolved.map((write) => resultOf(write, world.nowMs));
  await writeVersions(
    tx,
    results.filter(({ isNew }) => isNew).map(({ stored }) => stored),
  );
  return results;
}

/** Lets the searches of the same transaction see what is about to be written. */
async function reserve(tx: SandboxDatabase, writes: readonly Identified[], nowMs: number) {
  const fresh = writes.filter(({ previous }) => previous === undefined);
  if (fresh.length === 0) return;
  await sql`insert into sandbox.resource
    select type, id, 0, ${nowMs}::double precision from unnest(
      ${fresh.map(({ type }) => type)}::text[], ${fresh.map(({ id }) => id)}::text[]
    ) as reserved (type, id)`.execute(tx);
}

function resultOf(write: Identified, updatedMs: number): Written & { readonly isNew: boolean } {
  const { type, id, method, previous, resource, found } = write;
  if (previous !== undefined && (found || sameContent(previous.resource, resource))) {
    return { stored: previous, created: false, isNew: false };
  }
  const version = (previous?.version ?? 0) + 1;
  const kept = withServerMeta(resource, { id, version, updatedMs });
  const stored = { type, id, version, updatedMs, method, resource: kept };
  return { stored, created: previous === undefined, isNew: true };
}
