import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type Remark, type TableOf } from '../../rules/index.js';
import {
  CURABILITY_CONTRADICTIONS,
  type CurabilityQuestion,
  CURABILITY_FIELDS as F,
} from './question.js';
import { RECURRENCE_AFTER_HM1 } from './remarks.table.js';

export type JsccrClass = 'no-rule' | 'incomplete' | 'surgery' | 'consider-surgery' | 'follow-up';

type Question = Omit<CurabilityQuestion, 'gastricType' | 'undiffLengthMm' | 'undiffInSm' | 'ulcer'>;

const FACTORS = cite(
  'jsccr2019',
  'four factors, read in the edition of 2009; that 2019 keeps them, from memory',
  'recalled',
);
const MARGIN = cite(
  'jsccr2019',
  'vertical margin, read in the edition of 2009; that 2019 keeps it, from memory',
  'recalled',
);
const COMPLEMENT = cite('jsccr2019', 'none of the factors, by complement', 'recalled');
const NOT_FREE = cite('jsccr2019', 'a margin that cannot be assessed is not free', 'derived');
const GAP = cite('jsccr2019', 'outside the table', 'derived');

const fields: FieldsOf<Question> = {
  tumour: F.tumour,
  histology: F.histology,
  depth: F.depth,
  smDepthUm: F.smDepthUm,
  differentiation: F.differentiation,
  sizeMm: { ...F.sizeMm, askedWhen: [] },
  ly: F.ly,
  v: F.v,
  hm: F.hm,
  vm: F.vm,
  enBloc: F.enBloc,
  endoscopicallyComplete: F.endoscopicallyComplete,
  budding: { ...F.budding, askedWhen: [{}] },
};

const table: TableOf<Question, JsccrClass> = [
  [
    {
      row: 'not-colorectal',
      when: { tumour: { is: ['squamous', 'barrett', 'gastric', 'other'] } },
      class: 'no-rule',
      says: 'The classes were made for colorectal cancer.',
      cites: [GAP],
    },
    {
      row: 'not-pt1',
      when: { depth: { is: ['m', 'mp'] } },
      class: 'no-rule',
      says: 'The classes were made for cancer that ends in the submucosa (pT1).',
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
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'surgery',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [MARGIN],
    },
    {
      row: 'vertical-margin-not-assessable',
      when: { vm: { is: ['X'] } },
      class: 'surgery',
      reason: 'vertical-margin-not-assessable',
      says: 'The vertical margin cannot be assessed and counts as not free.',
      cites: [NOT_FREE],
    },
  ],
  [
    {
      row: 'deep-submucosa',
      when: { smDepthUm: { atLeast: 1000 } },
      class: 'consider-surgery',
      reason: 'deep-submucosa',
      says: '1000 um deep in the submucosa or more.',
      cites: [FACTORS],
    },
    {
      row: 'lymphatic-invasion',
      when: { ly: { is: ['1'] } },
      class: 'consider-surgery',
      reason: 'vascular-invasion',
      says: 'The tumour invades lymphatic vessels.',
      cites: [FACTORS],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'consider-surgery',
      reason: 'vascular-invasion',
      says: 'The tumour invades veins.',
      cites: [FACTORS],
    },
    {
      row: 'poorly-differentiated',
      when: { differentiation: { is: ['poor', 'signet', 'mucinous'] } },
      class: 'consider-surgery',
      reason: 'poorly-differentiated',
      says: 'Poorly differentiated, signet-ring or mucinous.',
      cites: [FACTORS],
    },
    {
      row: 'budding',
      when: { budding: { is: [2, 3] } },
      class: 'consider-surgery',
      reason: 'budding',
      says: 'Tumour budding of grade 2 or 3 at the deepest part.',
      cites: [FACTORS],
    },
  ],
  [
    {
      row: 'no-factor',
      when: {},
      class: 'follow-up',
      says: 'The vertical margin is free and none of the risk factors was found.',
      cites: [COMPLEMENT],
    },
  ],
];

const remarks: readonly Remark[] = [
  {
    remark: 'horizontal-margin-second-reading',
    when: { depth: { is: ['sm'] }, hm: { is: ['1', 'X'] } },
    beside: ['surgery', 'consider-surgery', 'follow-up'],
    says:
      'The sentence of the guideline names the vertical margin alone, so that an involved ' +
      'horizontal margin is a matter of local recurrence. The guideline on colorectal ' +
      'dissection is said to ask for a free horizontal margin and to consider additional ' +
      'resection otherwise.',
    cites: [
      cite('jsccr2019', 'vertical margin only', 'recalled'),
      cite('jgesColorectal', 'as transcribed in a public program', 'recalled'),
    ],
  },
  ...RECURRENCE_AFTER_HM1,
];

/** What follows a resected pT1 cancer by the Japanese guideline: colon and rectum. */
export const JSCCR_2019 = classRule<JsccrClass>({
  kind: 'rule-set',
  id: 'jsccr-2019',
  version: 1,
  title: 'Further treatment after endoscopic resection of pT1 colorectal cancer, Japan 2019',
  population:
    'Colorectal cancer invading the submucosa (pT1) after endoscopic resection. Not for cancer ' +
    'within the mucosa. An edition of 2024 exists; its text was not read.',
  cites: [FACTORS],
  fields,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: [],
  remarks,
});
