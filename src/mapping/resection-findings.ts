import type { CodeableConcept, Observation } from 'fhir/r4.js';
import { ITEMS, localRef, WORD_CODES } from '../terminology/index.js';
import { type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { toObservation } from './observation.js';
import { measured } from './values.js';

/** What the resection yielded: integrity, completeness, the pieces and their sizes. */
export function toResectionFindings(context: MappingContext): Listed {
  return [...integrity(context), ...pieces(context)];
}

type Listed = readonly Draft<Observation>[];

/** En bloc or not, and whether anything was left to see: the outcomes that rates count. */
function integrity(context: MappingContext): Listed {
  const { outcome, complete } = context.fields.resection;
  const about = { about: 'lesion', category: 'procedure' } as const;
  return [
    toObservation(context, {
      item: 'en-bloc',
      ...about,
      content: { valueCodeableConcept: context.concept(WORD_CODES.resectionOutcome[outcome]) },
    }),
    ...(complete === undefined
      ? []
      : [
          toObservation(context, {
            item: 'resection-completeness',
            ...about,
            content: {
              valueCodeableConcept: context.concept(
                localRef({
                  set: 'resection-integrity',
                  code: complete ? 'complete' : 'incomplete',
                }),
              ),
            },
          }),
        ]),
  ];
}

function pieces(context: MappingContext): Listed {
  return (context.fields.specimen?.pieces ?? []).map(({ longAxisMm, shortAxisMm }, i) => {
    const at = `/specimen/pieces/${i}`;
    const length = (item: 'specimen-length' | 'specimen-width'): CodeableConcept =>
      context.concept(ITEMS[item]);
    return toObservation(context, {
      item: 'piece-dimensions',
      key: `piece-dimensions.${i + 1}`,
      about: 'session',
      category: 'procedure',
      specimen: toResource(context, 'Specimen', `specimen.${i + 1}`),
      content: {
        component: [
          {
            code: length('specimen-length'),
            valueQuantity: measured(context, `${at}/longAxisMm`, longAxisMm, 'mm'),
          },
          {
            code: length('specimen-width'),
            valueQuantity: measured(context, `${at}/shortAxisMm`, shortAxisMm, 'mm'),
          },
        ],
      },
    });
  });
}
