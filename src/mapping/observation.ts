import type { CodeableConcept, Observation, ObservationComponent, Reference } from 'fhir/r4.js';
import { ITEMS, STRUCTURE } from '../terminology/index.js';
import { head, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import type { FindingRow, ItemKey } from './finding-row.js';

/** What distinguishes one Observation of a case from another. */
export interface ObservationParts {
  readonly item: ItemKey;
  /** Only where an item occurs more than once, as for the pieces of a specimen. */
  readonly key?: string;
  readonly profile?: 'dr-endoscopy-finding' | 'dr-computed' | 'dr-curability' | 'dr-score';
  readonly about: FindingRow['about'];
  readonly category: FindingRow['category'];
  readonly specimen?: Reference;
  /** Its own day, for a test that was not done at the procedure. */
  readonly effectiveOn?: string;
  readonly content: ObservationContent;
}

/**
 * Value, components or the reason for their absence, and what a computed one rests on; a status
 * only where it is not final.
 */
export type ObservationContent = Partial<Pick<Observation, 'status'>> &
  Pick<
    Observation,
    | 'valueCodeableConcept'
    | 'valueQuantity'
    | 'valueDateTime'
    | 'component'
    | 'dataAbsentReason'
    | 'derivedFrom'
    | 'method'
    | 'interpretation'
    | 'note'
  >;

/**
 * An Observation of the case. Its effective time is the start of the procedure, so that one date
 * window selects all that belongs to it; issued is when the message was sent.
 */
export function toObservation(
  context: MappingContext,
  parts: ObservationParts,
): Draft<Observation> {
  const key = parts.key ?? parts.item;
  return {
    key,
    resource: {
      resourceType: 'Observation',
      ...head(context, 'Observation', key, parts.profile ?? 'dr-endoscopy-finding'),
      partOf: [context.procedure],
      status: 'final',
      category: [STRUCTURE.observationCategory[parts.category]],
      code: context.concept(ITEMS[parts.item]),
      subject: context.patient,
      ...(parts.about === 'lesion' ? { focus: [context.lesion] } : {}),
      ...context.inEncounter,
      effectiveDateTime: parts.effectiveOn ?? context.fields.times.scopeInAt,
      issued: context.fields.sentAt,
      performer: [context.operator],
      ...parts.content,
      ...(parts.specimen === undefined ? {} : { specimen: parts.specimen }),
    },
  };
}

/** The specimen of the case, where it was retrieved and so has a resource. */
export function specimenReference(context: MappingContext): Reference | undefined {
  return context.fields.specimen?.retrieved === true
    ? toResource(context, 'Specimen', 'specimen')
    : undefined;
}

export const coded = (
  code: CodeableConcept,
  valueCodeableConcept: CodeableConcept,
): ObservationComponent => ({ code, valueCodeableConcept });
