import type { DiagnosticReport, Identifier } from 'fhir/r4.js';
import { keyedUuid } from '../kernel/index.js';
import type { Assessed, RecordVersion, ReportMessage } from '../record/index.js';
import { STRUCTURE } from '../terminology/index.js';
import { AMENDMENTS } from './amendments.table.js';
import type { MappingContext } from './context.js';

/** Whether two messages are about the same accession of the laboratory. */
function isOfAccession(one: ReportMessage, other: ReportMessage): boolean {
  const [a, b] = [one.fields.accession, other.fields.accession];
  return a.system === b.system && a.value === b.value;
}

/** A stable key of the accession of a report, from which its number cannot be guessed. */
export function accessionKey({ settings }: MappingContext, { fields }: ReportMessage): string {
  return keyedUuid(settings.secret, fields.accession.system, fields.accession.value);
}

/** The number of a report or specimen in its laboratory. */
export function toAccession({ fields: { accession } }: ReportMessage): Identifier {
  const { system, value } = accession;
  return { type: STRUCTURE.identifierType.accession, system, value };
}

export const isFinal = ({ fields }: ReportMessage): boolean => fields.report.status === 'final';

/** Whether the report is signed, or was before: what was final never waits again. */
export const wasSigned = (version: RecordVersion, report: ReportMessage): boolean =>
  isFinal(report) || earlierFinals(version, report).length > 0;

/**
 * Status of our transcription, by the messages alone: amended, corrected and appended follow a
 * final report that we were told of before.
 *
 * Source: FHIR R4, code system diagnostic-report-status.
 */
export function transcriptionStatus(
  version: RecordVersion,
  report: ReportMessage,
): DiagnosticReport['status'] {
  const earlier = earlierFinals(version, report);
  if (!isFinal(report)) return earlier.length > 0 ? 'amended' : 'preliminary';
  const others = earlier.filter((was) => differs(was, report));
  if (others.length === 0) return 'final';
  const word = amendmentWord(report);
  const isAddition = word === 'amended' && others.every((was) => isKept(said(was), said(report)));
  return isAddition ? 'appended' : word;
}

/**
 * How an Observation that was final and says something else now is called. One that changed with
 * the case is corrected; one that changed with a report, by the reason of its amendment; without
 * a reason the laboratory is as it was, and only what was written down for us has changed.
 *
 * @param was with one line of messages as it was at a lower revision, or without it
 */
export function changeWord(now: Assessed, was: Assessed): 'amended' | 'corrected' {
  if (was.esdCase.fields.revision !== now.esdCase.fields.revision) return 'corrected';
  if (isAddition(was.events, now.events)) return 'amended';
  const [report] = now.reports;
  if (report === undefined) return 'corrected';
  const before = was.reports.find((other) => isOfAccession(other, report));
  if (before?.fields.revision !== report.fields.revision) {
    return before === undefined ? 'amended' : amendmentWord(report);
  }
  return was.reports.length === now.reports.length ? 'corrected' : 'amended';
}

/** Whether events were only added: one that was told before is told as it was. */
function isAddition(was: Assessed['events'], now: Assessed['events']): boolean {
  return (
    was.length < now.length &&
    was.every(({ sha256 }) => now.some((event) => event.sha256 === sha256))
  );
}

function amendmentWord({ fields }: ReportMessage): 'amended' | 'corrected' {
  const { amendmentReason } = fields.report;
  return amendmentReason === undefined ? 'corrected' : AMENDMENTS[amendmentReason];
}

/** Lower revisions of the same accession that were final. */
function earlierFinals(version: RecordVersion, report: ReportMessage): readonly ReportMessage[] {
  return version.messages
    .filter((message) => message.kind === 'pathology')
    .filter((other) => isOfAccession(other, report))
    .filter((other) => other.fields.revision < report.fields.revision)
    .filter(isFinal);
}

/** All that a report says of the specimen. */
const said = ({ fields: { specimen, findings, background, ancillary } }: ReportMessage) => ({
  specimen,
  findings,
  background,
  ancillary,
});

const differs = (one: ReportMessage, other: ReportMessage): boolean =>
  one.fields.report.version !== other.fields.report.version ||
  !isKept(said(one), said(other)) ||
  !isKept(said(other), said(one));

/** Whether everything that was told is told still, and alike. */
function isKept(was: unknown, now: unknown): boolean {
  if (was === undefined) return true;
  if (was === null || typeof was !== 'object') return was === now;
  if (now === null || typeof now !== 'object') return false;
  const told = new Map<string, unknown>(Object.entries(now));
  return Object.entries(was).every(([key, value]) => isKept(value, told.get(key)));
}
