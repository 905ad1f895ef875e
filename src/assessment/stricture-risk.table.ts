import type { Organ } from '../contract/index.js';
import { cite } from '../references/index.js';
import {
  type ClassRule,
  classRule,
  type FieldsOf,
  type Remark,
  type TableOf,
} from '../rules/index.js';

export type StrictureFlag = 'low' | 'moderate' | 'high' | 'full';

const COMPLEMENT = [cite('kim2014', 'abstract, by complement', 'derived')];

/** The mucosal defect, not the lesion. */
type Oesophagus = {
  readonly defectCircumferencePercent: number;
  readonly defectLengthMm: number;
  readonly upperOesophagus: boolean;
};

const SHARE = {
  type: 'number',
  unit: '%',
  from: 0,
  to: 100,
  says: 'share of the circumference that the mucosal defect takes, not the lesion',
} as const;

const LENGTH = {
  type: 'number',
  unit: 'mm',
  from: 0,
  to: 1000,
  says: 'length of the mucosal defect',
} as const;

const OESOPHAGUS_FIELDS = {
  defectCircumferencePercent: SHARE,
  defectLengthMm: { ...LENGTH, askedWhen: [] },
  upperOesophagus: {
    type: 'flag',
    says: 'defect in the upper or cervical oesophagus',
    askedWhen: [],
  },
} as const satisfies FieldsOf<Oesophagus>;

const OESOPHAGUS: TableOf<Oesophagus, StrictureFlag> = [
  [
    {
      row: 'whole-circumference',
      when: { defectCircumferencePercent: { atLeast: 100 } },
      class: 'full',
      says: 'whole circumference',
      cites: [cite('esdPractice', 'whole circumference', 'recalled')],
    },
  ],
  [
    {
      row: 'above-three-quarters',
      when: { defectCircumferencePercent: { above: 75 } },
      class: 'high',
      says: 'more than three quarters of the circumference',
      cites: [cite('kim2014', 'abstract: more than 3/4 of the circumference', 'published')],
    },
  ],
  [
    {
      row: 'above-one-half',
      when: { defectCircumferencePercent: { above: 50 } },
      class: 'moderate',
      says: 'more than one half, up to three quarters of the circumference',
      cites: [cite('esdPractice', 'half to three quarters', 'recalled')],
    },
  ],
  [
    {
      row: 'up-to-one-half',
      when: {},
      class: 'low',
      says: 'up to one half of the circumference',
      cites: COMPLEMENT,
    },
  ],
];

export type StrictureFactorName = 'long-defect' | 'upper-oesophagus' | 'three-quarters-exactly';

/** Published factors that are shown beside the flag and do not change it. */
export const STRICTURE_FACTORS: readonly (Remark & { readonly remark: StrictureFactorName })[] = [
  {
    remark: 'long-defect',
    when: { defectLengthMm: { above: 30 } },
    says: 'The defect is longer than 30 mm.',
    cites: [cite('kim2014', 'abstract: longitudinal defect > 30 mm', 'published')],
  },
  {
    remark: 'upper-oesophagus',
    when: { upperOesophagus: { is: [true] } },
    says: 'The defect lies in the upper oesophagus.',
    cites: [cite('kim2014', 'abstract: upper oesophagus', 'published')],
  },
  {
    remark: 'three-quarters-exactly',
    when: { defectCircumferencePercent: { is: [75] } },
    says: 'Exactly three quarters: another guideline counts 3/4 or more as wide.',
    cites: [cite('jes2022', '3/4 or more counts as wide there', 'recalled')],
  },
];

type Stomach = Omit<Oesophagus, 'upperOesophagus'>;

const STOMACH_FIELDS = {
  defectCircumferencePercent: SHARE,
  defectLengthMm: {
    ...LENGTH,
    askedWhen: [{ defectCircumferencePercent: { above: 75 } }],
  },
} as const satisfies FieldsOf<Stomach>;

const STOMACH: TableOf<Stomach, StrictureFlag> = [
  [
    {
      row: 'wide-and-long',
      when: { defectCircumferencePercent: { above: 75 }, defectLengthMm: { above: 50 } },
      class: 'high',
      says: 'more than three quarters of the circumference and longer than 50 mm',
      cites: [cite('kim2014', 'abstract: stomach, > 3/4 and longer than 50 mm', 'published')],
    },
  ],
  [
    {
      row: 'not-wide-or-not-long',
      when: {},
      class: 'low',
      says: 'three quarters or less, or 50 mm or shorter',
      cites: COMPLEMENT,
    },
  ],
];

/** An organ without a rule has no published threshold. */
export const STRICTURE_BANDS = {
  oesophagus: classRule({
    kind: 'classification',
    id: 'stricture-flag',
    version: 1,
    title: 'Risk of a stricture after dissection in the oesophagus',
    population:
      'Defects of dissection in the oesophagus, whatever is given to prevent a stricture. A flag ' +
      'by published risk factors; no point score is in general use.',
    cites: [cite('kim2014', 'abstract', 'published')],
    fields: OESOPHAGUS_FIELDS,
    contradictions: [],
    table: OESOPHAGUS,
    reasonsShown: [],
    remarks: STRICTURE_FACTORS,
  }),
  stomach: classRule({
    kind: 'classification',
    id: 'stricture-flag-stomach',
    version: 1,
    title: 'Risk of a stricture after dissection in the stomach',
    population: 'Defects of dissection in the stomach. A flag by published risk factors.',
    cites: [cite('kim2014', 'abstract', 'published')],
    fields: STOMACH_FIELDS,
    contradictions: [],
    table: STOMACH,
    reasonsShown: [],
    remarks: [],
  }),
} as const satisfies Partial<Record<Organ, ClassRule<StrictureFlag>>>;
