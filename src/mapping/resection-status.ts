import type { CodeableConcept, Observation } from 'fhir/r4.js';
import { STRUCTURE, WORD_CODES } from '../terminology/index.js';
import { basis } from './basis.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { type ObservationContent, specimenReference, toObservation } from './observation.js';

/**
 * Residual tumour as the assessment derives it of the pieces and margins; none before there is a
 * report. The status that the report states stands beside it, among its findings.
 *
 * @param present keys of the Observations of the case
 */
export function toResectionStatus(
  context: MappingContext,
  present: ReadonlySet<string>,
): readonly Draft<Observation>[] {
  if (context.known.assessment.specimen === undefined) return [];
  const specimen = specimenReference(context);
  return [
    toObservation(context, {
      item: 'resection-status',
      about: 'lesion',
      category: 'laboratory',
      profile: 'dr-computed',
      issuedAt: context.concludedAt,
      ...(specimen === undefined ? {} : { specimen }),
      content: {
        ...(context.hasFinalReport ? {} : { status: 'preliminary' }),
        ...statusContent(context),
        ...basis(
          context,
          'resection-status',
          ['en-bloc', 'resection-completeness', 'lateral-margin', 'vertical-margin'],
          present,
        ),
      },
    }),
  ];
}

/** Residual tumour by a final report, for readers of the Procedure. */
export function finalResectionStatus(context: MappingContext): CodeableConcept | undefined {
  const { specimen } = context.known.assessment;
  if (!context.hasFinalReport || specimen?.resectionStatus.kind !== 'determined') return undefined;
  return context.concept(WORD_CODES.resectionStatus[specimen.resectionStatus.value]);
}

function statusContent(context: MappingContext): ObservationContent {
  const status = context.known.assessment.specimen?.resectionStatus;
  if (status?.kind === 'determined') {
    return { valueCodeableConcept: context.concept(WORD_CODES.resectionStatus[status.value]) };
  }
  return {
    dataAbsentReason: context.hasFinalReport
      ? STRUCTURE.absent.unknown
      : STRUCTURE.absent.tempUnknown,
    note: [{ text: `Not derived, because not reported: ${(status?.missing ?? []).join(', ')}.` }],
  };
}
