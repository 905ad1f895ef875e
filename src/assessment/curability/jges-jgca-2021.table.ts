import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type Remark, type TableOf } from '../../rules/index.js';
import {
  CURABILITY_CONTRADICTIONS,
  type CurabilityQuestion,
  CURABILITY_FIELDS as F,
} from './question.js';

export type JgcaClass = 'no-rule' | 'incomplete' | 'eCuraA' | 'eCuraB' | 'eCuraC-1' | 'eCuraC-2';

type Question = Omit<CurabilityQuestion, 'differentiation' | 'budding'>;

const FIGURES = cite('jgesEsd2021', 'figures 2 and 3, as transcribed in a program', 'recalled');
const LENGTH = cite('jgesEsd2021', 'figure 6, as transcribed in a program', 'recalled');
const TEACHING = cite('jgesEsd2021', 'teaching page and program, second sources', 'recalled');
const MUCINOUS = cite('jgca2021', 'chapter II-B, page of the society', 'published');
const NOT_FREE = cite('jgesEsd2021', 'a margin that cannot be assessed is not free', 'derived');
const GAP = cite('jgesEsd2021', 'outside the table', 'derived');

const fields: FieldsOf<Question> = {
  tumour: F.tumour,
  histology: F.histology,
  depth: F.depth,
  smDepthUm: F.smDepthUm,
  gastricType: F.gastricType,
  undiffLengthMm: F.undiffLengthMm,
  undiffInSm: F.undiffInSm,
  sizeMm: F.sizeMm,
  ulcer: F.ulcer,
  ly: F.ly,
  v: F.v,
  hm: F.hm,
  vm: F.vm,
  enBloc: F.enBloc,
  endoscopicallyComplete: F.endoscopicallyComplete,
};

const table: TableOf<Question, JgcaClass> = [
  [
    {
      row: 'no-rule',
      when: { tumour: { is: ['squamous', 'barrett', 'colorectal', 'other'] } },
      class: 'no-rule',
      says: 'The classes were made for cancer of the stomach.',
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
      row: 'lymphatic-invasion',
      when: { ly: { is: ['1'] } },
      class: 'eCuraC-2',
      reason: 'lymphatic-invasion',
      says: 'The tumour invades lymphatic vessels.',
      cites: [TEACHING],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'eCuraC-2',
      reason: 'venous-invasion',
      says: 'The tumour invades veins.',
      cites: [TEACHING],
    },
    {
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'eCuraC-2',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [TEACHING],
    },
    {
      row: 'vertical-margin-not-assessable',
      when: { vm: { is: ['X'] } },
      class: 'eCuraC-2',
      reason: 'vertical-margin-not-assessable',
      says: 'The vertical margin cannot be assessed and counts as not free.',
      cites: [NOT_FREE],
    },
    {
      row: 'muscle-invasion',
      when: { depth: { is: ['mp'] } },
      class: 'eCuraC-2',
      reason: 'muscle-invasion',
      says: 'The tumour invades the muscle layer.',
      cites: [TEACHING],
    },
    {
      row: 'deep-submucosa',
      when: { depth: { is: ['sm'] }, smDepthUm: { atLeast: 500 } },
      class: 'eCuraC-2',
      reason: 'deeper-than-sm1',
      says: '500 um deep in the submucosa or more; SM1 ends below 500.',
      cites: [TEACHING],
    },
    {
      row: 'undifferentiated-in-submucosa',
      when: { gastricType: { is: ['undifferentiated'] }, depth: { is: ['sm'] } },
      class: 'eCuraC-2',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, in the submucosa.',
      cites: [FIGURES],
    },
    {
      row: 'undifferentiated-ulcerated',
      when: { gastricType: { is: ['undifferentiated'] }, ulcer: { is: ['UL1'] } },
      class: 'eCuraC-2',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, with an ulcer or ulcer scar.',
      cites: [FIGURES],
    },
    {
      row: 'undifferentiated-large',
      when: { gastricType: { is: ['undifferentiated'] }, sizeMm: { above: 20 } },
      class: 'eCuraC-2',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, and larger than 20 mm.',
      cites: [FIGURES],
    },
    {
      row: 'undifferentiated-piecemeal',
      when: { gastricType: { is: ['undifferentiated'] }, enBloc: { is: [false] } },
      class: 'eCuraC-2',
      reason: 'undifferentiated-not-r0',
      says: 'Of undifferentiated type and resected piecemeal; C-1 is for the differentiated type.',
      cites: [TEACHING],
    },
    {
      row: 'undifferentiated-horizontal-margin',
      when: { gastricType: { is: ['undifferentiated'] }, hm: { is: ['1', 'X'] } },
      class: 'eCuraC-2',
      reason: 'undifferentiated-not-r0',
      says:
        'Of undifferentiated type, horizontal margin not free; C-1 is for the differentiated ' +
        'type.',
      cites: [TEACHING],
    },
    {
      row: 'ulcerated-large',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL1'] },
        sizeMm: { above: 30 },
      },
      class: 'eCuraC-2',
      reason: 'ulcerated-size-limit',
      says: 'Within the mucosa, with an ulcer or ulcer scar, and larger than 30 mm.',
      cites: [FIGURES],
    },
    {
      row: 'submucosal-large',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['sm'] },
        sizeMm: { above: 30 },
      },
      class: 'eCuraC-2',
      reason: 'size-limit-exceeded',
      says: 'In the submucosa and larger than 30 mm.',
      cites: [TEACHING],
    },
    {
      row: 'long-undifferentiated-part',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        undiffLengthMm: { above: 20 },
      },
      class: 'eCuraC-2',
      reason: 'undifferentiated-part',
      says: 'Within the mucosa, with undifferentiated parts of more than 20 mm in all.',
      cites: [LENGTH],
    },
    {
      row: 'undifferentiated-part-in-submucosa',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['sm'] },
        undiffInSm: { is: [true] },
      },
      class: 'eCuraC-2',
      reason: 'undifferentiated-part',
      says: 'Undifferentiated or mucinous where it invades the submucosa.',
      cites: [LENGTH, MUCINOUS],
    },
  ],
  [
    {
      row: 'piecemeal',
      when: { enBloc: { is: [false] } },
      class: 'eCuraC-1',
      reason: 'piecemeal',
      says: 'Would be curative, but was resected piecemeal.',
      cites: [TEACHING],
    },
    {
      row: 'horizontal-margin',
      when: { hm: { is: ['1', 'X'] } },
      class: 'eCuraC-1',
      reason: 'horizontal-margin',
      says: 'Would be curative, but the horizontal margin is not free.',
      cites: [TEACHING],
    },
  ],
  [
    {
      row: 'differentiated',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL0'] },
      },
      class: 'eCuraA',
      says:
        'Differentiated, within the mucosa, no ulcer, of any size; en bloc, margins and vessels ' +
        'free.',
      cites: [FIGURES],
    },
    {
      row: 'differentiated-ulcerated',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL1'] },
      },
      class: 'eCuraA',
      says:
        'Differentiated, within the mucosa, with an ulcer or ulcer scar, at most 30 mm; en ' +
        'bloc, margins and vessels free.',
      cites: [FIGURES],
    },
    {
      row: 'undifferentiated-small',
      when: { gastricType: { is: ['undifferentiated'] }, depth: { is: ['m'] } },
      class: 'eCuraA',
      says:
        'Undifferentiated, within the mucosa, no ulcer, at most 20 mm; en bloc, margins and ' +
        'vessels free.',
      cites: [FIGURES],
    },
  ],
  [
    {
      row: 'submucosal',
      when: { gastricType: { is: ['differentiated'] }, depth: { is: ['sm'] } },
      class: 'eCuraB',
      says:
        'Differentiated, less than 500 um deep in the submucosa, at most 30 mm; en bloc, ' +
        'margins and vessels free.',
      cites: [TEACHING],
    },
  ],
];

