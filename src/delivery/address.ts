import type { Bundle, BundleEntry } from 'fhir/r4.js';
import type { CheckedBundle } from '../conformance/index.js';
import { invariant } from '../kernel/index.js';
import { isRecord } from './json.js';
import { type PatientIdentifier, patientIdentifierOf } from './patient.js';

/**
 * How resources keep their identity at a target: by an id of ours in the URL, or by a search
 * for the identifier that the server makes as part of the write.
 */
export type IdentityMode = 'client-id' | 'conditional';

/** What the target knows about the patient: a resource, or nothing but the identifier. */
export type PatientLink =
  | { readonly kind: 'literal'; readonly reference: string }
  | { readonly kind: 'logical' };

const FULL_URL_PREFIX = 'urn:uuid:';

/**
 * Turns the mode-free form of a record into the transaction for one target. References inside
 * the Bundle stay `urn:uuid:`, so that the rules for the Bundle hold after addressing as well;
 * the server replaces them when it commits (FHIR R4, http, transaction).
 *
 * @throws InvariantError when an entry lacks fullUrl, resource or request: checking let it by
 */
export function addressBundle(
  bundle: CheckedBundle,
  mode: IdentityMode,
  patient: PatientLink,
): Bundle {
  const identifier = patientIdentifierOf(bundle);
  const linked =
    patient.kind === 'literal' && identifier !== undefined
      ? linkPatient(bundle, identifier, patient.reference)
      : bundle;
  switch (mode) {
    case 'conditional':
      return linked;
    case 'client-id':
      return { ...linked, entry: (linked.entry ?? []).map(withClientId) };
  }
}

function withClientId(entry: BundleEntry): BundleEntry {
  const { fullUrl, resource, request } = entry;
  invariant(fullUrl?.startsWith(FULL_URL_PREFIX) === true, 'an entry has a urn:uuid fullUrl');
  invariant(resource !== undefined && request !== undefined, 'an entry has resource and request');
  const id = fullUrl.slice(FULL_URL_PREFIX.length);
  return {
    ...entry,
    resource: { ...resource, id },
    request: { method: 'PUT', url: `${resource.resourceType}/${id}` },
  };
}

/** A copy in which every reference to this patient carries the literal one too. */
function linkPatient(bundle: Bundle, patient: PatientIdentifier, reference: string): Bundle {
  const link = (value: unknown) => linked(value, patient, reference);
  const entry = (bundle.entry ?? []).map((one) => {
    if (one.resource === undefined) return one;
    const members = Object.entries(one.resource).map(([key, value]) => [key, link(value)]);
    const resource = { ...one.resource, ...Object.fromEntries(members) };
    return { ...one, resource };
  });
  return { ...bundle, entry };
}

/** What holds no such reference is shared with the original: a record is large. */
function linked(value: unknown, patient: PatientIdentifier, reference: string): unknown {
  if (Array.isArray(value)) {
    const items = value.map((item) => linked(item, patient, reference));
    return items.some((item, index) => item !== value[index]) ? items : value;
  }
  if (!isRecord(value)) return value;
  if (isReferenceTo(value, patient)) return { reference, ...value };
  const changed = Object.entries(value).flatMap(([key, before]) => {
    const after = typeof before === 'object' ? linked(before, patient, reference) : before;
    return after === before ? [] : [[key, after]];
  });
  return changed.length === 0 ? value : { ...value, ...Object.fromEntries(changed) };
}

function isReferenceTo(
  value: Readonly<Record<string, unknown>>,
  patient: PatientIdentifier,
): boolean {
  if (value['type'] !== 'Patient' || 'reference' in value) return false;
  const identifier = value['identifier'];
  return (
    isRecord(identifier) &&
    identifier['system'] === patient.system &&
    identifier['value'] === patient.value
  );
}
