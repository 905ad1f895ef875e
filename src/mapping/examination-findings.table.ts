import {
  answer,
  coded,
  type FindingRow,
  type ItemKey,
  measured,
  type PartRow,
  part,
  time,
} from './finding-row.js';

const row = (item: ItemKey, parts: readonly PartRow[]): FindingRow => ({
  item,
  category: 'exam',
  about: 'session',
  parts,
});
const valued = (
  item: ItemKey,
  value: Extract<FindingRow, { value: unknown }>['value'],
  parts: readonly PartRow[] = [],
): FindingRow => ({ item, category: 'exam', about: 'session', value, parts });

/** Every field of an examination that becomes an Observation, but for its new lesions. */
export const EXAMINATION_FINDINGS: readonly FindingRow[] = [
  row('examination-quality', [
    part('examination-complete', answer('/quality/complete')),
    part('mucosa-view', coded('/quality/mucosaView', 'mucosaView')),
    {
      code: 'chromoendoscopy',
      at: '/quality/chromoendoscopy',
      kind: 'each',
      words: 'chromoendoscopy',
      noneIsNo: true,
    },
    part('inspection-duration', measured('/quality/inspectionMin', 'min')),
  ]),
  row('bowel-preparation', [
    part({ set: 'bbps', code: 'bbps-right' }, measured('/quality/bowelPreparation/right', 'score')),
    part(
      { set: 'bbps', code: 'bbps-transverse' },
      measured('/quality/bowelPreparation/transverse', 'score'),
    ),
    part({ set: 'bbps', code: 'bbps-left' }, measured('/quality/bowelPreparation/left', 'score')),
  ]),
  valued('scar-seen', answer('/scar/seen')),
  valued('scar-finding', coded('/scar/finding', 'scarFinding'), [
    part('scar-lesion-length', measured('/scar/sizeMm', 'mm')),
  ]),
  valued('scar-biopsy', coded('/scar/biopsy', 'tissueResult')),
  {
    item: 'scar-treatment',
    category: 'procedure',
    about: 'session',
    list: { at: '/scar/treatments', words: 'scarTreatment' },
  },
  row('passage-at-scar', [
    part('endoscope-passes', answer('/passage/endoscopePasses')),
    part('scar-dilated', answer('/passage/dilated')),
    part('dilatation-diameter', measured('/passage/diameterMm', 'mm')),
  ]),
  valued('barrett-left', answer('/barrettLeft/present'), [
    part({ set: 'prague', code: 'm' }, measured('/barrettLeft/maximumCm', 'cm')),
    part('barrett-ablated', answer('/barrettLeft/ablated')),
  ]),
  valued('next-step', coded('/next/step', 'nextStep'), [
    part('next-examination-on', time('/next/on')),
    part('stop-reason', coded('/next/reason', 'stopReason')),
  ]),
];

/** One new lesion elsewhere; the pointers lead into its entry of the list. */
export const newLesionRow = (i: number): FindingRow =>
  row('metachronous-lesion', [
    part('metachronous-organ', coded(`/newLesions/${i}/organ`, 'organ')),
    part('metachronous-site', coded(`/newLesions/${i}/site`, 'site')),
    part('metachronous-length', measured(`/newLesions/${i}/sizeMm`, 'mm')),
    part('metachronous-histology', coded(`/newLesions/${i}/histology`, 'tissueResult')),
    part('polyp-type', coded(`/newLesions/${i}/polypType`, 'polypType')),
    part('lesion-removed', answer(`/newLesions/${i}/removed`)),
  ]);
