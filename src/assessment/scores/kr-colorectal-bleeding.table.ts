import { cite } from '../../references/index.js';
import { type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';
import { type Place, placeField, SIZE } from './colorectal-fields.table.js';

const ABSTRACT = [cite('korea2019', 'meeting abstract', 'published')];

type Question = {
  readonly location: Place;
  readonly sizeMm: number;
  readonly antiplatelet: 'none' | 'aspirin-alone' | 'other-or-combined';
};

const FIELDS = {
  // Whether "rectosigmoid" means a lesion higher in the sigmoid too is not said.
  location: placeField(['colon', 'sigmoid']),
  sizeMm: SIZE,
  antiplatelet: {
    type: 'word',
    words: ['none', 'aspirin-alone', 'other-or-combined'],
    says: 'antiplatelet drugs: none, aspirin alone, another one or several',
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'rectosigmoid',
    when: { location: { is: ['rectosigmoid', 'rectum'] } },
    points: 2,
    says: 'lesion in rectum or rectosigmoid',
    cites: ABSTRACT,
  },
  {
    item: 'size-30-mm',
    when: { sizeMm: { atLeast: 30 } },
    points: 1,
    says: 'lesion of 30 mm or more',
    cites: ABSTRACT,
  },
  {
    item: 'antiplatelet',
    when: { antiplatelet: { is: ['other-or-combined'] } },
    points: 1,
    says: 'antiplatelet drugs other than aspirin alone',
    cites: ABSTRACT,
  },
];

/** Source: korea2019, meeting abstract. Indeterminate: without one of its items. */
export const KR_COLORECTAL_BLEEDING = scoreRule({
  kind: 'score',
  id: 'kr-colorectal-bleeding',
  version: 1,
  title: 'Korean score: bleeding after colorectal dissection',
  population:
    'Colorectal dissection, several centres: 1189 (derivation), 415 (validation). The border ' +
    'between low (1.9 % bled) and high risk (4.2 %) was not in the abstract: no group is given. ' +
    'In the 940 procedures of the Limoges score its area under the curve was 0.567.',
  cites: [...ABSTRACT, cite('albouys2024', 'abstract: 0.567', 'published')],
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: [],
  remarks: [],
});
