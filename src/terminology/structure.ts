import type { CodeableConcept } from 'fhir/r4.js';
import type { ConceptKey } from './code-ref.js';
import { codingsOf } from './codeable-concept.js';
import { CONCEPTS } from './concepts.table.js';

/** Codes that the structure of a resource asks for are free to send. */
const FREE = { snomedCt: false };

function concept(key: ConceptKey): CodeableConcept {
  return { coding: [...codingsOf(key, FREE)], text: CONCEPTS[key][0].display };
}

/** Codes of FHIR R4 and HL7 that the structure of the resources asks for, ready to send. */
export const STRUCTURE = {
  absent: {
    unknown: concept('data-absent-unknown'),
    notAsked: concept('data-absent-not-asked'),
    notApplicable: concept('data-absent-not-applicable'),
    notPerformed: concept('data-absent-not-performed'),
    askedUnknown: concept('data-absent-asked-unknown'),
    tempUnknown: concept('data-absent-temp-unknown'),
    masked: concept('data-absent-masked'),
  },
  observationCategory: {
    procedure: concept('observation-category-procedure'),
    exam: concept('observation-category-exam'),
    laboratory: concept('observation-category-laboratory'),
    survey: concept('observation-category-survey'),
    imaging: concept('observation-category-imaging'),
  },
  conditionClinical: {
    active: concept('condition-clinical-active'),
    inactive: concept('condition-clinical-inactive'),
    resolved: concept('condition-clinical-resolved'),
    remission: concept('condition-clinical-remission'),
    recurrence: concept('condition-clinical-recurrence'),
  },
  conditionVerification: {
    provisional: concept('condition-verification-provisional'),
    confirmed: concept('condition-verification-confirmed'),
    unconfirmed: concept('condition-verification-unconfirmed'),
    differential: concept('condition-verification-differential'),
    refuted: concept('condition-verification-refuted'),
    enteredInError: concept('condition-verification-entered-in-error'),
  },
  conditionCategory: {
    encounterDiagnosis: concept('condition-category-encounter-diagnosis'),
    problemListItem: concept('condition-category-problem-list-item'),
  },
  /** Why an appointment was cancelled. */
  cancelled: {
    patient: concept('appointment-cancelled-pat'),
    died: concept('appointment-cancelled-pat-dec'),
    unit: concept('appointment-cancelled-prov'),
    equipment: concept('appointment-cancelled-maint'),
    preparation: concept('appointment-cancelled-meds-inc'),
    error: concept('appointment-cancelled-oth-err'),
    other: concept('appointment-cancelled-other'),
  },
  followUpAppointment: concept('appointment-reason-followup'),
  /** Populations of a rate. */
  population: {
    initial: concept('measure-population-initial'),
    denominator: concept('measure-population-denominator'),
    exclusion: concept('measure-population-denominator-exclusion'),
    numerator: concept('measure-population-numerator'),
  },
  proportion: concept('measure-scoring-proportion'),
  outcomeMeasure: concept('measure-type-outcome'),
  procedureCategory: concept('procedure-category-surgical'),
  endoscopyReportCategory: concept('doc-gi-endoscopy-studies-set'),
  pathologyReportCategory: concept('report-category-sp'),
  laboratoryRequest: concept('category-diagnostic-procedure'),
  identifierType: {
    accession: concept('identifier-type-acsn'),
    placer: concept('identifier-type-plac'),
    filler: concept('identifier-type-fill'),
    visit: concept('identifier-type-vn'),
  },
  provenanceActivity: {
    create: concept('provenance-activity-create'),
    update: concept('provenance-activity-update'),
    append: concept('provenance-activity-append'),
    nullify: concept('provenance-activity-nullify'),
  },
  provenanceAgent: {
    author: concept('provenance-agent-author'),
    assembler: concept('provenance-agent-assembler'),
    enterer: concept('provenance-agent-enterer'),
    performer: concept('provenance-agent-performer'),
    verifier: concept('provenance-agent-verifier'),
    informant: concept('provenance-agent-informant'),
    custodian: concept('provenance-agent-custodian'),
  },
} as const;
