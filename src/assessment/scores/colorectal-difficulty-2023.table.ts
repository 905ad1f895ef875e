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

const ABSTRACT = [cite('li2023', 'abstract', 'published')];

type Question = {
  readonly sizeMm: number;
  readonly circumferencePercent: number;
  readonly location: Place;
  readonly lst: LstKind;
  readonly precedingBiopsy: boolean;
  readonly nice: 1 | 2 | 3;
};

const FIELDS = {
  sizeMm: SIZE,
  circumferencePercent: CIRCUMFERENCE,
  location: placeField(['colon']),
  lst: LST,
  precedingBiopsy: {
    type: 'flag',
    says: 'a biopsy was taken from the lesion before',
    assumed: [{ when: {}, value: false }],
  },
  nice: {
    type: 'word',
    words: [1, 2, 3],
    says: 'NICE type; absent: not type 3',
    assumed: [{ when: {}, value: 2 }],
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'size-30-to-50-mm',
    when: { sizeMm: [{ atLeast: 30 }, { below: 50 }] },
    points: 2,
    says: 'lesion of 30 to less than 50 mm',
    cites: ABSTRACT,
  },
  {
    item: 'size-50-mm',
    when: { sizeMm: { atLeast: 50 } },
    points: 3,
    says: 'lesion of 50 mm or more',
    cites: ABSTRACT,
  },
  {
    item: 'two-thirds-of-circumference',
    when: { circumferencePercent: { atLeast: 66.67 } },
    points: 3,
    says: 'two thirds of the circumference or more',
    cites: ABSTRACT,
  },
  {
    item: 'caecum',
    when: { location: { is: ['caecum'] } },
    points: 2,
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
    item: 'lst-non-granular',
    when: { lst: { is: ['NG'] } },
    points: 1,
    says: 'non-granular laterally spreading tumour',
    cites: ABSTRACT,
  },
  {
    item: 'preceding-biopsy',
    when: { precedingBiopsy: { is: [true] } },
    points: 1,
    says: 'a biopsy was taken before',
    cites: ABSTRACT,
  },
  {
    item: 'nice-3',
    when: { nice: { is: [3] } },
    points: 3,
    says: 'NICE type 3',
    cites: ABSTRACT,
  },
];

const BANDS: readonly Band[] = [
  { group: 'easy', from: 0, to: 1, cites: ABSTRACT },
  { group: 'intermediate', from: 2, to: 3, cites: ABSTRACT },
  { group: 'difficult', from: 4, to: 6, cites: ABSTRACT },
  { group: 'very-difficult', from: 7, to: Number.POSITIVE_INFINITY, cites: ABSTRACT },
];

/** Source: li2023, abstract. Indeterminate: without one of its items. */
export const COLORECTAL_DIFFICULTY_2023 = scoreRule({
  kind: 'score',
  id: 'colorectal-difficulty-2023',
  version: 1,
  title: 'Difficulty of a colorectal dissection (2023)',
  population: 'Colorectal dissection, judged before it begins. Not for other organs.',
  cites: ABSTRACT,
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
