import { isDeepStrictEqual } from 'node:util';
import type { BundleEntry } from 'fhir/r4.js';
import type { IdentityMode } from './address.js';
import { classifyReading } from './classify.js';
import type { Clock } from './clock.js';
import type { FhirClient } from './fhir-client.js';
import { isFhirId } from './fhir-id.js';
import { isRecord, recordsAt, textAt } from './json.js';
import { identifierCriteria, type PatientIdentifier } from './patient.js';
import type { Failure } from './verdict.js';

/** What the server holds of one entry that is to be put there. */
export type Held =
  /** Nothing, something else, or it cannot be asked. */
  | { readonly kind: 'to-write' }
  /** The same but for what a server adds, and the day on which it was made. */
  | { readonly kind: 'same'; readonly location: string }
  | Failure;

/**
 * Asks the server for the resource with the identifier of an entry. A server that cannot be asked
 * gets the entry, which replaces whatever is there; one that is away is asked again later.
 *
 * Source: FHIR R4 (4.0.1), search, token; http, search by POST.
 */
export async function findHeld(
  { client, clock }: { readonly client: FhirClient; readonly clock: Clock },
  entry: BundleEntry,
  mode: IdentityMode,
  signal: AbortSignal,
): Promise<Held> {
  const { resource } = entry;
  const identifier = identifiersIn(resource)[0];
  if (resource === undefined || identifier === undefined) return { kind: 'to-write' };
  const type = resource.resourceType;
  const answer = await client.search(type, identifierCriteria(identifier, 2), signal);
  if (answer.kind !== 'answered' || answer.status !== 200 || answer.body.kind !== 'json') {
    const failure = classifyReading(answer, clock.now());
    const isAway = failure.failureClass === 'destination' && !failure.hold;
    return isAway ? failure : { kind: 'to-write' };
  }
  const found = recordsAt(answer.body.resource, 'entry')
    .map((one) => one['resource'])
    .filter((one) => textAt(one, 'resourceType') === type && carries(one, identifier));
  return judge(found, entry, mode);
}

function judge(found: readonly unknown[], entry: BundleEntry, mode: IdentityMode): Held {
  const type = entry.resource?.resourceType ?? '';
  const ids = [...new Set(found.map((one) => textAt(one, 'id') ?? ''))].filter(isFhirId);
  const [id] = ids;
  if (id === undefined) return { kind: 'to-write' };
  const names = ids.map((each) => `${type}/${each}`).join(' and ');
  if (ids.length > 1) {
    const reason = `The FHIR server has ${names} with the same identifier; a person must choose.`;
    return ambiguous('several-matches', reason);
  }
  const same = found.every((one) => isDeepStrictEqual(told(one), told(entry.resource)));
  if (same) return { kind: 'same', location: names };
  if (mode === 'client-id' && entry.fullUrl !== `urn:uuid:${id}`) {
    const reason =
      `The FHIR server has ${names} with the same identifier under another id: written with ` +
      'another identity mode or site secret. Under ours it would be there twice.';
    return ambiguous('other-id', reason);
  }
  return { kind: 'to-write' };
}

/** Members that a server adds or changes, and the time of counting. */
const NOT_COMPARED: readonly string[] = ['id', 'meta', 'text', 'date'];

/** As it came over the wire: a number or date is then the same on both sides. */
function told(resource: unknown): unknown {
  const members = Object.entries(isRecord(resource) ? resource : {});
  return JSON.parse(
    JSON.stringify(Object.fromEntries(members.filter(([key]) => !NOT_COMPARED.includes(key)))),
  );
}

function identifiersIn(resource: unknown): readonly PatientIdentifier[] {
  return recordsAt(resource, 'identifier').flatMap((one) => {
    const { system, value } = one;
    return typeof system === 'string' && typeof value === 'string' ? [{ system, value }] : [];
  });
}

const carries = (resource: unknown, { system, value }: PatientIdentifier): boolean =>
  identifiersIn(resource).some((one) => one.system === system && one.value === value);

const ambiguous = (fault: string, reason: string): Failure => ({
  kind: 'failed',
  failureClass: 'ambiguous',
  fault,
  reason,
  hold: false,
});
