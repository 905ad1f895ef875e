import type { CodeableConcept, Observation, Reference } from 'fhir/r4.js';
import { ITEMS, STRUCTURE } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import type { FindingRow, ItemKey } from './finding-row.js';
import type { ObservationContent } from './observation.js';

/** What distinguishes an Observation of an event or of a follow-up examination. */
export interface LaterParts {
  readonly item: ItemKey;
  readonly key: string;
  readonly profile: 'dr-later-finding' | 'dr-follow-up-finding' | 'dr-computed';
  readonly category: FindingRow['category'];
  /** Day or instant. */
  readonly on: string;
  readonly issued: string;
  readonly partOf: Reference;
  readonly focus?: readonly Reference[];
  /** Nobody where that was not told. */
  readonly performer?: Reference | undefined;
  readonly content: ObservationContent;
}

/** An Observation that was made after the dissection, at a time and by people of its own. */
export function toLaterObservation(context: MappingContext, parts: LaterParts): Draft<Observation> {
  const { key, focus = [], performer } = parts;
  const code: CodeableConcept = context.concept(ITEMS[parts.item]);
  return {
    key,
    resource: {
      resourceType: 'Observation',
      ...head(context, 'Observation', key, parts.profile),
      partOf: [parts.partOf],
      status: 'final',
      category: [STRUCTURE.observationCategory[parts.category]],
      code,
      subject: context.patient,
      ...(focus.length === 0 ? {} : { focus: [...focus] }),
      effectiveDateTime: parts.on,
      issued: parts.issued,
      ...(performer === undefined ? {} : { performer: [performer] }),
      ...parts.content,
    },
  };
}
