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
  readonly profile?:
    | 'dr-endoscopy-finding'
    | 'dr-pathology-finding'
    | 'dr-computed'
    | 'dr-curability'
    | 'dr-score';
  readonly about: FindingRow['about'];
  readonly category: FindingRow['category'];
  readonly specimen?: Reference;
  /** Its own day, for a test that was not done at the procedure. */
  readonly effectiveOn?: string;
  /** When it was said, where that was not with the case. */
  readonly issuedAt?: string;
  /** Who says it, where that is not the operator; nobody where that was not told. */
  readonly performer?: readonly Reference[];
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
      issued: parts.issuedAt ?? context.fields.sentAt,
      ...performed(parts.performer ?? [context.operator]),
      ...parts.content,
      ...(parts.specimen === undefined ? {} : { specimen: parts.specimen }),
    },
  };
}

function performed(performer: readonly Reference[]): Pick<Observation, 'performer'> {
  return performer.length === 0 ? {} : { performer: [...performer] };
}

/** The specimen of the case, where there is one and so a resource. */
export function specimenReference(context: MappingContext): Reference | undefined {
  return hasSpecimen(context) ? toResource(context, 'Specimen', 'specimen') : undefined;
}

/** Whether there is a specimen: it was retrieved, or else a laboratory reports on it. */
export function hasSpecimen({ fields, known }: Pick<MappingContext, 'fields' | 'known'>): boolean {
  return fields.specimen?.retrieved === true || known.reports.length > 0;
}

export const coded = (
  code: CodeableConcept,
  valueCodeableConcept: CodeableConcept,
): ObservationComponent => ({ code, valueCodeableConcept });
