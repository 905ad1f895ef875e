import type { ServiceRequest, Specimen, SpecimenProcessing } from 'fhir/r4.js';
import {
  REQUEST_KINDS,
  SPECIMEN_PROCESSING,
  SPECIMEN_TYPE,
  STRUCTURE,
  WORD_CODES,
} from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, logical, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { hasSpecimen } from './observation.js';
import { toEsdCode } from './procedure.js';
import { toAccession, wasSigned } from './report-line.js';

/** The specimen and its pieces; none where it was not retrieved or nobody tells of one. */
export function toSpecimens(context: MappingContext): readonly Draft<Specimen>[] {
  if (!hasSpecimen(context)) return [];
  const whole = specimenResource(context, 'specimen');
  const processing = toProcessing(context);
  const container = toContainer(context);
  return [
    {
      key: 'specimen',
      resource: {
        ...whole,
        ...inLaboratory(context),
        ...(processing.length === 0 ? {} : { processing }),
        ...(container === undefined ? {} : { container: [container] }),
      },
    },
    ...(context.fields.specimen?.pieces ?? []).map((_piece, i) => ({
      key: `specimen.${i + 1}`,
      resource: {
        ...specimenResource(context, `specimen.${i + 1}`),
        parent: [toResource(context, 'Specimen', 'specimen')],
      },
    })),
  ];
}

/** Whether it is certain that there is nothing for a pathologist to see. */
export function cannotHaveSpecimen({
  fields,
  known,
}: Pick<MappingContext, 'fields' | 'known'>): boolean {
  if (known.reports.length > 0) return false;
  const { resection, specimen } = fields;
  const isLeft = resection.outcome === 'abandoned' || resection.outcome === 'not-started';
  return isLeft || specimen?.retrieved === false;
}

/** The request to pathology that goes with the specimen; completed by the final report. */
export function toPathologyRequest(context: MappingContext): readonly Draft<ServiceRequest>[] {
  const { specimen, times } = context.fields;
  if (!hasSpecimen(context)) return [];
  return [
    {
      key: 'pathology',
      resource: {
        resourceType: 'ServiceRequest',
        ...head(context, 'ServiceRequest', 'pathology', 'dr-pathology-request'),
        status: isRead(context) ? 'completed' : 'active',
        intent: 'order',
        category: [STRUCTURE.laboratoryRequest],
        code: context.concept(REQUEST_KINDS['histopathology-esd']),
        subject: context.patient,
        ...context.inEncounter,
        authoredOn: times.scopeOutAt,
        requester: context.operator,
        ...(specimen?.laboratory === undefined
          ? {}
          : { performer: [logical('Organization', specimen.laboratory)] }),
        reasonReference: [context.lesion],
        supportingInfo: [context.procedure],
        specimen: [toResource(context, 'Specimen', 'specimen')],
      },
    },
  ];
}

function specimenResource(context: MappingContext, key: string): Specimen {
  const { specimen, times } = context.fields;
  const [bodySite = {}] = toBodySite(context).slice(-1);
  return {
    resourceType: 'Specimen',
    ...head(context, 'Specimen', key, 'dr-specimen'),
    // What was sectioned and read is consumed.
    status: isRead(context) ? 'unavailable' : 'available',
    type: context.concept(SPECIMEN_TYPE),
    subject: context.patient,
    request: [toResource(context, 'ServiceRequest', 'pathology')],
    collection: {
      collector: context.operator,
      // Retrieval is the collection; where its time is not told, the last time it can have been.
      collectedDateTime: specimen?.retrievedAt ?? times.scopeOutAt,
      method: toEsdCode(context),
      bodySite,
    },
  };
}

/** Whether a report on the specimen is or was signed. */
function isRead({ known, version }: MappingContext): boolean {
  return known.reports.some((report) => wasSigned(version, report));
}

/** Its number in the laboratory, by the report in force, and when it came there. */
function inLaboratory({
  known: { reports },
}: MappingContext): Pick<Specimen, 'accessionIdentifier' | 'receivedTime'> {
  const [report] = reports;
  if (report === undefined) return {};
  const { receivedAt } = report.fields.specimen ?? {};
  return {
    accessionIdentifier: toAccession(report),
    ...(receivedAt === undefined ? {} : { receivedTime: receivedAt }),
  };
}

function toProcessing(context: MappingContext): SpecimenProcessing[] {
  const { specimen } = context.fields;
  const step = (code: 'pinned' | 'oriented' | 'formalin-fixed') =>
    context.concept(SPECIMEN_PROCESSING[code]);
  return [
    ...(specimen?.pinned === true ? [{ procedure: step('pinned') }] : []),
    ...(specimen?.oriented === true ? [{ procedure: step('oriented') }] : []),
    ...(specimen?.fixedAt === undefined
      ? []
      : [{ procedure: step('formalin-fixed'), timeDateTime: specimen.fixedAt }]),
  ];
}

function toContainer(context: MappingContext) {
  const { specimen } = context.fields;
  if (specimen?.container === undefined && specimen?.fixative === undefined) return undefined;
  return {
    ...(specimen.container === undefined ? {} : { identifier: [{ ...specimen.container }] }),
    ...(specimen.fixative === undefined
      ? {}
      : { additiveCodeableConcept: context.concept(WORD_CODES.fixative[specimen.fixative]) }),
  };
}
