import { z } from 'zod';
import { type Checked, failed, passed } from '../kernel/index.js';
import { CASES, casesOf, type OutcomeCasesAsked, periodProblems } from './outcome-query.js';
import {
  CUSUM_SERIES,
  OUTCOME_DIMENSIONS,
  OUTCOME_INDICATORS,
  OUTCOME_SERIES,
} from './outcome-words.table.js';
import { readQuery, wholeText } from './read-query.js';
import { oneOf } from './scalars.js';

/** Aims of a curve that are not those of its table, shares. */
export interface AimsAsked {
  readonly acceptable?: number;
  readonly unacceptable?: number;
  readonly alpha?: number;
  readonly beta?: number;
}

type Indicator = (typeof OUTCOME_INDICATORS)[number];
type Cusum = (typeof CUSUM_SERIES)[number];

export interface CusumAsked extends OutcomeCasesAsked {
  readonly series: Cusum;
  readonly aims: AimsAsked;
}

export interface FunnelAsked extends OutcomeCasesAsked {
  readonly series: 'funnel';
  readonly indicator: Indicator;
  readonly by: (typeof OUTCOME_DIMENSIONS)[number];
  readonly target?: number;
}

export interface LearningAsked extends OutcomeCasesAsked {
  readonly series: 'learning-curve';
  readonly blockSize: number;
}

export interface SpeedAsked extends OutcomeCasesAsked {
  readonly series: 'speed';
}

/** A curve that is asked for. */
export type SeriesAsked = CusumAsked | FunnelAsked | LearningAsked | SpeedAsked;

/** Cases of a block of a learning curve. Common practice, no source. */
const DEFAULT_BLOCK = 20;

const share = z
  .string()
  .regex(/^0\.\d{1,6}$/)
  .transform(Number)
  .refine((value) => value > 0)
  .meta({ title: 'a share above 0 and below 1, such as 0.15' });

export const AIMS = {
  acceptable: share.optional(),
  unacceptable: share.optional(),
  alpha: share.optional(),
  beta: share.optional(),
};
export const FUNNEL = {
  indicator: oneOf(OUTCOME_INDICATORS),
  by: oneOf(OUTCOME_DIMENSIONS).optional(),
  target: share.optional(),
};

/** A curve of learning is that of one operator. */
export const LEARNING = {
  operator: CASES.operator.unwrap(),
  blockSize: wholeText(5, 200).optional(),
};

const someSeries = z.strictObject({ ...CASES, series: oneOf(OUTCOME_SERIES) });
const cusumSchema = z.strictObject({ ...CASES, series: oneOf(CUSUM_SERIES), ...AIMS });
const funnelSchema = z.strictObject({ ...CASES, series: oneOf(['funnel']), ...FUNNEL });
const speedSchema = z.strictObject({ ...CASES, series: oneOf(['speed']) });
const learningSchema = z.strictObject({
  ...{ ...CASES, series: oneOf(['learning-curve']), ...LEARNING },
});

/** @returns the curve that is asked for, or every problem at once */
export function parseSeriesQuery(search: string): Checked<SeriesAsked> {
  const named = new URLSearchParams(search).get('series');
  if (named === 'funnel') {
    const read = readQuery(funnelSchema, search, periodProblems);
    return read.ok ? passed(toFunnel(read.value)) : read;
  }
  if (named === 'speed') {
    const read = readQuery(speedSchema, search, periodProblems);
    return read.ok ? passed({ ...casesOf(read.value), series: named }) : read;
  }
  if (named === 'learning-curve') {
    const read = readQuery(learningSchema, search, periodProblems);
    return read.ok ? passed(toLearning(read.value)) : read;
  }
  if (CUSUM_SERIES.some((each) => each === named)) {
    const read = readQuery(cusumSchema, search, periodProblems);
    return read.ok ? passed(toCusum(read.value)) : read;
  }
  const read = readQuery(someSeries, search, periodProblems);
  return read.ok ? failed([]) : read;
}

export function toCusum(read: z.infer<typeof cusumSchema>): CusumAsked {
  const { series, acceptable, unacceptable, alpha, beta } = read;
  return {
    ...casesOf(read),
    series,
    aims: {
      ...(acceptable === undefined ? {} : { acceptable }),
      ...(unacceptable === undefined ? {} : { unacceptable }),
      ...(alpha === undefined ? {} : { alpha }),
      ...(beta === undefined ? {} : { beta }),
    },
  };
}

export function toLearning(read: Omit<z.infer<typeof learningSchema>, 'series'>): LearningAsked {
  const { blockSize = DEFAULT_BLOCK } = read;
  return { ...casesOf(read), series: 'learning-curve', blockSize };
}

export function toFunnel(read: Omit<z.infer<typeof funnelSchema>, 'series'>): FunnelAsked {
  const { indicator, by = 'operator', target } = read;
  return {
    ...{ ...casesOf(read), series: 'funnel', indicator, by },
    ...(target === undefined ? {} : { target }),
  };
}
