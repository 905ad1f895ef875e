import type { Observation, Procedure, Reference } from 'fhir/r4.js';
import type { ExaminationMessage } from '../record/index.js';
import { ANSWERS, LATER_PROCEDURES, STRUCTURE } from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, logical, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { examinationKey, isSame, laterKey, withSender } from './event-naming.js';
import { EXAMINATION_FINDINGS, newLesionRow } from './examination-findings.table.js';
import type { FindingRow, ItemKey } from './finding-row.js';
import { toFollowUpReport } from './follow-up-report.js';
import { type LaterParts, toLaterObservation } from './later-observation.js';
import type { ObservationContent } from './observation.js';
import { contentOf } from './row-content.js';
import { byRule, notes } from './rule-answer.js';

/** Every follow-up endoscopy: a Procedure of its own with its findings and its report. */
export function toExaminations(context: MappingContext): readonly Draft[] {
  return context.known.examinations.flatMap((examination) => {
    const findings = toFindingsOf(context, examination);
    const report = toFollowUpReport(context, examination, findings);
    return [toFollowUp(context, examination), ...findings, report];
  });
}

/** When it took place: the instant where it is told, else the day. */
const examinedAt = ({ fields }: ExaminationMessage): string =>
  fields.examinedAt ?? fields.examinedOn;

/** Who looked; nobody where that was not told. */
const endoscopistOf = ({ fields }: ExaminationMessage): Reference | undefined =>
  fields.endoscopist === undefined ? undefined : logical('Practitioner', fields.endoscopist);

function toFollowUp(context: MappingContext, examination: ExaminationMessage): Draft<Procedure> {
  const { fields } = examination;
  const key = examinationKey(context, examination);
  const { meta, identifier } = head(context, 'Procedure', key, 'dr-follow-up');
  const actor = endoscopistOf(examination);
  return {
    key,
    resource: {
      resourceType: 'Procedure',
      meta,
      identifier: withSender(identifier, fields.examination),
      ...(fields.answers === undefined
        ? {}
        : { basedOn: [logical('ServiceRequest', fields.answers)] }),
      status: 'completed',
      code: context.concept(LATER_PROCEDURES[`${fields.route}-follow-up-endoscopy`]),
      subject: context.patient,
      performedDateTime: examinedAt(examination),
      ...(actor === undefined ? {} : { performer: [{ actor }] }),
      reasonReference: [context.lesion],
      ...(fields.scar === undefined ? {} : { bodySite: toBodySite(context) }),
      report: [toResource(context, 'DiagnosticReport', key)],
    },
  };
}

function toFindingsOf(
  context: MappingContext,
  examination: ExaminationMessage,
): readonly Draft<Observation>[] {
  const { fields, decimals } = examination;
  const told = { concept: context.concept, fields, decimals };
  const listed = (fields.newLesions ?? []).map((_, i) => newLesionRow(i));
  const rows = [
    ...EXAMINATION_FINDINGS.map((row) => ({ row, suffix: '' })),
    ...listed.map((row, i) => ({ row, suffix: `.${i + 1}` })),
  ];
  return [
    ...rows.flatMap(({ row, suffix }) => {
      const content = contentOf(told, row);
      if (content === undefined) return [];
      const waits = pendingContent(examination, row, suffix);
      return [toFinding(context, examination, row.item, { ...waits, ...content }, suffix)];
    }),
    ...toRecurrence(context, examination),
    ...toMetachronous(context, examination),
  ];
}

/** What tissue will tell is preliminary until it has. */
function pendingContent(
  { fields }: ExaminationMessage,
  { item }: FindingRow,
  suffix: string,
): ObservationContent {
  const isPending =
    item === 'scar-biopsy'
      ? fields.scar?.biopsy === 'pending'
      : item === 'metachronous-lesion' &&
        fields.newLesions?.[Number(suffix.slice(1)) - 1]?.histology === 'pending';
  return isPending ? { status: 'preliminary' } : {};
}

/** Neoplasia at the scar, where the scar was looked for. */
function toRecurrence(
  context: MappingContext,
  examination: ExaminationMessage,
): readonly Draft<Observation>[] {
  const { fields } = examination;
  const found = context.known.afterwards.recurrences.find((other) =>
    isSame(other.examination, fields.examination),
  );
  if (found === undefined || fields.scar === undefined) return [];
  const { answer, isPending } = found;
  const item = 'local-recurrence';
  const content: ObservationContent = {
    ...(isPending ? { status: 'preliminary' } : {}),
    ...(answer.kind === 'determined'
      ? { valueCodeableConcept: context.concept(ANSWERS[answer.value]) }
      : {
          dataAbsentReason: fields.scar.seen
            ? STRUCTURE.absent.unknown
            : STRUCTURE.absent.notPerformed,
        }),
    ...byRule(context, found, [], new Set()),
    ...notes([
      ...(answer.kind === 'determined' ? [] : [`Not known: ${answer.missing.join(', ')}.`]),
      ...(isPending ? ['Tissue was taken whose result is not known yet.'] : []),
    ]),
  };
  return [toFinding(context, examination, item, content, '', 'dr-computed')];
}

/** Whether new lesions were found elsewhere; each has its own Observation. */
function toMetachronous(
  context: MappingContext,
  examination: ExaminationMessage,
): readonly Draft<Observation>[] {
  const { newLesions } = examination.fields;
  if (newLesions === undefined) return [];
  const answer = ANSWERS[newLesions.length === 0 ? 'no' : 'yes'];
  const content = { valueCodeableConcept: context.concept(answer) };
  return [toFinding(context, examination, 'metachronous-lesions', content)];
}

const OF_THE_SCAR: readonly ItemKey[] = [
  'scar-seen',
  'scar-finding',
  'scar-biopsy',
  'scar-treatment',
  'local-recurrence',
  'passage-at-scar',
];

function toFinding(
  context: MappingContext,
  examination: ExaminationMessage,
  item: ItemKey,
  content: ObservationContent,
  suffix = '',
  profile: LaterParts['profile'] = 'dr-follow-up-finding',
): Draft<Observation> {
  const { fields } = examination;
  return toLaterObservation(context, {
    item,
    key: `${item}.${laterKey(context, fields.examination)}${suffix}`,
    profile,
    category: 'exam',
    on: examinedAt(examination),
    issued: fields.sentAt,
    partOf: toResource(context, 'Procedure', examinationKey(context, examination)),
    focus: OF_THE_SCAR.includes(item) ? [context.lesion] : [],
    performer: endoscopistOf(examination),
    content,
  });
}
