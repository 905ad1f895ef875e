import type { CodeableConcept, Identifier, Meta, Reference } from 'fhir/r4.js';
import { compareInstants, keyedUuid } from '../kernel/index.js';
import type { Assessed, RecordVersion } from '../record/index.js';
import { BASE, type CodeRef, codeableConcept, type Licences } from '../terminology/index.js';

/** What a site decides about its records. */
export interface MappingSettings {
  /** At least 32 characters; without it no id can be guessed from a number. */
  readonly secret: string;
  /** The site's base for identifier systems, without a slash at the end. */
  readonly identifierBase: string;
  readonly licences: Licences;
  /** `wait` for pathology before the report is final, or sign it when the scope has left. */
  readonly endoscopyReport: 'wait' | 'sign-at-once';
  /** Whether open examinations are proposed as Appointments beside their requests. */
  readonly proposedAppointments: boolean;
  /** Version of this program, as the assembler of the record. */
  readonly softwareVersion: string;
}

/** The resource types that a case becomes. */
export const SENT_TYPES = [
  'Appointment',
  'Condition',
  'Device',
  'DiagnosticReport',
  'Media',
  'MedicationAdministration',
  'MedicationStatement',
  'Observation',
  'Procedure',
  'Provenance',
  'ServiceRequest',
  'Specimen',
  'Task',
] as const;
export type SentType = (typeof SENT_TYPES)[number];

/** What is known of a case on its way into FHIR, and how its resources name one another. */
export interface MappingContext {
  readonly caseId: string;
  readonly fields: Assessed['esdCase']['fields'];
  readonly decimals: Assessed['esdCase']['decimals'];
  readonly known: Assessed;
  readonly version: RecordVersion;
  readonly settings: MappingSettings;
  readonly patient: Reference;
  readonly operator: Reference;
  readonly encounter: Reference | undefined;
  /** Ready for spreading into a resource; empty where the case names no encounter. */
  readonly inEncounter: { readonly encounter?: Reference };
  readonly procedure: Reference;
  readonly lesion: Reference;
  /** When what rests on the case and the reports was last told. */
  readonly concludedAt: string;
  /** Whether a specimen has its final report. */
  readonly hasFinalReport: boolean;
  concept(ref: CodeRef): CodeableConcept;
}

export function mappingContext(
  version: RecordVersion,
  known: Assessed,
  settings: MappingSettings,
): MappingContext {
  const { fields, decimals } = known.esdCase;
  const naming = { caseId: version.caseId, settings };
  const encounter =
    fields.encounter === undefined ? undefined : logical('Encounter', fields.encounter);
  return {
    caseId: version.caseId,
    fields,
    decimals,
    known,
    version,
    settings,
    patient: logical('Patient', fields.patient),
    operator: logical('Practitioner', fields.team.operator),
    encounter,
    inEncounter: encounter === undefined ? {} : { encounter },
    procedure: toResource(naming, 'Procedure', MAIN),
    lesion: toResource(naming, 'Condition', 'lesion'),
    concludedAt: known.reports
      .map((report) => report.fields.sentAt)
      .reduce((a, b) => (compareInstants(a, b) < 0 ? b : a), fields.sentAt),
    hasFinalReport: known.reports[0]?.fields.report.status === 'final',
    concept: (ref) => codeableConcept(ref, settings.licences),
  };
}

/** Extension of R4 that ties a report or a Condition to the Procedure. */
export const PART_OF = 'http://hl7.org/fhir/StructureDefinition/event-partOf';

/** Key of the ESD Procedure itself: its identifier is the case id alone. */
export const MAIN = '';

type Naming = Pick<MappingContext, 'caseId' | 'settings'>;

/** Our identifier of a resource of the case; `key` is fixed for what it says, never an index. */
export function ownIdentifier(context: Naming, type: SentType, key: string): Identifier {
  return {
    system: `${context.settings.identifierBase}/${type.toLowerCase()}`,
    value: key === MAIN ? context.caseId : `${context.caseId}.${key}`,
  };
}

/** The stable name of a resource within and outside of its Bundle. */
export function fullUrl(context: Naming, type: SentType, key: string): string {
  const { system = '', value = '' } = ownIdentifier(context, type, key);
  return `urn:uuid:${keyedUuid(context.settings.secret, system, value)}`;
}

/** A reference to a resource of the same Bundle. */
export function toResource(context: Naming, type: SentType, key: string): Reference {
  return { reference: fullUrl(context, type, key), type };
}

/** A reference to somebody or something that others keep. */
export function logical(
  type: 'Patient' | 'Practitioner' | 'Organization' | 'Encounter' | 'Device' | 'ServiceRequest',
  identifier: { readonly system: string; readonly value: string },
): Reference {
  return { type, identifier: { system: identifier.system, value: identifier.value } };
}

/** Identifier and profile, as every resource of ours begins. */
export function head(
  context: MappingContext,
  type: SentType,
  key: string,
  profile: string,
): { readonly meta: Meta; readonly identifier: Identifier[] } {
  return {
    meta: {
      profile: [`${BASE}/StructureDefinition/${profile}`],
      tag: [{ system: `${BASE}/CodeSystem/dr-revision`, code: String(context.version.state) }],
    },
    identifier: [ownIdentifier(context, type, key)],
  };
}
