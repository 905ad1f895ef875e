import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type Remark, type TableOf } from '../../rules/index.js';
import {
  CURABILITY_CONTRADICTIONS,
  CURABILITY_FIELDS,
  type CurabilityQuestion,
} from './question.js';
import { METASTASIS_BY_DEPTH, RECURRENCE_AFTER_HM1 } from './remarks.table.js';

export type EsgeClass =
  | 'no-rule'
  | 'incomplete'
  | 'very-low-risk'
  | 'low-risk'
  | 'local-risk'
  | 'high-risk';

type Question = Omit<CurabilityQuestion, 'undiffLengthMm' | 'undiffInSm'>;

const ABSTRACT = cite('esgeEsd2022', 'abstract and society page', 'published');
const QUOTED = cite('esgeEsd2022', 'sentence of the abstract, second source', 'recalled');
const BODY = cite('esgeEsd2022', 'body of the guideline, from memory', 'recalled');
const GAP = cite('esgeEsd2022', 'fills a gap between its classes', 'derived');
const CRITERIA_2015 = cite('esgeEsd2015', 'table of criteria, second source', 'recalled');
const BARRETT_2015 = cite('esgeEsd2015', 'Barrett criteria, second source', 'recalled');
const MAPS = cite('mapsIii2025', 'as transcribed in a public program', 'recalled');
const JAPAN_SM1 = cite(
  'jgesJes2020',
  'SM1 as in the abstract of Mini-invasive Surg 2021;5:36',
  'published',
);

const F = CURABILITY_FIELDS;

const fields: FieldsOf<Question> = {
  tumour: F.tumour,
  histology: F.histology,
  depth: F.depth,
  smDepthUm: F.smDepthUm,
  differentiation: F.differentiation,
  gastricType: F.gastricType,
  sizeMm: F.sizeMm,
  ulcer: F.ulcer,
  ly: F.ly,
  v: F.v,
  hm: F.hm,
  vm: F.vm,
  enBloc: F.enBloc,
  endoscopicallyComplete: F.endoscopicallyComplete,
  budding: F.budding,
};

