import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';
import { type Place, placeField, SIZE } from './colorectal-fields.table.js';

const ABSTRACT = [cite('albouys2024', 'abstract', 'published')];

type Question = {
  readonly age: number;
  readonly antithrombotic: boolean;
  readonly location: Place;
  readonly sizeMm: number;
  readonly asa: 'I' | 'II' | 'III' | 'IV' | 'V';
};

const FIELDS = {
  age: { type: 'number', unit: 'years', whole: true, from: 0, to: 125, says: 'age' },
  antithrombotic: { type: 'flag', says: 'takes an antithrombotic drug' },
  location: placeField([]),
  sizeMm: SIZE,
  asa: {
    type: 'word',
    words: ['I', 'II', 'III', 'IV', 'V'],
    says: 'ASA class of physical status',
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'age-75',
    when: { age: { atLeast: 75 } },
    points: 1,
    says: '75 years or older',
    cites: ABSTRACT,
  },
  {
    item: 'antithrombotic',
    when: { antithrombotic: { is: [true] } },
    points: 1,
    says: 'antithrombotic drug',
    cites: ABSTRACT,
  },
  {
    item: 'rectum',
    when: { location: { is: ['rectum'] } },
    points: 1,
    says: 'lesion in the rectum',
    cites: ABSTRACT,
  },
  {
    item: 'size-above-50-mm',
    when: { sizeMm: { above: 50 } },
    points: 3,
    says: 'lesion larger than 50 mm',
    cites: ABSTRACT,
  },
  {
    item: 'asa-iii-or-iv',
    when: { asa: { is: ['III', 'IV'] } },
    points: 2,
    says: 'ASA class III or IV',
    cites: ABSTRACT,
  },
  {
    item: 'asa-v',
    when: { asa: { is: ['V'] } },
    points: 2,
    says: 'ASA class V counts as IV',
    cites: [cite('albouys2024', 'a class that the abstract does not name', 'derived')],
  },
];

const BLED = 'clinically significant bleeding within 30 days';

const BANDS: readonly Band[] = [
  { group: 'low-medium', from: 0, to: 4, rate: { says: BLED, percent: 4.1 }, cites: ABSTRACT },
  { group: 'high', from: 5, to: 8, rate: { says: BLED, percent: 17.5 }, cites: ABSTRACT },
];

/** Source: albouys2024, abstract. Indeterminate: without one of its items. */
export const LIMOGES = scoreRule({
  kind: 'score',
  id: 'limoges',
  version: 1,
  title: 'Limoges score: bleeding after colorectal dissection',
  population:
    'Colorectal dissection: 940 procedures with 75 clinically significant bleeds (8.0 %); area ' +
    'under the curve 0.751 (0.690 to 0.812). Validated internally only.',
  cites: ABSTRACT,
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [
    {
      remark: 'rectosigmoid-not-rectal',
      when: { location: { is: ['rectosigmoid'] } },
      says: 'The rectosigmoid junction is not counted as rectum; the abstract does not name it.',
      cites: [cite('albouys2024', 'a place that the abstract does not name', 'derived')],
    },
  ],
});
