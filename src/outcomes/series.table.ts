import type { Organ } from '../contract/index.js';
import type { Citation } from '../kernel/index.js';
import { cite } from '../references/index.js';
import type { CusumAims } from '../statistics/index.js';
import type { CaseInOrder } from './counts.js';
import { COLORECTAL, type OfOrgans } from './organs.js';
import type { SeriesName } from './question.js';
import type { Threshold } from './series.js';

const LEVEL = cite('colorectalLevel2020', 'abstract: expert level, colorectal', 'published');
const EIO = cite('eio2024', 'abstract: 515 lesions of one untutored operator', 'published');

/** Risks of 10 % are common practice: the works that were read state none. */
const RISKS = { alpha: 0.1, beta: 0.1 } as const;

/** A curve; `organs`: of whose cases its aims speak. */
export interface SeriesRow extends OfOrgans {
  readonly title: string;
  /** Rates of failure; the acceptable one is also the target of the simple form. */
  readonly aims: CusumAims;
  /** Of the aims. */
  readonly cites: readonly Citation[];
  /** Of the level of these organs below which a case fails, whatever the aims; empty: none. */
  readonly levelCites: readonly Citation[];
  /** The outcome; a case of which it is not asked is neither on the curve nor missing. */
  readonly of: keyof CaseInOrder['words'];
  /** Whether a case failed; undefined: not told. */
  readonly hasFailed: (one: CaseInOrder) => boolean | undefined;
}

/** Speed of an expert, in cm2/h. */
const EXPERT_SPEED_CM2_PER_H = 9;

/** The published speed that a chart of speeds shows. */
export const EXPERT_SPEED = {
  speedCm2PerH: EXPERT_SPEED_CM2_PER_H,
  says: `expert level in the colorectum, ${EXPERT_SPEED_CM2_PER_H} cm2/h or more`,
  organs: COLORECTAL,
  cites: [LEVEL],
} as const;

/** A dissection that never began teaches nothing, and has no speed. */
export const hasBegun = ({ words }: CaseInOrder): boolean => words.enBloc !== 'not-applicable';

const isNo = (word: string): boolean | undefined =>
  word === 'yes' || word === 'no' ? word === 'no' : undefined;

/** The curves. Aims can be chosen otherwise with each question. */
export const SERIES: { readonly [Name in SeriesName]: SeriesRow } = {
  'cusum-en-bloc': {
    of: 'enBloc',
    organs: COLORECTAL,
    levelCites: [],
    title: 'En bloc resection',
    aims: { acceptable: 0.1, unacceptable: 0.2, ...RISKS },
    cites: [LEVEL, cite('endoscopyTraining', 'fig. 3: 10 and 20 %', 'published')],
    hasFailed: ({ words }) => isNo(words.enBloc),
  },
  'cusum-r0': {
    of: 'r0',
    levelCites: [],
    title: 'R0 resection',
    aims: { acceptable: 0.2, unacceptable: 0.4, ...RISKS },
    cites: [cite('esdPractice', '20 and 40 %: chosen, no source', 'practice')],
    hasFailed: ({ words }) => isNo(words.r0),
  },
  'cusum-speed': {
    of: 'enBloc',
    organs: COLORECTAL,
    levelCites: [LEVEL, EIO],
    title: `Speed of ${EXPERT_SPEED_CM2_PER_H} cm2/h or more`,
    aims: { acceptable: 0.2, unacceptable: 0.4, ...RISKS },
    cites: [cite('esdPractice', '20 and 40 %: chosen, no source', 'practice')],
    hasFailed: ({ speedCm2PerH }) =>
      speedCm2PerH === null ? undefined : speedCm2PerH < EXPERT_SPEED_CM2_PER_H,
  },
  'cusum-perforation': {
    of: 'intraproceduralPerforation',
    organs: COLORECTAL,
    levelCites: [],
    title: 'Perforation during the procedure',
    aims: { acceptable: 0.05, unacceptable: 0.15, ...RISKS },
    cites: [LEVEL, cite('gastrostomyTraining', '5 and 15 %', 'published')],
    hasFailed: ({ words }) => {
      const isFree = isNo(words.intraproceduralPerforation);
      return isFree === undefined ? undefined : !isFree;
    },
  },
};

/** Organs that have curves of their own beside published levels. */
export const CURVE_ORGANS: readonly (readonly Organ[])[] = [COLORECTAL, ['stomach']];

/** A published level of a learning curve, and the case at which it was reached there. */
export type ThresholdRow = Omit<Threshold, 'reachedAtCase' | 'isOfThese'>;

/**
 * Source: each row. The cases are those of one operator or unit and not a demand. That the 515
 * lesions of eio2024 are of several organs is derived: it tells the colon apart.
 */
export const THRESHOLDS: readonly ThresholdRow[] = [
  {
    of: 'enBlocRate',
    organs: COLORECTAL,
    atLeast: 0.9,
    says: 'en bloc 90 % or more; a gastric-trained operator from about 50 in the colorectum',
    publishedAtCase: 50,
    cites: [LEVEL, cite('jeonHh', 'en bloc above 90 %', 'published')],
  },
  {
    of: 'enBlocRate',
    atLeast: 0.819,
    says: 'en bloc 81.9 %, the mean of an untutored operator over several organs; its plateau came at 268',
    publishedAtCase: 268,
    cites: [EIO],
  },
  {
    of: 'r0Rate',
    atLeast: 0.711,
    says: 'R0 71.1 %, the mean of an untutored operator over several organs; its plateau came at 347',
    publishedAtCase: 347,
    cites: [EIO],
  },
  {
    of: 'medianSpeedCm2PerH',
    atLeast: EXPERT_SPEED_CM2_PER_H,
    says: '9 cm2/h or more; an untutored operator over several organs at 170',
    publishedAtCase: 170,
    cites: [EIO],
  },
  {
    of: 'medianSpeedCm2PerH',
    organs: ['colon'],
    atLeast: EXPERT_SPEED_CM2_PER_H,
    says: '9 cm2/h or more in the colon; an untutored operator at 185',
    publishedAtCase: 185,
    cites: [EIO],
  },
  {
    of: 'medianSpeedCm2PerH',
    atLeast: EXPERT_SPEED_CM2_PER_H,
    says: '9 cm2/h or more; at low volume, by prevalence, after 40; its organs are not noted',
    publishedAtCase: 40,
    cites: [cite('lowVolume2021', 'abstract', 'published')],
  },
  {
    of: 'medianSpeedCm2PerH',
    organs: ['stomach'],
    atLeast: 17.9,
    says: '17.9 cm2/h in the stomach; two operators after 166',
    publishedAtCase: 166,
    cites: [cite('gastricTwoOperators2025', 'abstract', 'published')],
  },
];
