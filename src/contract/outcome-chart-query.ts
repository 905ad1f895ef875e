import { z } from 'zod';
import { type Checked, passed } from '../kernel/index.js';
import {
  BY,
  CASES,
  casesOf,
  INTERVAL,
  type OutcomeQueryFields,
  periodProblems,
} from './outcome-query.js';
import {
  AIMS,
  type CusumAsked,
  FUNNEL,
  type FunnelAsked,
  LEARNING,
  type LearningAsked,
  type SpeedAsked,
  toCusum,
  toFunnel,
  toLearning,
} from './outcome-series-query.js';
import { type OUTCOME_CHARTS, OUTCOME_INDICATORS } from './outcome-words.table.js';
import { readQuery } from './read-query.js';
import { oneOf } from './scalars.js';

type Indicator = (typeof OUTCOME_INDICATORS)[number];

/** A chart that is asked for. */
export type ChartAsked =
  | {
      readonly chart: 'series';
      readonly series: CusumAsked;
      readonly form: 'simple' | 'sequential';
    }
  | { readonly chart: 'funnel'; readonly series: FunnelAsked }
  | {
      readonly chart: 'learning-curve';
      readonly series: LearningAsked;
      readonly form: 'rates' | 'speed';
    }
  | { readonly chart: 'speed'; readonly series: SpeedAsked }
  | {
      readonly chart: 'rates' | 'rates-by-year';
      readonly query: OutcomeQueryFields;
      readonly indicator: Indicator;
    }
  | { readonly chart: 'recurrence'; readonly query: OutcomeQueryFields };

const chartSchemas = {
  cusum: z.strictObject({ ...CASES, ...AIMS, form: oneOf(['simple', 'sequential']).optional() }),
  funnel: z.strictObject({ ...CASES, ...FUNNEL }),
  learning: z.strictObject({ ...CASES, ...LEARNING, form: oneOf(['rates', 'speed']).optional() }),
  rates: z.strictObject({
    ...{ ...CASES, by: BY, interval: INTERVAL, indicator: oneOf(OUTCOME_INDICATORS) },
  }),
  years: z.strictObject({ ...CASES, interval: INTERVAL, indicator: oneOf(OUTCOME_INDICATORS) }),
  cases: z.strictObject(CASES),
};

export type ChartName = (typeof OUTCOME_CHARTS)[number];

/** @returns the chart that is asked for, or every problem at once */
export function parseChartQuery(name: ChartName, search: string): Checked<ChartAsked> {
  switch (name) {
    case 'funnel': {
      const read = readQuery(chartSchemas.funnel, search, periodProblems);
      return read.ok ? passed({ chart: 'funnel', series: toFunnel(read.value) }) : read;
    }
    case 'speed': {
      const read = readQuery(chartSchemas.cases, search, periodProblems);
      if (!read.ok) return read;
      return passed({ chart: name, series: { ...casesOf(read.value), series: name } });
    }
    case 'learning-curve': {
      const read = readQuery(chartSchemas.learning, search, periodProblems);
      if (!read.ok) return read;
      const { form = 'rates', ...rest } = read.value;
      return passed({ chart: name, series: toLearning(rest), form });
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
      const read = readQuery(chartSchemas.cases, search, periodProblems);
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
