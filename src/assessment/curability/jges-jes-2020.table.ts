import { cite } from '../../references/index.js';
import { classRule, type Remark, type TableOf } from '../../rules/index.js';
import { CURABILITY_CONTRADICTIONS } from './question.js';
import { METASTASIS_BY_DEPTH } from './remarks.table.js';
import { SQUAMOUS_FIELDS, type SquamousQuestion } from './squamous-question.js';

export type JesClass =
  | 'no-rule'
  | 'incomplete'
  | 'curative'
  | 'undetermined'
  | 'additional-treatment';

const DEPTH = cite(
  'jgesJes2020',
  'as in the abstract of Mini-invasive Surg 2021;5:36',
  'published',
);
const MARGIN = cite('jgesJes2020', 'vertical margin, as transcribed in a program', 'recalled');
const HORIZONTAL = cite('jgesJes2020', 'an involved margin is not cure', 'derived');
const NOT_FREE = cite('jgesJes2020', 'a margin that cannot be assessed is not free', 'derived');
const GAP = cite('jgesJes2020', 'outside the table', 'derived');

const table: TableOf<SquamousQuestion, JesClass> = [
  [
    {
      row: 'no-rule',
      when: { tumour: { is: ['barrett', 'gastric', 'colorectal', 'other'] } },
      class: 'no-rule',
      says: 'The classes were made for squamous cancer of the oesophagus.',
      cites: [GAP],
    },
  ],
  [
    {
      row: 'incomplete',
      when: { endoscopicallyComplete: { is: [false] } },
      class: 'incomplete',
      says: 'Part of the lesion was left in place.',
      cites: [GAP],
    },
  ],
  [
    {
      row: 'submucosal-invasion',
      when: { depth: { is: ['sm', 'mp'] } },
      class: 'additional-treatment',
      reason: 'submucosal-invasion',
      says: 'The tumour invades the submucosa, however little.',
      cites: [DEPTH],
    },
    {
      row: 'lymphatic-invasion',
      when: { ly: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vascular-invasion',
      says: 'The tumour invades lymphatic vessels.',
      cites: [DEPTH],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vascular-invasion',
      says: 'The tumour invades veins.',
      cites: [DEPTH],
    },
    {
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [MARGIN],
    },
    {
      row: 'vertical-margin-not-assessable',
      when: { vm: { is: ['X'] } },
      class: 'additional-treatment',
      reason: 'vertical-margin-not-assessable',
      says: 'The vertical margin cannot be assessed and counts as not free.',
      cites: [NOT_FREE],
    },
  ],
  [
    {
      row: 'muscularis-mucosae',
      when: { depth: { is: ['mm'] } },
      class: 'undetermined',
      says:
        'To the muscularis mucosae without vascular invasion: not called curative, and ' +
        'additional treatment is not settled.',
      cites: [DEPTH],
    },
  ],
  [
    {
      row: 'horizontal-margin',
      when: { hm: { is: ['1', 'X'] } },
      class: 'undetermined',
      reason: 'horizontal-margin',
      says: 'Would be curative, but the horizontal margin is not free.',
      cites: [HORIZONTAL],
    },
  ],
  [
    {
      row: 'no-deeper-than-lamina-propria',
      when: { depth: { is: ['ep', 'lpm'] } },
      class: 'curative',
      says: 'No deeper than the lamina propria, without vascular invasion, margins free.',
      cites: [DEPTH, MARGIN],
    },
  ],
];

const remarks: readonly Remark[] = [
  ...METASTASIS_BY_DEPTH,
  {
    remark: 'jes-2022-on-mm',
    when: { depth: { is: ['mm'] } },
    beside: ['undetermined'],
    says:
      'The guideline of 2022 is stricter on the muscularis mucosae: additional treatment should ' +
      'be considered there too, with or without vascular invasion.',
    cites: [cite('jes2022', 'as quoted at length', 'recalled')],
  },
];

/** Curability by the Japanese guideline: squamous cancer of the oesophagus. */
export const JGES_JES_2020 = classRule<JesClass>({
  kind: 'rule-set',
  id: 'jges-jes-2020',
  version: 1,
  title: 'Curability after endoscopic resection of squamous oesophageal cancer, Japan 2020',
  population:
    'Superficial squamous cancer of the oesophagus after endoscopic resection. Not for Barrett ' +
    'cancer.',
  cites: [DEPTH],
  fields: SQUAMOUS_FIELDS,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: ['undetermined'],
  remarks,
});
