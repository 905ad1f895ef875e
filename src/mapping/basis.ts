import { COMPUTATIONS } from '../terminology/index.js';
import { type MappingContext, toResource } from './context.js';
import type { ItemKey } from './finding-row.js';
import type { ObservationContent } from './observation.js';

/**
 * By which rule something was computed, and from what.
 *
 * @param from what it can be computed from
 * @param present items for which the case has an Observation, so that no link dangles
 */
export function basis(
  context: MappingContext,
  computation: keyof typeof COMPUTATIONS,
  from: readonly ItemKey[],
  present: ReadonlySet<string>,
): ObservationContent {
  const derivedFrom = from
    .filter((item) => present.has(item))
    .map((item) => toResource(context, 'Observation', item));
  const method = context.concept(COMPUTATIONS[computation]);
  const { rulesVersion } = context.known.assessment;
  return {
    method: {
      ...method,
      coding: (method.coding ?? []).map((coding) => ({ ...coding, version: rulesVersion })),
    },
    ...(derivedFrom.length > 0 ? { derivedFrom } : {}),
  };
}
