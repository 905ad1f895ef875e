import type {
  Appointment,
  Condition,
  Device,
  DiagnosticReport,
  Media,
  MedicationAdministration,
  MedicationStatement,
  Observation,
  Procedure,
  ServiceRequest,
  Specimen,
  Task,
} from 'fhir/r4.js';

/** Every resource that a case message becomes; the Provenance stands over them. */
export type CaseResource =
  | Appointment
  | Condition
  | Device
  | DiagnosticReport
  | Media
  | MedicationAdministration
  | MedicationStatement
  | Observation
  | Procedure
  | ServiceRequest
  | Specimen
  | Task;

/** A resource with the key that names it within its case and type. */
export interface Draft<R extends CaseResource = CaseResource> {
  readonly key: string;
  readonly resource: R;
}

export const isObservation = (draft: Draft): draft is Draft<Observation> =>
  draft.resource.resourceType === 'Observation';

/** Whether a resource is of a profile, by the id of the profile. */
export function claims(resource: CaseResource, profile: string): boolean {
  return resource.meta?.profile?.some((url) => url.endsWith(`/${profile}`)) ?? false;
}
