import type { ConditionOn, ContradictionsOf, Field, FieldsOf } from '../../rules/index.js';

/** What is known of one lesion after its resection, as rule sets of curability ask for it. */
export interface CurabilityQuestion {
  readonly tumour: 'squamous' | 'barrett' | 'gastric' | 'colorectal' | 'other';
  readonly histology: 'low-grade-dysplasia' | 'high-grade-dysplasia' | 'carcinoma';
  readonly depth: 'ep' | 'lpm' | 'mm' | 'm' | 'sm' | 'mp';
  readonly smDepthUm: number;
  readonly differentiation: 'well' | 'moderate' | 'poor' | 'signet' | 'mucinous';
  readonly gastricType: 'differentiated' | 'undifferentiated';
  readonly undiffLengthMm: number;
  readonly undiffInSm: boolean;
  readonly sizeMm: number;
  readonly ulcer: 'UL0' | 'UL1';
  readonly ly: '0' | '1' | 'X';
  readonly v: '0' | '1' | 'X';
  readonly hm: '0' | '1' | 'X';
  readonly vm: '0' | '1' | 'X';
  readonly enBloc: boolean;
  readonly endoscopicallyComplete: boolean;
  readonly budding: 1 | 2 | 3 | 'X';
}

/** Layers of the wall by tumour, outermost last. */
export const DEPTHS = {
  squamous: ['ep', 'lpm', 'mm', 'sm', 'mp'],
  glandular: ['m', 'sm', 'mp'],
} as const satisfies Record<string, readonly CurabilityQuestion['depth'][]>;

/**
 * A dysplasia that is said to be no deeper than the mucosa. Its report states no vessel
 * invasion, differentiation, budding or submucosal depth: there, absent is not missing.
 */
const PURE_DYSPLASIA = {
  histology: { is: ['low-grade-dysplasia', 'high-grade-dysplasia'] },
  depth: { is: ['ep', 'lpm', 'mm', 'm'] },
} as const satisfies ConditionOn<CurabilityQuestion>;

/** Every field of every rule set; each set picks its own, in this order. */
export const CURABILITY_FIELDS: FieldsOf<CurabilityQuestion> = {
  tumour: {
    type: 'word',
    says: 'lineage of the tumour; `other` has no rule',
    words: ['squamous', 'barrett', 'gastric', 'colorectal', 'other'],
  },
  histology: {
    type: 'word',
    says: 'the most advanced part of the lesion',
    words: ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
  },
  depth: {
    type: 'word',
    says: 'deepest layer reached; squamous ep, lpm, mm are m1, m2, m3',
    words: ['ep', 'lpm', 'mm', 'm', 'sm', 'mp'],
    only: [
      { when: { tumour: { is: ['squamous'] } }, words: DEPTHS.squamous },
      {
        when: { tumour: { is: ['barrett', 'gastric', 'colorectal', 'other'] } },
        words: DEPTHS.glandular,
      },
    ],
  },
  smDepthUm: {
    type: 'number',
    says: 'submucosal invasion from the lower edge of the muscularis mucosae',
    unit: 'um',
    whole: true,
    from: 0,
    to: 50_000,
    askedWhen: [{ depth: { is: ['sm'] } }],
  },
  differentiation: {
    type: 'word',
    says: 'grade or type of the predominant part; not used for the stomach',
    words: ['well', 'moderate', 'poor', 'signet', 'mucinous'],
    askedWhen: [{ tumour: { is: ['squamous', 'barrett', 'colorectal'] } }],
    assumed: [{ when: PURE_DYSPLASIA, value: 'well' }],
  },
  gastricType: {
    type: 'word',
    says: 'predominant type of a tumour of the stomach',
    words: ['differentiated', 'undifferentiated'],
    askedWhen: [{ tumour: { is: ['gastric'] } }],
    assumed: [{ when: PURE_DYSPLASIA, value: 'differentiated' }],
  },
  undiffLengthMm: {
    type: 'number',
    says: 'undifferentiated part, lengths of several areas added up; absent: none reported',
    unit: 'mm',
    from: 0,
    to: 1000,
    assumed: [{ when: {}, value: 0 }],
  },
  undiffInSm: {
    type: 'flag',
    says: 'undifferentiated or mucinous part within the submucosal invasion; absent: none reported',
    assumed: [{ when: {}, value: false }],
  },
  sizeMm: {
    type: 'number',
    says: 'long axis of the tumour, not of the specimen, on the fixed specimen',
    unit: 'mm',
    from: 0.1,
    to: 1000,
    askedWhen: [{ tumour: { is: ['squamous', 'gastric'] } }],
  },
  ulcer: {
    type: 'word',
    says: 'UL1: ulcer or ulcer scar within a lesion of the stomach',
    words: ['UL0', 'UL1'],
    askedWhen: [{ tumour: { is: ['gastric'] } }],
  },
  ly: vesselInvasion('invasion of lymphatic vessels; X counts as not known'),
  v: vesselInvasion('invasion of veins; X counts as not known'),
  hm: margin('tumour at the horizontal margin; X counts as not free'),
  vm: margin('tumour at the vertical margin; X counts as not free'),
  enBloc: { type: 'flag', says: 'resected in one piece' },
  endoscopicallyComplete: { type: 'flag', says: 'nothing of the lesion was left to see' },
  budding: {
    type: 'word',
    says: 'grade of tumour budding; X counts as not known',
    words: [1, 2, 3, 'X'],
    unknown: ['X'],
    askedWhen: [
      { tumour: { is: ['colorectal'] }, histology: { is: ['carcinoma'] }, depth: { is: ['sm'] } },
    ],
  },
};

/** What no report can say at once. */
export const CURABILITY_CONTRADICTIONS: ContradictionsOf<CurabilityQuestion> = [
  {
    rule: 'vessel-invasion-in-dysplasia',
    field: 'ly',
    when: { ...PURE_DYSPLASIA, ly: { is: ['1'] } },
    message: 'A dysplasia within the mucosa does not invade lymphatic vessels.',
    expected: 'the histology carcinoma, or ly 0 or absent',
  },
  {
    rule: 'vessel-invasion-in-dysplasia',
    field: 'v',
    when: { ...PURE_DYSPLASIA, v: { is: ['1'] } },
    message: 'A dysplasia within the mucosa does not invade veins.',
    expected: 'the histology carcinoma, or v 0 or absent',
  },
  {
    rule: 'depth-outside-submucosa',
    field: 'smDepthUm',
    when: { depth: { is: ['ep', 'lpm', 'mm', 'm', 'mp'] }, smDepthUm: { above: 0 } },
    message: 'A depth within the submucosa is measured of a tumour that ends there.',
    expected: 'the depth sm, or smDepthUm absent',
  },
  {
    rule: 'undifferentiated-part-outside-submucosa',
    field: 'undiffInSm',
    when: { depth: { is: ['m'] }, undiffInSm: { is: [true] } },
    message: 'A tumour within the mucosa has no part within the submucosa.',
    expected: 'the depth sm or mp, or undiffInSm false or absent',
  },
];

type State = '0' | '1' | 'X';

function vesselInvasion(says: string): Field<State, ConditionOn<CurabilityQuestion>> {
  return {
    type: 'word',
    says,
    words: ['0', '1', 'X'],
    unknown: ['X'],
    assumed: [{ when: PURE_DYSPLASIA, value: '0' }],
  };
}

function margin(says: string): Field<State, ConditionOn<CurabilityQuestion>> {
  return { type: 'word', says, words: ['0', '1', 'X'] };
}
