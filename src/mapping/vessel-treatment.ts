import type { Procedure } from 'fhir/r4.js';
import { WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';

/** Each vessel that was treated, as a part of the dissection; in the order in which it was told. */
export function toVesselTreatments(context: MappingContext): readonly Draft<Procedure>[] {
  return (context.fields.safety?.vessels ?? []).map(({ site, means, bleeding, at }, i) => {
    const key = `vessel.${i + 1}`;
    return {
      key,
      resource: {
        resourceType: 'Procedure',
        ...head(context, 'Procedure', key, 'dr-sub-procedure'),
        partOf: [context.procedure],
        status: 'completed',
        code: context.concept(WORD_CODES.haemostasisMeans[means]),
        subject: context.patient,
        ...context.inEncounter,
        ...(at === undefined ? {} : { performedPeriod: { start: at, end: at } }),
        ...(bleeding === undefined
          ? {}
          : { reasonCode: [context.concept(WORD_CODES.bleeding[bleeding])] }),
        ...(site === undefined ? {} : { bodySite: [context.concept(WORD_CODES.vesselSite[site])] }),
      },
    };
  });
}
