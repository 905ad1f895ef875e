import { ESGE_ESD_2022 } from '../../../src/assessment/curability/esge-esd-2022.table.js';
import { JGES_JES_2020 } from '../../../src/assessment/curability/jges-jes-2020.table.js';
import { JGES_JGCA_2021 } from '../../../src/assessment/curability/jges-jgca-2021.table.js';
import { JSCCR_2019 } from '../../../src/assessment/curability/jsccr-2019.table.js';
import { KR_2020 } from '../../../src/assessment/curability/kr-2020.table.js';
import { MAPS_III_2025 } from '../../../src/assessment/curability/maps-iii-2025.table.js';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import type { ClassRule } from '../../../src/rules/index.js';
import {
  europe2022,
  europeStomach2025,
  japanColorectum2019,
  japanOesophagus2020,
  japanStomach2021,
  koreaOesophagus2020,
  type SecondWriting,
} from './second-writing.js';

type Tumour = CurabilityQuestion['tumour'];

/** Values of some fields; together they make up a space of questions. */
export type Axes = { readonly [F in keyof CurabilityQuestion]?: readonly CurabilityQuestion[F][] };

/** A rule set, its second writing and the values between which its answers can change. */
export interface Known {
  readonly rule: ClassRule;
  readonly writing: SecondWriting;
  /** Classes from the best to the worst. */
  readonly order: readonly string[];
  readonly spaces: readonly Axes[];
}

/** A question without any risk; fields that a set does not ask for stay like this. */
export const HARMLESS: CurabilityQuestion = {
  tumour: 'gastric',
  histology: 'carcinoma',
  depth: 'm',
  smDepthUm: 0,
  differentiation: 'well',
  gastricType: 'differentiated',
  undiffLengthMm: 0,
  undiffInSm: false,
  sizeMm: 10,
  ulcer: 'UL0',
  ly: '0',
  v: '0',
  hm: '0',
  vm: '0',
  enBloc: true,
  endoscopicallyComplete: true,
  budding: 1,
};

const COMMON: Axes = {
  ly: ['0', '1'],
  v: ['0', '1'],
  hm: ['0', '1', 'X'],
  vm: ['0', '1', 'X'],
  enBloc: [true, false],
  endoscopicallyComplete: [true, false],
};
const HISTOLOGIES = ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'] as const;
const GRADES = ['well', 'moderate', 'poor', 'signet', 'mucinous'] as const;

const gastric = (depthsUm: readonly number[]): Axes => ({
  ...COMMON,
  tumour: ['gastric'],
  histology: ['high-grade-dysplasia', 'carcinoma'],
  depth: ['m', 'sm', 'mp'],
  smDepthUm: depthsUm,
  gastricType: ['differentiated', 'undifferentiated'],
  sizeMm: [20, 21, 30, 31],
  ulcer: ['UL0', 'UL1'],
});
const SQUAMOUS: Axes = {
  ...COMMON,
  tumour: ['squamous'],
  histology: HISTOLOGIES,
  depth: ['ep', 'lpm', 'mm', 'sm', 'mp'],
};
const OTHERS: Axes = {
  tumour: ['squamous', 'barrett', 'gastric', 'colorectal', 'other'],
  histology: HISTOLOGIES,
  ...COMMON,
};
const without = (...tumours: readonly Tumour[]): Axes => ({
  ...OTHERS,
  tumour: (OTHERS.tumour ?? []).filter((tumour) => !tumours.includes(tumour)),
});

/** Fields that a tumour of another organ does not use, with values that would matter elsewhere. */
const STRAY: Axes = {
  differentiation: ['well', 'poor'],
  gastricType: ['differentiated', 'undifferentiated'],
  ulcer: ['UL0', 'UL1'],
  sizeMm: [10, 21, 31],
  budding: [1, 2],
};

