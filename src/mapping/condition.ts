import type { Condition } from 'fhir/r4.js';
import { COMPLICATIONS, lesionCondition, STRUCTURE, WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';

const PART_OF = 'http://hl7.org/fhir/StructureDefinition/event-partOf';

/** The lesion, provisional until pathology has seen it. */
export function toLesion(context: MappingContext): Draft<Condition> {
  const { lesion, before } = context.fields;
  return {
    key: 'lesion',
    resource: {
      resourceType: 'Condition',
      ...head(context, 'Condition', 'lesion', 'dr-lesion'),
      clinicalStatus: STRUCTURE.conditionClinical.active,
      verificationStatus: STRUCTURE.conditionVerification.provisional,
      category: [STRUCTURE.conditionCategory.encounterDiagnosis],
      code: context.concept(lesionCondition(lesion.organ, before?.biopsyResult, lesion.site)),
      bodySite: toBodySite(context),
      subject: context.patient,
      ...context.inEncounter,
      recordedDate: context.fields.sentAt,
      recorder: context.operator,
    },
  };
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
