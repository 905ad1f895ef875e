import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, scoreRule } from '../../rules/index.js';

const ABSTRACT = [cite('hatta2017', 'abstract', 'published')];

/** What the score asks for; X: cannot be judged. */
type Question = {
  readonly ly: '0' | '1' | 'X';
  readonly v: '0' | '1' | 'X';
  readonly vm: '0' | '1' | 'X';
  readonly sizeMm: number;
  readonly smDepthUm: number;
};

const FIELDS = {
  ly: {
    type: 'word',
    words: ['0', '1', 'X'],
    unknown: ['X'],
    says: 'invasion of lymphatic vessels',
  },
  v: { type: 'word', words: ['0', '1', 'X'], unknown: ['X'], says: 'invasion of veins' },
  vm: { type: 'word', words: ['0', '1', 'X'], says: 'vertical margin' },
  sizeMm: {
    type: 'number',
    unit: 'mm',
    from: 0,
    to: 1000,
    says: 'long axis of the tumour on the fixed specimen',
  },
  smDepthUm: {
    type: 'number',
    unit: 'um',
    whole: true,
    from: 0,
    to: 100_000,
    says: 'depth of submucosal invasion; 0 for an intramucosal tumour',
  },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'lymphatic-invasion',
    when: { ly: { is: ['1'] } },
    points: 3,
    says: 'invasion of lymphatic vessels',
    cites: ABSTRACT,
  },
  {
    item: 'size-above-30-mm',
    when: { sizeMm: { above: 30 } },
    points: 1,
    says: 'tumour larger than 30 mm',
    cites: ABSTRACT,
  },
  {
    item: 'vertical-margin',
    when: { vm: { is: ['1'] } },
    points: 1,
    says: 'tumour at the vertical margin',
    cites: ABSTRACT,
  },
  {
    item: 'vertical-margin-not-judged',
    when: { vm: { is: ['X'] } },
    points: 1,
    says: 'a vertical margin that cannot be judged counts as involved',
    cites: [cite('hatta2017', 'X counts as 1: the cautious reading', 'derived')],
  },
  {
    item: 'venous-invasion',
    when: { v: { is: ['1'] } },
    points: 1,
    says: 'invasion of veins',
    cites: ABSTRACT,
  },
  {
    item: 'submucosa-500-um',
    when: { smDepthUm: { atLeast: 500 } },
    points: 1,
    says: 'submucosal invasion of 500 um or more',
    cites: ABSTRACT,
  },
];

const METASTASIS = 'metastasis in lymph nodes';
const SURVIVAL = '5-year cancer-specific survival without further treatment';

const BANDS: readonly Band[] = [
  {
    group: 'low',
    from: 0,
    to: 1,
    rate: { says: METASTASIS, percent: 2.5 },
    figures: [{ says: SURVIVAL, value: 99.6, unit: '%' }],
    cites: ABSTRACT,
  },
  {
    group: 'intermediate',
    from: 2,
    to: 4,
    rate: { says: METASTASIS, percent: 6.7 },
    figures: [{ says: SURVIVAL, value: 96.0, unit: '%' }],
    cites: ABSTRACT,
  },
  {
    group: 'high',
    from: 5,
    to: 7,
    rate: { says: METASTASIS, percent: 22.7 },
    figures: [{ says: SURVIVAL, value: 90.1, unit: '%' }],
    cites: ABSTRACT,
  },
];

/** Source: hatta2017, abstract. Indeterminate: without one of its items; X of a vessel is missing. */
export const ECURA = scoreRule({
  kind: 'score',
  id: 'ecura',
  version: 1,
  title: 'eCura score: metastasis in lymph nodes after a non-curative gastric dissection',
  population:
    'Gastric cancer resected without meeting the criteria of cure (eCuraC-2), and no other: 1101 ' +
    'operated patients (development), 905 followed (validation). C statistic for death of the ' +
    'cancer 0.78.',
  cites: ABSTRACT,
  fields: FIELDS,
  contradictions: [],
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