const table: TableOf<Question, EsgeClass> = [
  [
    {
      row: 'no-rule',
      when: { tumour: { is: ['other'] } },
      class: 'no-rule',
      says: 'The classes were made for other tumours.',
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
      class: 'high-risk',
      reason: 'lvi',
      says: 'The tumour invades lymphatic vessels.',
      cites: [ABSTRACT],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'high-risk',
      reason: 'lvi',
      says: 'The tumour invades veins.',
      cites: [ABSTRACT],
    },
    {
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'high-risk',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [ABSTRACT],
    },
    {
      row: 'vertical-margin-not-assessable',
      when: { vm: { is: ['X'] } },
      class: 'high-risk',
      reason: 'vertical-margin-not-assessable',
      says: 'The vertical margin cannot be assessed and counts as not free.',
      cites: [GAP],
    },
    {
      row: 'muscle-invasion',
      when: { depth: { is: ['mp'] } },
      class: 'high-risk',
      reason: 'muscle-invasion',
      says: 'The tumour invades the muscle layer.',
      cites: [ABSTRACT],
    },
    {
      row: 'squamous-deeper-than-sm1',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['sm'] }, smDepthUm: { above: 200 } },
      class: 'high-risk',
      reason: 'deeper-than-sm1',
      says: 'Squamous cancer more than 200 um deep in the submucosa.',
      cites: [ABSTRACT, BODY, JAPAN_SM1],
    },
    {
      row: 'barrett-deeper-than-sm1',
      when: { tumour: { is: ['barrett'] }, depth: { is: ['sm'] }, smDepthUm: { above: 500 } },
      class: 'high-risk',
      reason: 'deeper-than-sm1',
      says: 'Barrett cancer more than 500 um deep in the submucosa.',
      cites: [ABSTRACT, BARRETT_2015],
    },
    {
      row: 'gastric-deeper-than-sm1',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['sm'] }, smDepthUm: { above: 500 } },
      class: 'high-risk',
      reason: 'deeper-than-sm1',
      says: 'Gastric cancer more than 500 um deep in the submucosa.',
      cites: [ABSTRACT, CRITERIA_2015, MAPS],
    },
    {
      row: 'colorectal-deeper-than-sm1',
      when: { tumour: { is: ['colorectal'] }, depth: { is: ['sm'] }, smDepthUm: { above: 1000 } },
      class: 'high-risk',
      reason: 'deeper-than-sm1',
      says: 'Colorectal cancer more than 1000 um deep in the submucosa.',
      cites: [ABSTRACT, BODY],
    },
    {
      row: 'poorly-differentiated',
      when: {
        tumour: { is: ['squamous', 'barrett', 'colorectal'] },
        differentiation: { is: ['poor', 'signet', 'mucinous'] },
      },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Poorly differentiated, signet-ring or mucinous.',
      cites: [ABSTRACT],
    },
    {
      row: 'gastric-undifferentiated-deep',
      when: {
        tumour: { is: ['gastric'] },
        gastricType: { is: ['undifferentiated'] },
        depth: { is: ['sm', 'mp'] },
      },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, and deeper than the mucosa.',
      cites: [ABSTRACT],
    },
    {
      row: 'gastric-undifferentiated-ulcerated',
      when: {
        tumour: { is: ['gastric'] },
        gastricType: { is: ['undifferentiated'] },
        ulcer: { is: ['UL1'] },
      },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, with an ulcer or ulcer scar.',
      cites: [ABSTRACT],
    },
    {
      row: 'gastric-undifferentiated-large',
      when: {
        tumour: { is: ['gastric'] },
        gastricType: { is: ['undifferentiated'] },
        sizeMm: { above: 20 },
      },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, and larger than 20 mm.',
      cites: [ABSTRACT, CRITERIA_2015],
    },
    {
      row: 'gastric-undifferentiated-small',
      when: {
        tumour: { is: ['gastric'] },
        gastricType: { is: ['undifferentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL0'] },
        sizeMm: { atMost: 20 },
      },
      class: 'high-risk',
      reason: 'undifferentiated-small',
      says: 'Of undifferentiated type; within the mucosa, without ulcer and at most 20 mm.',
      cites: [ABSTRACT, CRITERIA_2015],
    },
    {
      row: 'budding',
      when: {
        tumour: { is: ['colorectal'] },
        histology: { is: ['carcinoma'] },
        depth: { is: ['sm'] },
        budding: { is: [2, 3] },
      },
      class: 'high-risk',
      reason: 'budding',
      says: 'Tumour budding of grade 2 or 3 at the invasive front.',
      cites: [ABSTRACT, cite('esgeEsd2022', 'only of invasive cancer', 'derived')],
    },
    {
      row: 'piecemeal-with-sm',
      when: { depth: { is: ['sm'] }, enBloc: { is: [false] } },
      class: 'high-risk',
      reason: 'margin-or-piecemeal-with-sm',
      says: 'Invades the submucosa and was resected piecemeal.',
      cites: [GAP],
    },
    {
      row: 'horizontal-margin-with-sm',
      when: { depth: { is: ['sm'] }, hm: { is: ['1', 'X'] } },
      class: 'high-risk',
      reason: 'margin-or-piecemeal-with-sm',
      says: 'Invades the submucosa, and the horizontal margin is not free.',
      cites: [GAP],
    },
  ],
  [
    {
      row: 'squamous-m3-too-large',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['mm'] }, sizeMm: { above: 20 } },
      class: 'high-risk',
      reason: 'size-limit-exceeded',
      says:
        'Squamous, to the muscularis mucosae and larger than 20 mm. No vessel invasion was ' +
        'found.',
      cites: [GAP, QUOTED],
    },
    {
      row: 'squamous-sm1-too-large',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['sm'] }, sizeMm: { above: 20 } },
      class: 'high-risk',
      reason: 'size-limit-exceeded',
      says: 'Squamous, in the upper submucosa and larger than 20 mm. No vessel invasion was found.',
      cites: [GAP, QUOTED],
    },
    {
      row: 'gastric-sm1-too-large',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['sm'] }, sizeMm: { above: 30 } },
      class: 'high-risk',
      reason: 'size-limit-exceeded',
      says: 'Gastric, in the upper submucosa and larger than 30 mm. No vessel invasion was found.',
      cites: [GAP, CRITERIA_2015, MAPS],
    },
    {
      row: 'gastric-ulcerated-too-large',
      when: {
        tumour: { is: ['gastric'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL1'] },
        sizeMm: { above: 30 },
      },
      class: 'high-risk',
      reason: 'ulcerated-size-limit',
      says: 'Within the mucosa, with an ulcer or ulcer scar, and larger than 30 mm.',
      cites: [GAP, MAPS],
    },
    {
      row: 'gastric-ulcerated-sm1',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['sm'] }, ulcer: { is: ['UL1'] } },
      class: 'high-risk',
      reason: 'ulcerated-submucosal',
      says: 'In the upper submucosa, with an ulcer or ulcer scar; the cautious of two readings.',
      cites: [GAP, CRITERIA_2015],
    },
  ],
  [
    {
      row: 'piecemeal',
      when: { enBloc: { is: [false] } },
      class: 'local-risk',
      reason: 'piecemeal',
      says: 'Resected piecemeal; within the mucosa and without a criterion of high risk.',
      cites: [ABSTRACT],
    },
    {
      row: 'horizontal-margin',
      when: { hm: { is: ['1', 'X'] } },
      class: 'local-risk',
      reason: 'horizontal-margin',
      says:
        'The horizontal margin is not free; within the mucosa and without a criterion of high ' +
        'risk.',
      cites: [ABSTRACT],
    },
  ],
  [
    {
      row: 'squamous-intramucosal',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['ep', 'lpm'] } },
      class: 'very-low-risk',
      says:
        'En bloc with free margins, squamous, no deeper than the lamina propria, no vessel ' +
        'invasion.',
      cites: [ABSTRACT],
    },
    {
      row: 'glandular-intramucosal',
      when: { tumour: { is: ['barrett', 'colorectal'] }, depth: { is: ['m'] } },
      class: 'very-low-risk',
      says: 'En bloc with free margins, within the mucosa, no vessel invasion.',
      cites: [ABSTRACT],
    },
    {
      row: 'gastric-intramucosal',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['m'] }, ulcer: { is: ['UL0'] } },
      class: 'very-low-risk',
      says: 'En bloc with free margins, within the mucosa, no vessel invasion and no ulcer.',
      cites: [ABSTRACT],
    },
  ],
  [
    {
      row: 'squamous-m3',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['mm'] } },
      class: 'low-risk',
      says: 'En bloc with free margins, squamous, to the muscularis mucosae, at most 20 mm.',
      cites: [BODY],
    },
    {
      row: 'squamous-sm1',
      when: { tumour: { is: ['squamous'] }, depth: { is: ['sm'] } },
      class: 'low-risk',
      says:
        'En bloc with free margins, squamous, at most 200 um deep in the submucosa and 20 mm ' +
        'long.',
      cites: [QUOTED],
    },
    {
      row: 'barrett-sm1',
      when: { tumour: { is: ['barrett'] }, depth: { is: ['sm'] } },
      class: 'low-risk',
      says: 'En bloc with free margins, Barrett, at most 500 um deep in the submucosa, any size.',
      cites: [BODY, BARRETT_2015],
    },
    {
      row: 'gastric-ulcerated',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['m'] } },
      class: 'low-risk',
      reason: 'ulcerated',
      says:
        'En bloc with free margins, within the mucosa, at most 30 mm, with an ulcer or ulcer ' +
        'scar.',
      cites: [GAP, MAPS],
    },
    {
      row: 'gastric-sm1',
      when: { tumour: { is: ['gastric'] }, depth: { is: ['sm'] } },
      class: 'low-risk',
      says:
        'En bloc with free margins, at most 500 um deep in the submucosa and 30 mm long, no ' +
        'ulcer.',
      cites: [CRITERIA_2015, MAPS],
    },
    {
      row: 'colorectal-sm1',
      when: { tumour: { is: ['colorectal'] }, depth: { is: ['sm'] } },
      class: 'low-risk',
      says:
        'En bloc with free margins, at most 1000 um deep in the submucosa, of any size, no ' +
        'budding of grade 2 or 3.',
      cites: [BODY],
    },
  ],
];

