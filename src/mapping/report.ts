import type { CodeableConcept, DiagnosticReport, Observation } from 'fhir/r4.js';
import { REPORT_KINDS, STRUCTURE } from '../terminology/index.js';
import { head, logical, type MappingContext, PART_OF, toResource } from './context.js';
import { claims, type Draft, isObservation } from './draft.js';
import { narrative } from './narrative.js';
import { wasSigned } from './report-line.js';
import { conclude } from './summary.js';

/**
 * The endoscopy report over the Observations of the case but those of the pathologist. It is
 * preliminary while a specimen waits for its final report, unless the site signs it when the
 * scope has left; then a verdict that is still preliminary joins it later. A verdict with a class
 * is its coded conclusion.
 */
export function toReport(
  context: MappingContext,
  drafts: readonly Draft[],
  summary: readonly string[],
): Draft<DiagnosticReport> {
  const { fields, settings } = context;
  const keysOf = (type: 'Media' | 'Specimen') =>
    drafts.filter(({ resource }) => resource.resourceType === type).map(({ key }) => key);
  const images = keysOf('Media');
  const specimens = keysOf('Specimen');
  const isRead = context.known.reports.some((report) => wasSigned(context.version, report));
  const waits = specimens.length > 0 && !isRead && settings.endoscopyReport === 'wait';
  const results = drafts
    .filter(isObservation)
    .filter(({ resource }) => !claims(resource, 'dr-pathology-finding'))
    .filter(({ resource }) => waits || resource.status !== 'preliminary');
  const conclusionCode = results.flatMap(verdictClass);
  return {
    key: 'endoscopy',
    resource: {
      resourceType: 'DiagnosticReport',
      ...head(context, 'DiagnosticReport', 'endoscopy', 'dr-endoscopy-report'),
      text: narrative([...summary, conclude([])]),
      extension: [{ url: PART_OF, valueReference: context.procedure }],
      status: waits ? 'preliminary' : 'final',
      category: [STRUCTURE.endoscopyReportCategory],
      code: context.concept(REPORT_KINDS['endoscopy-report'][fields.lesion.organ]),
      subject: context.patient,
      ...context.inEncounter,
      effectivePeriod: { start: fields.times.scopeInAt, end: fields.times.scopeOutAt },
      issued: context.concludedAt,
      performer: [
        fields.unit === undefined ? context.operator : logical('Organization', fields.unit),
      ],
      resultsInterpreter: [context.operator],
      ...(specimens.length === 0
        ? {}
        : { specimen: specimens.map((key) => toResource(context, 'Specimen', key)) }),
      result: results.map(({ key }) => toResource(context, 'Observation', key)),
      ...(images.length === 0
        ? {}
        : { media: images.map((key) => ({ link: toResource(context, 'Media', key) })) }),
      conclusion: conclude(summary),
      ...(conclusionCode.length === 0 ? {} : { conclusionCode }),
    },
  };
}

function verdictClass({ key, resource }: Draft<Observation>): readonly CodeableConcept[] {
  const { status, valueCodeableConcept } = resource;
  const isClass = key === 'curability' && status === 'final';
  return isClass && valueCodeableConcept !== undefined ? [valueCodeableConcept] : [];
}
