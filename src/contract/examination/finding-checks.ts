import type { CrossCheck } from '../cross-check.js';
import { type Organ, SITE_ORGAN } from '../words.table.js';
import type { ReadableExamination } from './readable-examination.js';
import { ROUTE_ORGANS, type Route } from './words.table.js';

/** Whether an endoscope sees the organ on its way. */
export function leadsTo(route: Route, organ: Organ): boolean {
  const organs: readonly Organ[] = ROUTE_ORGANS[route];
  return organs.includes(organ);
}

export const findingChecks: readonly CrossCheck<ReadableExamination>[] = [
  {
    rule: 'part-of-another-route',
    message: 'This is not told of an examination by this route.',
    expected: 'bowelPreparation with route lower, mucosaView and barrettLeft with route upper',
    broken: ({ route, quality = {}, barrettLeft }) => [
      ...(route === 'upper' && quality.bowelPreparation !== undefined
        ? ['/quality/bowelPreparation']
        : []),
      ...(route === 'lower' && quality.mucosaView !== undefined ? ['/quality/mucosaView'] : []),
      ...(route === 'lower' && barrettLeft !== undefined ? ['/barrettLeft'] : []),
    ],
  },
  {
    rule: 'organ-of-another-route',
    message: 'This organ is not seen by this route.',
    expected: 'oesophagus, stomach and duodenum by the upper route, colon and rectum by the lower',
    broken: ({ route, newLesions = [] }) =>
      newLesions.flatMap(({ organ }, i) =>
        route !== undefined && organ !== undefined && !leadsTo(route, organ)
          ? [`/newLesions/${i}/organ`]
          : [],
      ),
  },
  {
    rule: 'CC-12',
    message: 'This site is not part of the organ.',
    expected: 'a site of the organ that stands beside it',
    broken: ({ newLesions = [] }) =>
      newLesions.flatMap(({ organ, site }, i) =>
        organ !== undefined && site !== undefined && SITE_ORGAN[site] !== organ
          ? [`/newLesions/${i}/site`]
          : [],
      ),
  },
  {
    rule: 'scar-not-seen',
    message: 'The scar was not seen, yet it is described, biopsied or treated.',
    expected: 'no finding, size, biopsy or treatment of a scar that was not seen',
    broken: ({ scar = {} }) => (scar.seen === false && isDescribed(scar) ? ['/scar/seen'] : []),
  },
  {
    rule: 'passage-not-dilated',
    message: 'Nothing was dilated, yet a diameter is told.',
    expected: 'passage.diameterMm with passage.dilated true alone',
    broken: ({ passage = {} }) =>
      passage.dilated === false && passage.diameterMm !== undefined ? ['/passage/diameterMm'] : [],
  },
  {
    rule: 'barrett-denied',
    message: 'No Barrett mucosa is left, yet it has an extent or was ablated.',
    expected: 'an extent of 0 or none, and no ablation, where there is none',
    broken: ({ barrettLeft: { present, maximumCm, ablated } = {} }) =>
      present !== false
        ? []
        : [
            ...((maximumCm ?? 0) > 0 ? ['/barrettLeft/maximumCm'] : []),
            ...(ablated === true ? ['/barrettLeft/ablated'] : []),
          ],
  },
];

/** A biopsy that was not taken and a list without treatments describe nothing. */
const isDescribed = (scar: NonNullable<ReadableExamination['scar']>): boolean =>
  scar.finding !== undefined ||
  scar.sizeMm !== undefined ||
  (scar.biopsy !== undefined && scar.biopsy !== 'not-taken') ||
  (scar.treatments !== undefined && scar.treatments.length > 0);
