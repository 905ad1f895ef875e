import type { Bundle } from 'fhir/r4.js';
import { isFhirId } from './fhir-id.js';
import { isRecord, recordsAt, textAt } from './json.js';

/** How the patient is known outside of the record. */
export interface PatientIdentifier {
  readonly system: string;
  readonly value: string;
}

/** The elements by which a resource names its patient in FHIR R4. */
const PATIENT_ELEMENTS = ['subject', 'patient', 'for'] as const;

/**
 * The identifier of the one patient whom a record is about, taken from its first reference.
 * That all references name the same patient is a rule of the Bundle (dr-bdl-11).
 *
 * @returns undefined when no reference names a patient by identifier
 */
export function patientIdentifierOf(bundle: Bundle): PatientIdentifier | undefined {
  for (const { resource } of recordsAt(bundle, 'entry')) {
    if (!isRecord(resource)) continue;
    for (const element of PATIENT_ELEMENTS) {
      const reference = resource[element];
      if (textAt(reference, 'type') !== 'Patient' || !isRecord(reference)) continue;
      const system = textAt(reference['identifier'], 'system');
      const value = textAt(reference['identifier'], 'value');
      if (system !== undefined && value !== undefined) return { system, value };
    }
  }
  return undefined;
}

/** What a search for the patient brought. */
export type PatientMatch =
  | { readonly kind: 'none' }
  | { readonly kind: 'one'; readonly reference: string }
  | { readonly kind: 'several' }
  /** Not an answer to what was asked; nothing may be concluded from it. */
  | { readonly kind: 'unusable' };

/** The body of `POST Patient/_search`: the identifier never stands in a URL. */
export const patientSearchBody = (patient: PatientIdentifier): string =>
  identifierCriteria(patient, 2);

/**
 * Criteria of a search by one identifier, form-encoded.
 * Source: FHIR R4 (4.0.1), search (escaping of `\`, `,`, `$` and `|` in values; _count).
 */
export function identifierCriteria(identifier: PatientIdentifier, count: number): string {
  const escaped = (text: string) => text.replaceAll(/[\\,$|]/g, (sign) => `\\${sign}`);
  const wanted = `${escaped(identifier.system)}|${escaped(identifier.value)}`;
  return new URLSearchParams({ identifier: wanted, _count: String(count) }).toString();
}

/**
 * Reads a searchset. A server that ignores a parameter it does not know answers with whatever
 * patients it has; so a match counts only if it carries the identifier that was asked for.
 */
export function readPatientSearch(body: unknown, patient: PatientIdentifier): PatientMatch {
  if (textAt(body, 'resourceType') !== 'Bundle' || textAt(body, 'type') !== 'searchset') {
    return { kind: 'unusable' };
  }
  const found = recordsAt(body, 'entry')
    .filter((entry) => textAt(entry['search'], 'mode') !== 'outcome')
    .map((entry) => entry['resource'])
    .filter((resource) => textAt(resource, 'resourceType') === 'Patient');
  if (found.some((resource) => !carries(resource, patient))) return { kind: 'unusable' };

  const ids = new Set(found.map((resource) => textAt(resource, 'id') ?? ''));
  if ([...ids].some((id) => !isFhirId(id))) return { kind: 'unusable' };
  const [id] = ids;
  if (id === undefined) return { kind: 'none' };
  return ids.size === 1 ? { kind: 'one', reference: `Patient/${id}` } : { kind: 'several' };
}

function carries(resource: unknown, patient: PatientIdentifier): boolean {
  return recordsAt(resource, 'identifier').some(
    ({ system, value }) => system === patient.system && value === patient.value,
  );
}
