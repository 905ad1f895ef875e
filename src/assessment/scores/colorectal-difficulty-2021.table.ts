import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';
import {
  CIRCUMFERENCE,
  LST,
  type LstKind,
  type Place,
  placeField,
  SIZE,
} from './colorectal-fields.table.js';

const ABSTRACT = [cite('li2021', 'abstract', 'published')];

type Question = {
  readonly sizeMm: number;
  readonly circumferencePercent: number;
  readonly location: Place;
  readonly lst: LstKind;
  readonly dentateLine: boolean;
};

const FIELDS = {
  sizeMm: SIZE,
  circumferencePercent: CIRCUMFERENCE,
  location: placeField(['colon']),
  lst: LST,
  dentateLine: {
    type: 'flag',
    says: 'reaches the dentate line',
    assumed: [{ when: {}, value: false }],
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'size-30-to-50-mm',
    when: { sizeMm: [{ atLeast: 30 }, { below: 50 }] },
    points: 1,
    says: 'lesion of 30 to less than 50 mm',
    cites: ABSTRACT,
  },
  {
    item: 'size-50-mm',
    when: { sizeMm: { atLeast: 50 } },
    points: 2,
    says: 'lesion of 50 mm or more',
    cites: ABSTRACT,
  },
  {
    item: 'two-thirds-of-circumference',
    when: { circumferencePercent: { atLeast: 66.67 } },
    points: 2,
    says: 'two thirds of the circumference or more',
    cites: ABSTRACT,
  },
  {
    item: 'caecum',
    when: { location: { is: ['caecum'] } },
    points: 1,
    says: 'lesion in the caecum',
    cites: ABSTRACT,
  },
  {
    item: 'flexure',
    when: { location: { is: ['hepatic-flexure', 'splenic-flexure', 'flexure'] } },
    points: 2,
    says: 'lesion at a flexure',
    cites: ABSTRACT,
  },
  {
    item: 'dentate-line',
    when: { dentateLine: { is: [true] } },
    points: 1,
    says: 'lesion at the dentate line',
    cites: ABSTRACT,
  },
  {
    item: 'lst-non-granular',
    when: { lst: { is: ['NG'] } },
    points: 1,
    says: 'non-granular laterally spreading tumour',
    cites: ABSTRACT,
  },
];

const WITHIN_60_MIN = 'chance that the dissection is complete within 60 min (derivation)';

const BANDS: readonly Band[] = [
  {
    group: 'easy',
    from: 0,
    to: 0,
    figures: [{ says: WITHIN_60_MIN, value: 75.0, unit: '%' }],
    cites: ABSTRACT,
  },
  {
    group: 'intermediate',
    from: 1,
    to: 1,
    figures: [{ says: WITHIN_60_MIN, value: 51.3, unit: '%' }],
    cites: ABSTRACT,
  },
  {
    group: 'difficult',
    from: 2,
    to: 3,
    figures: [{ says: WITHIN_60_MIN, value: 35.6, unit: '%' }],
    cites: ABSTRACT,
  },
  {
    group: 'very-difficult',
    from: 4,
    to: Number.POSITIVE_INFINITY,
    figures: [{ says: WITHIN_60_MIN, value: 3.4, unit: '%' }],
    cites: ABSTRACT,
  },
];

/** Source: li2021, abstract. Indeterminate: without one of its items. */
export const COLORECTAL_DIFFICULTY_2021 = scoreRule({
  kind: 'score',
  id: 'colorectal-difficulty-2021',
  version: 1,
  title: 'Difficulty of a colorectal dissection (2021)',
  population: 'Colorectal dissection, judged before it begins. Not for other organs.',
  cites: ABSTRACT,
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