export const EUROPE_2022: Known = {
  rule: ESGE_ESD_2022,
  writing: europe2022,
  order: ['very-low-risk', 'low-risk', 'local-risk', 'high-risk'],
  spaces: [
    gastric([0, 500, 501]),
    { ...SQUAMOUS, smDepthUm: [0, 200, 201], differentiation: GRADES, sizeMm: [20, 21] },
    {
      ...COMMON,
      tumour: ['barrett'],
      histology: HISTOLOGIES,
      depth: ['m', 'sm', 'mp'],
      smDepthUm: [0, 500, 501],
      differentiation: GRADES,
      sizeMm: [10, 90],
    },
    {
      ...COMMON,
      tumour: ['colorectal'],
      histology: HISTOLOGIES,
      depth: ['m', 'sm', 'mp'],
      smDepthUm: [0, 1000, 1001],
      differentiation: GRADES,
      budding: [1, 2, 3],
      sizeMm: [90],
    },
    { ...STRAY, tumour: ['squamous'], depth: ['lpm', 'mm', 'sm'] },
    { ...STRAY, tumour: ['barrett', 'gastric', 'colorectal'], depth: ['m', 'sm'] },
    without('squamous', 'barrett', 'gastric', 'colorectal'),
  ],
};

export const JAPAN_STOMACH: Known = {
  rule: JGES_JGCA_2021,
  writing: japanStomach2021,
  order: ['eCuraA', 'eCuraB', 'eCuraC-1', 'eCuraC-2'],
  spaces: [
    {
      ...gastric([499, 500]),
      undiffLengthMm: [0, 20, 21],
      undiffInSm: [false, true],
    },
    without('gastric'),
  ],
};

export const JAPAN_COLORECTUM: Known = {
  rule: JSCCR_2019,
  writing: japanColorectum2019,
  order: ['follow-up', 'consider-surgery', 'surgery'],
  spaces: [
    {
      ...COMMON,
      tumour: ['colorectal'],
      histology: HISTOLOGIES,
      depth: ['m', 'sm', 'mp'],
      smDepthUm: [0, 999, 1000],
      differentiation: GRADES,
      budding: [1, 2, 3],
    },
    { ...without('colorectal'), depth: ['sm'] },
    { ...without('colorectal'), depth: ['mp'] },
  ],
};

export const JAPAN_OESOPHAGUS: Known = {
  rule: JGES_JES_2020,
  writing: japanOesophagus2020,
  order: ['curative', 'undetermined', 'additional-treatment'],
  spaces: [SQUAMOUS, without('squamous')],
};

export const KOREA_OESOPHAGUS: Known = {
  rule: KR_2020,
  writing: koreaOesophagus2020,
  order: ['no-further-treatment', 'close-follow-up', 'undetermined', 'additional-treatment'],
  spaces: [SQUAMOUS, without('squamous')],
};

const EUROPE_STOMACH_2025: Known = {
  rule: MAPS_III_2025,
  writing: europeStomach2025,
  order: ['very-low-risk', 'low-risk', 'local-risk', 'high-risk'],
  spaces: [gastric([0, 500, 501]), without('gastric')],
};

export const ALL_SETS: readonly Known[] = [
  EUROPE_2022,
  JAPAN_STOMACH,
  JAPAN_COLORECTUM,
  JAPAN_OESOPHAGUS,
  KOREA_OESOPHAGUS,
  EUROPE_STOMACH_2025,
];

/** Every question of a space; fields without an axis are harmless. */
function* questionsOf(axes: Axes): Generator<CurabilityQuestion, void> {
  yield* spread(HARMLESS, Object.entries(axes));
}

function* spread(
  base: CurabilityQuestion,
  axes: readonly (readonly [string, readonly unknown[]])[],
): Generator<CurabilityQuestion, void> {
  const [first, ...rest] = axes;
  if (first === undefined) return yield base;
  const [field, values] = first;
  // A depth within the submucosa is one question where the tumour does not end there.
  const each = field === 'smDepthUm' && base.depth !== 'sm' ? [0] : values;
  for (const value of each) yield* spread({ ...base, [field]: value }, rest);
}

export function* allQuestions({ spaces }: Known): Generator<CurabilityQuestion, void> {
  for (const space of spaces) yield* questionsOf(space);
}
