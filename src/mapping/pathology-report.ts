import type { DiagnosticReport, Reference } from 'fhir/r4.js';
import type { ReportMessage } from '../record/index.js';
import { localCoding, REPORT_KINDS, STRUCTURE } from '../terminology/index.js';
import { head, type MappingContext, PART_OF, toResource } from './context.js';
import { claims, type Draft, isObservation } from './draft.js';
import { narrative } from './narrative.js';
import { issuedAt, toReporters } from './pathology.js';
import { reportSentences } from './pathology-words.js';
import { accessionKey, toAccession, transcriptionStatus } from './report-line.js';

/**
 * Our transcriptions of the reports of the laboratory, one an accession; the laboratory keeps its
 * own. What the report in force found are its results; of another report the text tells it.
 *
 * @param drafts the Observations of the case
 */
export function toPathologyReports(
  context: MappingContext,
  drafts: readonly Draft[],
): readonly Draft<DiagnosticReport>[] {
  const findings = drafts
    .filter(isObservation)
    .filter(({ resource }) => claims(resource, 'dr-pathology-finding'));
  return context.known.reports.map((report, i) => {
    const standing = `report-standing.${accessionKey(context, report)}`;
    const results = findings.filter(({ key }) =>
      i === 0 ? !key.startsWith('report-standing.') : key === standing,
    );
    return toTranscription(
      context,
      report,
      results.map(({ key }) => toResource(context, 'Observation', key)),
    );
  });
}

function toTranscription(
  context: MappingContext,
  report: ReportMessage,
  result: Reference[],
): Draft<DiagnosticReport> {
  const key = `pathology.${accessionKey(context, report)}`;
  const { meta, identifier } = head(context, 'DiagnosticReport', key, 'dr-pathology-report');
  const { pathologist } = report.fields;
  const reporters = toReporters(context, report);
  const sentences = reportSentences(report);
  return {
    key,
    resource: {
      resourceType: 'DiagnosticReport',
      meta: { ...meta, tag: [...(meta.tag ?? []), localCoding('report-origin', 'transcribed')] },
      text: narrative([TRANSCRIBED, ...sentences]),
      extension: [{ url: PART_OF, valueReference: context.procedure }],
      identifier: [...identifier, toAccession(report)],
      basedOn: [toResource(context, 'ServiceRequest', 'pathology')],
      status: transcriptionStatus(context.version, report),
      category: [STRUCTURE.pathologyReportCategory],
      code: context.concept(REPORT_KINDS['pathology-report']),
      subject: context.patient,
      ...context.inEncounter,
      effectiveDateTime: context.fields.times.scopeInAt,
      issued: issuedAt(report),
      performer: reporters.length === 0 ? [UNNAMED] : [...reporters].slice(0, 1),
      ...(pathologist === undefined ? {} : { resultsInterpreter: [...reporters].slice(-1) }),
      specimen: [toResource(context, 'Specimen', 'specimen')],
      result,
      conclusion: [TRANSCRIBED, ...sentences].join(' '),
    },
  };
}

const TRANSCRIBED = 'Transcribed from the message of the note system, not the original report.';

/** A report has its author even where the sender does not name one. */
const UNNAMED: Reference = { type: 'Organization', display: 'Laboratory, not named by the sender' };
