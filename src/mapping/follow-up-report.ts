import type { DiagnosticReport, Observation } from 'fhir/r4.js';
import { CAUTION } from '../kernel/index.js';
import type { ExaminationMessage } from '../record/index.js';
import { REPORT_KINDS, STRUCTURE } from '../terminology/index.js';
import { head, logical, type MappingContext, PART_OF, toResource } from './context.js';
import type { Draft } from './draft.js';
import { examinationKey } from './event-naming.js';
import { lowered, narrative } from './narrative.js';

/**
 * The report of a follow-up endoscopy over its findings, preliminary while tissue waits. Its text
 * is made of what the findings say.
 */
export function toFollowUpReport(
  context: MappingContext,
  examination: ExaminationMessage,
  findings: readonly Draft<Observation>[],
): Draft<DiagnosticReport> {
  const { fields } = examination;
  const key = examinationKey(context, examination);
  const code = REPORT_KINDS['follow-up-report'][fields.route];
  const sentences = [
    `${code.text}, ${fields.examinedOn}.`,
    ...findings.flatMap(sentenceOf),
    CAUTION,
  ];
  const { unit } = context.fields;
  const isWaiting = findings.some(({ resource }) => resource.status === 'preliminary');
  return {
    key,
    resource: {
      resourceType: 'DiagnosticReport',
      ...head(context, 'DiagnosticReport', key, 'dr-follow-up-report'),
      text: narrative(sentences),
      extension: [{ url: PART_OF, valueReference: toResource(context, 'Procedure', key) }],
      status: isWaiting ? 'preliminary' : 'final',
      category: [STRUCTURE.endoscopyReportCategory],
      code: context.concept(code),
      subject: context.patient,
      effectiveDateTime: fields.examinedAt ?? fields.examinedOn,
      issued: fields.sentAt,
      performer: [unit === undefined ? context.operator : logical('Organization', unit)],
      ...(fields.endoscopist === undefined
        ? {}
        : { resultsInterpreter: [logical('Practitioner', fields.endoscopist)] }),
      result: findings.map((finding) => toResource(context, 'Observation', finding.key)),
      conclusion: sentences.join(' '),
    },
  };
}

/** A finding that is one word, as a sentence. */
function sentenceOf({ resource }: Draft<Observation>): readonly string[] {
  const { code, valueCodeableConcept, status } = resource;
  if (code.text === undefined || valueCodeableConcept?.text === undefined) return [];
  const waits = status === 'preliminary' ? ' (preliminary)' : '';
  return [`${code.text}: ${lowered(valueCodeableConcept.text)}${waits}.`];
}
