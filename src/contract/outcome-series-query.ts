import { z } from 'zod';
import { type Checked, failed, passed } from '../kernel/index.js';
import {
  BY,
  CASES,
  casesOf,
  INTERVAL,
  type OutcomeCasesAsked,
  type OutcomeQueryFields,
  periodProblems,
} from './outcome-query.js';
import {
  CUSUM_SERIES,
  type OUTCOME_CHARTS,
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

interface CusumAsked extends OutcomeCasesAsked {
  readonly series: Cusum;
  readonly aims: AimsAsked;
}

interface FunnelAsked extends OutcomeCasesAsked {
  readonly series: 'funnel';
  readonly indicator: Indicator;
  readonly by: (typeof OUTCOME_DIMENSIONS)[number];
  readonly target?: number;
}

interface LearningAsked extends OutcomeCasesAsked {
  readonly series: 'learning-curve';
  readonly blockSize: number;
}

/** A curve that is asked for. */
export type SeriesAsked = CusumAsked | FunnelAsked | LearningAsked;

/** A chart that is asked for. */
export type ChartAsked =
  | {
      readonly chart: 'series';
      readonly series: CusumAsked;
      readonly form: 'simple' | 'sequential';
    }
  | { readonly chart: 'funnel'; readonly series: FunnelAsked }
  | {
      readonly chart: 'rates' | 'rates-by-year';
      readonly query: OutcomeQueryFields;
      readonly indicator: Indicator;
    }
  | { readonly chart: 'recurrence'; readonly query: OutcomeQueryFields };

/** Cases of a block of a learning curve. Common practice, no source. */
const DEFAULT_BLOCK = 20;

const share = z
  .string()
  .regex(/^0\.\d{1,6}$/)
  .transform(Number)
  .refine((value) => value > 0)
  .meta({ title: 'a share above 0 and below 1, such as 0.15' });

const AIMS = {
  acceptable: share.optional(),
  unacceptable: share.optional(),
  alpha: share.optional(),
  beta: share.optional(),
};
const FUNNEL = {
  indicator: oneOf(OUTCOME_INDICATORS),
  by: oneOf(OUTCOME_DIMENSIONS).optional(),
  target: share.optional(),
};

const someSeries = z.strictObject({ ...CASES, series: oneOf(OUTCOME_SERIES) });
const cusumSchema = z.strictObject({ ...CASES, series: oneOf(CUSUM_SERIES), ...AIMS });
const funnelSchema = z.strictObject({ ...CASES, series: oneOf(['funnel']), ...FUNNEL });
const learningSchema = z.strictObject({
  ...CASES,
  series: oneOf(['learning-curve']),
  operator: CASES.operator.unwrap(),
  blockSize: wholeText(5, 200).optional(),
});

/** @returns the curve that is asked for, or every problem at once */
export function parseSeriesQuery(search: string): Checked<SeriesAsked> {
  const named = new URLSearchParams(search).get('series');
  if (named === 'funnel') {
    const read = readQuery(funnelSchema, search, periodProblems);
    return read.ok ? passed(toFunnel(read.value)) : read;
  }
  if (named === 'learning-curve') {
    const read = readQuery(learningSchema, search, periodProblems);
    if (!read.ok) return read;
    const { blockSize = DEFAULT_BLOCK } = read.value;
    return passed({ ...casesOf(read.value), series: 'learning-curve', blockSize });
  }
  if (CUSUM_SERIES.some((each) => each === named)) {
    const read = readQuery(cusumSchema, search, periodProblems);
    return read.ok ? passed(toCusum(read.value)) : read;
  }
  const read = readQuery(someSeries, search, periodProblems);
  return read.ok ? failed([]) : read;
}

const chartSchemas = {
  cusum: z.strictObject({ ...CASES, ...AIMS, form: oneOf(['simple', 'sequential']).optional() }),
  funnel: z.strictObject({ ...CASES, ...FUNNEL }),
  rates: z.strictObject({
    ...{ ...CASES, by: BY, interval: INTERVAL, indicator: oneOf(OUTCOME_INDICATORS) },
  }),
  years: z.strictObject({ ...CASES, interval: INTERVAL, indicator: oneOf(OUTCOME_INDICATORS) }),
  recurrence: z.strictObject(CASES),
};

export type ChartName = (typeof OUTCOME_CHARTS)[number];

/** @returns the chart that is asked for, or every problem at once */
export function parseChartQuery(name: ChartName, search: string): Checked<ChartAsked> {
  switch (name) {
    case 'funnel': {
      const read = readQuery(chartSchemas.funnel, search, periodProblems);
      return read.ok ? passed({ chart: 'funnel', series: toFunnel(read.value) }) : read;
    }
    case 'rates': {
      const read = readQuery(chartSchemas.rates, search, periodProblems);
      if (!read.ok) return read;
      const { by = [], interval = 'wilson', indicator } = read.value;
      return passed({ chart: name, query: { ...casesOf(read.value), by, interval }, indicator });
    }
    case 'rates-by-year': {
      const read = readQuery(chartSchemas.years, search, periodProblems);
      if (!read.ok) return read;
      const { interval = 'wilson', indicator } = read.value;
      return passed({
        ...{ chart: name, query: { ...casesOf(read.value), by: [], interval }, indicator },
      });
    }
    case 'recurrence': {
      const read = readQuery(chartSchemas.recurrence, search, periodProblems);
      if (!read.ok) return read;
      return passed({ chart: name, query: { ...casesOf(read.value), by: [], interval: 'wilson' } });
    }
    default: {
      const read = readQuery(chartSchemas.cusum, search, periodProblems);
      if (!read.ok) return read;
      const { form = 'simple', ...rest } = read.value;
      return passed({ chart: 'series', series: toCusum({ ...rest, series: name }), form });
    }
  }
}

function toCusum(read: z.infer<typeof cusumSchema>): CusumAsked {
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

function toFunnel(read: z.infer<typeof chartSchemas.funnel>): FunnelAsked {
  const { indicator, by = 'operator', target } = read;
  return {
    ...{ ...casesOf(read), series: 'funnel', indicator, by },
    ...(target === undefined ? {} : { target }),
  };
}