const SURGERY_ADVISED =
  'Further surgery is advised in principle if the lesion with its residue is larger than 30 mm, ' +
  'or if the part in the submucosa is piecemeal or at the margin. ' +
  'This is advice on treatment; the class stays.';

const remarks: readonly Remark[] = [
  {
    remark: 'surgery-advised',
    when: { depth: { is: ['m'] }, ulcer: { is: ['UL1'] } },
    beside: ['eCuraC-1'],
    says: SURGERY_ADVISED,
    cites: [FIGURES],
  },
  {
    remark: 'surgery-advised',
    when: { depth: { is: ['sm'] } },
    beside: ['eCuraC-1'],
    says: SURGERY_ADVISED,
    cites: [FIGURES],
  },
  {
    remark: 'more-local-recurrence',
    when: { sizeMm: { atLeast: 20 } },
    beside: ['eCuraC-1'],
    says:
      'More local recurrence is reported of lesions of 20 mm or more, and where 6 mm or more of ' +
      'the horizontal margin are involved.',
    cites: [cite('jgesEsd2021', 'as transcribed in a program', 'recalled')],
  },
  {
    remark: 'undifferentiated-limit-of-mucosa',
    when: { depth: { is: ['sm'] }, undiffLengthMm: { above: 20 } },
    beside: ['eCuraB', 'eCuraC-1'],
    says:
      'Undifferentiated parts of more than 20 mm make a lesion of the mucosa eCuraC-2. For one ' +
      'in the submucosa the transcribed figure asks only for the part that invades it.',
    cites: [LENGTH, cite('jgesEsd2021', 'the two limits beside each other', 'derived')],
  },
  {
    remark: 'seventh-edition',
    when: {},
    beside: ['eCuraB'],
    says:
      'The 7th edition (March 2025) is said to call this lesion eCuraA and to know the classes ' +
      'A, C-1 and C-2 alone. Its text was not read; this answer is by the 6th edition. Both ' +
      'classes are curative; the follow-up differs.',
    cites: [cite('jgca2025', 'as transcribed in a public program, no second source', 'recalled')],
  },
];

/** Curability by the Japanese guidelines: stomach. */
export const JGES_JGCA_2021 = classRule<JgcaClass>({
  kind: 'rule-set',
  id: 'jges-jgca-2021',
  version: 1,
  title: 'Endoscopic curability (eCura), Japanese guidelines 2021, 6th edition',
  population: 'Early gastric cancer after endoscopic resection. Not for other organs.',
  cites: [cite('jgesEsd2021', 'second edition', 'recalled'), MUCINOUS],
  fields,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: [],
  remarks,
});
