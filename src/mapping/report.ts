import type { CodeableConcept, DiagnosticReport, Observation } from 'fhir/r4.js';
import { REPORT_KINDS, STRUCTURE } from '../terminology/index.js';
import { head, logical, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { narrative } from './narrative.js';
import { conclude } from './summary.js';

const PART_OF = 'http://hl7.org/fhir/StructureDefinition/event-partOf';

/**
 * The endoscopy report over the Observations of the case. It is preliminary while a specimen
 * waits for its result, unless the site signs it when the scope has left; then a verdict that
 * is still preliminary joins it later. A verdict with a class is its coded conclusion.
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
  const waits = specimens.length > 0 && settings.endoscopyReport === 'wait';
  const results = drafts
    .filter(isObservation)
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
      issued: fields.sentAt,
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

const isObservation = (draft: Draft): draft is Draft<Observation> =>
  draft.resource.resourceType === 'Observation';

function verdictClass({ key, resource }: Draft<Observation>): readonly CodeableConcept[] {
  const { status, valueCodeableConcept } = resource;
  const isClass = key === 'curability' && status === 'final';
  return isClass && valueCodeableConcept !== undefined ? [valueCodeableConcept] : [];
}
