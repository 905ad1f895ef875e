import type { Observation, Reference } from 'fhir/r4.js';
import type { ReportMessage } from '../record/index.js';
import { REPORT_STANDING, STRUCTURE, WORD_CODES } from '../terminology/index.js';
import { basis } from './basis.js';
import { logical, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import type { FindingRow, ItemKey } from './finding-row.js';
import { type ObservationContent, type ObservationParts, toObservation } from './observation.js';
import { PATHOLOGY_FINDINGS, pieceRow } from './pathology-findings.table.js';
import { accessionKey, wasSigned } from './report-line.js';
import { contentOf } from './row-content.js';

type Findings = readonly Draft<Observation>[];

/**
 * What the report in force found, each as its own Observation; preliminary until the report is
 * signed. The findings of another report on the same specimen stand in its text alone, so that
 * nothing is counted twice.
 */
export function toPathology(context: MappingContext): Findings {
  const [report, ...others] = context.known.reports;
  if (report === undefined) return [];
  return [
    ...PATHOLOGY_FINDINGS.flatMap((row) => toFinding(context, report, row)),
    toVesselInvasion(context, report),
    ...(report.fields.specimen?.pieces ?? []).flatMap((_piece, i) =>
      toFinding(context, report, pieceRow(`/specimen/pieces/${i}`), i + 1),
    ),
    ...others.map((other) => toStanding(context, other)),
  ];
}

/** Who speaks in a report: the laboratory and the pathologist, as far as they are named. */
export function toReporters(
  { fields: { specimen } }: MappingContext,
  { fields: { laboratory = specimen?.laboratory, pathologist } }: ReportMessage,
): readonly Reference[] {
  return [
    ...(laboratory === undefined ? [] : [logical('Organization', laboratory)]),
    ...(pathologist === undefined ? [] : [logical('Practitioner', pathologist)]),
  ];
}

/** When a report was issued: when it was signed, or, where that is not told, sent. */
export const issuedAt = ({ fields }: ReportMessage): string =>
  fields.report.reportedAt ?? fields.sentAt;

function toFinding(
  context: MappingContext,
  report: ReportMessage,
  row: FindingRow,
  piece?: number,
): Findings {
  const { fields, decimals } = report;
  const content =
    contentOf({ concept: context.concept, fields, decimals }, row) ?? absence(context, row);
  if (content === undefined) return [];
  const { item, about, category } = row;
  const key = piece === undefined ? item : `${item}.${piece}`;
  return [said(context, report, { item, about, category, key, content }, piece)];
}

/** An item that rates count says why it is absent: its answer is still to come, or unknown. */
function absence(context: MappingContext, row: FindingRow): ObservationContent | undefined {
  return row.counted ? { dataAbsentReason: notTold(context) } : undefined;
}

const notTold = ({ hasFinalReport }: MappingContext) =>
  hasFinalReport ? STRUCTURE.absent.unknown : STRUCTURE.absent.tempUnknown;

/** An Observation in the words of the report. */
function said(
  context: MappingContext,
  report: ReportMessage,
  parts: Pick<ObservationParts, 'item' | 'about' | 'category' | 'key' | 'content'>,
  piece?: number,
): Draft<Observation> {
  return toObservation(context, {
    ...parts,
    profile: 'dr-pathology-finding',
    specimen: toResource(context, 'Specimen', specimenKey(context, report, piece)),
    issuedAt: issuedAt(report),
    performer: toReporters(context, report),
    content: {
      ...(wasSigned(context.version, report) ? {} : { status: 'preliminary' }),
      ...parts.content,
    },
  });
}

/** Both lists have the largest piece first; of lists of other lengths no two pieces are one. */
function specimenKey(
  { fields }: MappingContext,
  report: ReportMessage,
  piece: number | undefined,
): string {
  const pieces = fields.specimen?.pieces?.length;
  const isPaired = piece !== undefined && pieces === report.fields.specimen?.pieces?.length;
  return isPaired ? `specimen.${piece}` : 'specimen';
}

/** Both kinds of vessels together, as the rules of curability read them. */
function toVesselInvasion(context: MappingContext, report: ReportMessage): Draft<Observation> {
  const { ly, v } = report.fields.findings ?? {};
  const told: ReadonlySet<ItemKey> = new Set([
    ...(ly === undefined ? [] : ['lymphatic-invasion' as const]),
    ...(v === undefined ? [] : ['venous-invasion' as const]),
  ]);
  return said(context, report, {
    item: 'lymphovascular-invasion',
    about: 'lesion',
    category: 'laboratory',
    content: {
      ...vesselInvasion(context),
      ...basis(context, 'vessel-invasion', ['lymphatic-invasion', 'venous-invasion'], told),
    },
  });
}

function vesselInvasion(context: MappingContext): ObservationContent {
  const finding = context.known.assessment.specimen?.vesselInvasion;
  if (finding?.kind !== 'determined') return { dataAbsentReason: notTold(context) };
  return finding.value === 'not-applicable'
    ? { dataAbsentReason: STRUCTURE.absent.notApplicable }
    : { valueCodeableConcept: context.concept(STATES[finding.value]) };
}

const STATES = {
  absent: WORD_CODES.state['0'],
  present: WORD_CODES.state['1'],
  'not-assessable': WORD_CODES.state.X,
} as const;

/** The one result of a report that is not in force. */
function toStanding(context: MappingContext, report: ReportMessage): Draft<Observation> {
  return said(context, report, {
    item: 'report-standing',
    key: `report-standing.${accessionKey(context, report)}`,
    about: 'session',
    category: 'laboratory',
    content: { valueCodeableConcept: context.concept(REPORT_STANDING['another-in-force']) },
  });
}