const remarks: readonly Remark[] = [
  ...METASTASIS_BY_DEPTH,
  ...RECURRENCE_AFTER_HM1,
  {
    remark: 'undifferentiated-small-elsewhere',
    when: {
      tumour: { is: ['gastric'] },
      gastricType: { is: ['undifferentiated'] },
      depth: { is: ['m'] },
      ulcer: { is: ['UL0'] },
      sizeMm: { atMost: 20 },
    },
    beside: ['high-risk'],
    says:
      'Other works judge a small undifferentiated cancer of the mucosa without ulcer more ' +
      'mildly: the edition of 2015 named it among its expanded criteria, the European guideline ' +
      'of 2025 is said to call it low risk, and Japan calls it eCuraA.',
    cites: [
      CRITERIA_2015,
      MAPS,
      cite('jgesEsd2021', 'eCuraA, pattern ii, second source', 'recalled'),
    ],
  },
  {
    remark: 'ulcerated-submucosal-second-reading',
    when: {
      tumour: { is: ['gastric'] },
      gastricType: { is: ['differentiated'] },
      depth: { is: ['sm'] },
      smDepthUm: { atMost: 500 },
      ulcer: { is: ['UL1'] },
      sizeMm: { atMost: 30 },
    },
    beside: ['high-risk'],
    says:
      'Of an ulcer over cancer in the upper submucosa two readings exist: the criteria of 2015 ' +
      'ask for no ulcer, the sentence of 2022 is remembered without such a clause and would ' +
      'give low risk. Japan (eCuraB) and the European guideline of 2025 have none either.',
    cites: [CRITERIA_2015, BODY, MAPS],
  },
  {
    remark: 'barrett-size-2015',
    when: { tumour: { is: ['barrett'] }, depth: { is: ['sm'] }, sizeMm: { atLeast: 30 } },
    beside: ['low-risk'],
    says: 'The edition of 2015 limited this class to Barrett lesions below 30 mm.',
    cites: [BARRETT_2015],
  },
  {
    remark: 'ulcer-outside-stomach',
    when: { tumour: { is: ['squamous', 'barrett', 'colorectal'] }, ulcer: { is: ['UL1'] } },
    beside: ['very-low-risk'],
    says:
      'An ulcer was reported. The guideline asks for no ulceration in this class; here the ' +
      'ulcer is weighed in the stomach alone. The neighbouring class, low risk, is curative ' +
      'too.',
    cites: [ABSTRACT],
  },
];

/** Curability by the European guideline: oesophagus, stomach, colon and rectum. */
export const ESGE_ESD_2022 = classRule<EsgeClass>({
  kind: 'rule-set',
  id: 'esge-esd-2022',
  version: 1,
  title: 'Curability after endoscopic submucosal dissection, European guideline 2022',
  population:
    'Superficial squamous, Barrett, gastric and colorectal neoplasia after endoscopic ' +
    'resection. Not for the duodenum, neuroendocrine tumours or tumours of the wall.',
  cites: [ABSTRACT],
  fields,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: ['low-risk', 'high-risk'],
  remarks,
});
