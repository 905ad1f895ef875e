import { cite } from '../../references/index.js';
import { classRule, type TableOf } from '../../rules/index.js';
import { CURABILITY_CONTRADICTIONS } from './question.js';
import { METASTASIS_BY_DEPTH } from './remarks.table.js';
import { SQUAMOUS_FIELDS, type SquamousQuestion } from './squamous-question.js';

export type KoreanClass =
  | 'no-rule'
  | 'incomplete'
  | 'no-further-treatment'
  | 'close-follow-up'
  | 'undetermined'
  | 'additional-treatment';

const E7 = cite('korea2020', 'statement E7', 'published');
const E7_END = cite('korea2020', 'end of statement E7, from memory', 'recalled');
const NOT_FREE = cite('korea2020', 'a margin that cannot be assessed is not free', 'derived');
const GAP = cite('korea2020', 'fills a gap of statement E7', 'derived');

const table: TableOf<SquamousQuestion, KoreanClass> = [
  [
    {
      row: 'no-rule',
      when: { tumour: { is: ['barrett', 'gastric', 'colorectal', 'other'] } },
      class: 'no-rule',
      says: 'Only the statement on squamous cancer of the oesophagus is part of this rule set.',
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
      says: 'The tumour invades the submucosa.',
      cites: [E7],
    },
    {
      row: 'lymphatic-invasion',
      when: { ly: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vascular-invasion',
      says: 'The tumour invades lymphatic vessels.',
      cites: [E7],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vascular-invasion',
      says: 'The tumour invades veins.',
      cites: [E7],
    },
    {
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'additional-treatment',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [E7, E7_END],
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
      row: 'piecemeal',
      when: { enBloc: { is: [false] } },
      class: 'undetermined',
      reason: 'piecemeal',
      says:
        'Resected piecemeal; the statement frees en bloc resections alone from further ' +
        'treatment.',
      cites: [GAP],
    },
    {
      row: 'horizontal-margin',
      when: { hm: { is: ['1', 'X'] } },
      class: 'undetermined',
      reason: 'horizontal-margin',
      says:
        'The horizontal margin is not free; the statement is remembered to speak of the ' +
        'vertical one.',
      cites: [GAP, E7_END],
    },
  ],
  [
    {
      row: 'muscularis-mucosae',
      when: { depth: { is: ['mm'] } },
      class: 'close-follow-up',
      says: 'To the muscularis mucosae without vascular invasion.',
      cites: [E7],
    },
  ],
  [
    {
      row: 'no-deeper-than-lamina-propria',
      when: { depth: { is: ['ep', 'lpm'] } },
      class: 'no-further-treatment',
      says: 'En bloc and complete, no deeper than the lamina propria, without vascular invasion.',
      cites: [E7],
    },
  ],
];

/** What follows the resection of a squamous cancer by the Korean guideline. */
export const KR_2020 = classRule<KoreanClass>({
  kind: 'rule-set',
  id: 'kr-2020',
  version: 1,
  title: 'Further treatment after endoscopic resection of squamous oesophageal cancer, Korea 2020',
  population:
    'Superficial squamous cancer of the oesophagus after endoscopic resection. The statements ' +
    'of the guideline on stomach, colon and rectum are not part of this rule set.',
  cites: [E7],
  fields: SQUAMOUS_FIELDS,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: ['undetermined'],
  remarks: METASTASIS_BY_DEPTH,
});
