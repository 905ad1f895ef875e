import type { Condition } from 'fhir/r4.js';
import {
  COMPLICATIONS,
  type CodeRef,
  lesionByHistology,
  lesionCondition,
  STRUCTURE,
  WORD_CODES,
} from '../terminology/index.js';
import { head, type MappingContext, PART_OF } from './context.js';
import type { Draft } from './draft.js';
import { isSame } from './event-naming.js';

/** The lesion, provisional until a final report tells its histology. */
export function toLesion(context: MappingContext): Draft<Condition> {
  return {
    key: 'lesion',
    resource: {
      resourceType: 'Condition',
      ...head(context, 'Condition', 'lesion', 'dr-lesion'),
      clinicalStatus: isRecurrent(context)
        ? STRUCTURE.conditionClinical.recurrence
        : STRUCTURE.conditionClinical.active,
      verificationStatus: isConfirmed(context)
        ? STRUCTURE.conditionVerification.confirmed
        : STRUCTURE.conditionVerification.provisional,
      category: [STRUCTURE.conditionCategory.encounterDiagnosis],
      code: context.concept(lesionCode(context)),
      bodySite: toBodySite(context),
      subject: context.patient,
      ...context.inEncounter,
      recordedDate: context.fields.sentAt,
      recorder: context.operator,
    },
  };
}

/** By the histology of the specimen; as long as nobody tells it, by that of the biopsy. */
function lesionCode({ fields: { lesion, before }, known }: MappingContext): CodeRef {
  const { organ, site } = lesion;
  const findings = known.reports[0]?.fields.findings;
  const histology = findings?.histology;
  return findings === undefined || histology === undefined || histology === 'not-assessable'
    ? lesionCondition(organ, before?.biopsyResult, site)
    : lesionByHistology(organ, { ...findings, histology }, site);
}

/** What nobody can tell of the specimen stays as the biopsy has it. */
function isConfirmed({ hasFinalReport, known }: MappingContext): boolean {
  const histology = known.reports[0]?.fields.findings?.histology;
  return hasFinalReport && histology !== undefined && histology !== 'not-assessable';
}

/** Whether the last examination that could tell found neoplasia at the scar. */
function isRecurrent({ known: { examinations, afterwards } }: MappingContext): boolean {
  const told = examinations.flatMap(({ fields }) => {
    const found = afterwards.recurrences.find(({ examination }) =>
      isSame(examination, fields.examination),
    );
    return found?.answer.kind === 'determined'
      ? [{ on: fields.examinedOn, answer: found.answer.value }]
      : [];
  });
  const last = told
    .map(({ on }) => on)
    .sort()
    .at(-1);
  return told.some(({ on, answer }) => on === last && answer === 'yes');
}

/** Organ and, where told, the site within it. */
export function toBodySite({ concept, fields }: MappingContext) {
  const { organ, site } = fields.lesion;
  return [
    concept(WORD_CODES.organ[organ]),
    ...(site === undefined ? [] : [concept(WORD_CODES.site[site])]),
  ];
}

/** Perforation during the procedure, where it occurred. */
export function toComplications(context: MappingContext): readonly Draft<Condition>[] {
  const perforation = context.fields.safety?.perforation;
  if (perforation?.occurred !== true) return [];
  return [
    {
      key: 'perforation',
      resource: {
        resourceType: 'Condition',
        ...head(context, 'Condition', 'perforation', 'dr-complication'),
        extension: [{ url: PART_OF, valueReference: context.procedure }],
        clinicalStatus: STRUCTURE.conditionClinical.active,
        verificationStatus: STRUCTURE.conditionVerification.confirmed,
        category: [STRUCTURE.conditionCategory.encounterDiagnosis],
        code: context.concept(COMPLICATIONS.perforation),
        bodySite: toBodySite(context),
        subject: context.patient,
        ...context.inEncounter,
        ...(perforation.at === undefined ? {} : { onsetDateTime: perforation.at }),
        recordedDate: context.fields.sentAt,
        recorder: context.operator,
      },
    },
  ];
}
