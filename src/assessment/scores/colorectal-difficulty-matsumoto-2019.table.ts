import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';
import { type Place, placeField, SIZE } from './colorectal-fields.table.js';

const ABSTRACT = [cite('matsumoto2019', 'abstract', 'published')];

const MORPHOLOGIES = ['LST-G', 'LST-NG-F', 'LST-NG-PD', 'protruded', 'depressed'] as const;
export type Morphology = (typeof MORPHOLOGIES)[number];

type Question = {
  readonly emrScar: boolean;
  readonly sizeMm: number;
  readonly location: Place;
  readonly morphology: Morphology;
};

const FIELDS = {
  emrScar: { type: 'flag', says: 'scar of an earlier mucosal resection' },
  sizeMm: SIZE,
  location: placeField(['colon']),
  morphology: {
    type: 'word',
    words: MORPHOLOGIES,
    says: 'laterally spreading tumour by type, protruded, or depressed',
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'emr-scar',
    when: { emrScar: { is: [true] } },
    points: 4,
    says: 'scar of an earlier mucosal resection',
    cites: ABSTRACT,
  },
  {
    item: 'size-30-mm',
    when: { sizeMm: { atLeast: 30 } },
    points: 1,
    says: 'diameter of 30 mm or more',
    cites: ABSTRACT,
  },
  {
    item: 'flexure',
    when: { location: { is: ['hepatic-flexure', 'splenic-flexure', 'flexure'] } },
    points: 2,
    says: 'lesion at the hepatic or splenic flexure',
    cites: ABSTRACT,
  },
  {
    item: 'transverse-colon',
    when: { location: { is: ['transverse'] } },
    points: 1,
    says: 'lesion in the transverse colon',
    cites: ABSTRACT,
  },
  {
    item: 'depressed',
    when: { morphology: { is: ['LST-NG-PD', 'depressed'] } },
    points: 3,
    says: 'non-granular pseudo-depressed, or depressed',
    cites: ABSTRACT,
  },
  {
    item: 'protruded-or-flat',
    when: { morphology: { is: ['LST-NG-F', 'protruded'] } },
    points: 1,
    says: 'protruded, or non-granular flat',
    cites: ABSTRACT,
  },
];

const MEAN_SPEED = 'mean speed of dissection';

const BANDS: readonly Band[] = [
  {
    group: 'low',
    from: 0,
    to: 2,
    figures: [{ says: MEAN_SPEED, value: 12.6, unit: 'mm2/min' }],
    cites: ABSTRACT,
  },
  {
    group: 'intermediate',
    from: 3,
    to: 5,
    figures: [{ says: MEAN_SPEED, value: 8.1, unit: 'mm2/min' }],
    cites: ABSTRACT,
  },
  {
    group: 'high',
    from: 6,
    to: Number.POSITIVE_INFINITY,
    figures: [{ says: MEAN_SPEED, value: 5.5, unit: 'mm2/min' }],
    cites: ABSTRACT,
  },
];

/** Source: matsumoto2019, abstract. Indeterminate: without one of its items. */
export const COLORECTAL_DIFFICULTY_MATSUMOTO_2019 = scoreRule({
  kind: 'score',
  id: 'colorectal-difficulty-matsumoto-2019',
  version: 1,
  title: 'Difficulty of a colorectal dissection before it begins (2019)',
  population: 'Colorectal dissection, judged before it begins. Not for other organs.',
  cites: ABSTRACT,
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
