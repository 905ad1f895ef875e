import type { IndicatorResult, OutcomeReport, ReportCell } from '../../src/outcomes/index.js';
import type { QualityReport } from '../../src/pages/index.js';
import { CURVE, FUNNEL_POINTS, HARM, SPEEDS, SURVIVAL } from './samples.js';

/** 81 of 263 and its Wilson interval. Source: Newcombe 1998, table (from memory). */
const EN_BLOC: IndicatorResult = {
  id: 'enBloc',
  kind: 'rate',
  numerator: 81,
  denominator: 263,
  missing: 4,
  windowOpen: 7,
  rate: 81 / 263,
  bounds: { ifNo: 81 / 267, ifYes: 85 / 267 },
  interval: { lower: 0.2553, upper: 0.3662, method: 'wilson', level: 0.95 },
  isSmall: false,
};
/** 1 of 212, plain Wilson (recalculated). */
const BLEEDING: IndicatorResult = {
  ...EN_BLOC,
  id: 'bleeding28d',
  numerator: 1,
  denominator: 212,
  rate: 1 / 212,
  interval: { lower: 0.0008, upper: 0.026, method: 'wilson', level: 0.95 },
  isSmall: true,
};

const WHOLE: ReportCell = {
  stratum: {},
  cases: 263,
  isRankable: true,
  indicators: [EN_BLOC, BLEEDING],
  quantities: [
    {
      id: 'speedCm2PerH',
      kind: 'quartiles',
      unit: 'cm²/h',
      n: 250,
      missing: 13,
      q1: 7,
      median: 9.25,
      q3: 12.12,
    },
  ],
};
const HIDDEN: ReportCell = {
  stratum: { organ: 'colon' },
  isRankable: true,
  indicators: [
    { id: 'enBloc', kind: 'suppressed' },
    { id: 'bleeding28d', kind: 'suppressed' },
  ],
  quantities: [{ id: 'speedCm2PerH', kind: 'suppressed' }],
};
const NOBODY: ReportCell = {
  stratum: { organ: 'not-told' },
  cases: 3,
  isRankable: false,
  indicators: [{ id: 'enBloc', kind: 'no-rate', missing: 2, windowOpen: 1 }],
  quantities: [{ id: 'speedCm2PerH', kind: 'no-value', missing: 3 }],
};

const QUERY: OutcomeReport['query'] = {
  filters: { operator: HARM },
  by: ['organ'],
  interval: 'wilson',
  asOf: '2026-03-31',
};

const CITES = [{ work: 'newcombe1998', place: HARM, basis: 'recalled' }] as const;

const OUTCOMES: OutcomeReport = {
  query: { ...QUERY, from: '2025-01-01', to: '2026-02-28' },
  policy: { smallCells: 'show', threshold: 5 },
  cells: [WHOLE, HIDDEN, NOBODY],
  followUp: {
    onTime: 150,
    late: 20,
    notYetDue: 30,
    overdue: 12,
    lost: 3,
    ended: 9,
    unplanned: 7,
    notPlanned: 16,
  },
  recurrence: SURVIVAL,
  judgedBy: [
    { organ: 'colon', ruleSet: 'set-a', judged: 7 },
    { organ: 'colon', ruleSet: 'set-b', judged: 40 },
  ],
  definitions: [
    {
      id: 'enBloc',
      title: 'En bloc',
      numerator: 'removed in one piece',
      denominator: 'attempted',
      exclusions: [],
      good: 'high',
      benchmarks: [{ says: 'expert level', atLeast: 0.9, cites: CITES }],
      cites: CITES,
    },
    {
      id: 'bleeding28d',
      title: 'Bleeding',
      numerator: 'bled',
      denominator: 'procedures',
      exclusions: ['too young'],
      windowDays: 28,
      good: 'low',
      benchmarks: [{ says: 'complications at most 5 %', atMost: 0.05, cites: CITES }],
      cites: CITES,
    },
  ],
  followUpDefinitions: {
    onTime: 'in time',
    late: 'later',
    notYetDue: 'to come',
    overdue: 'over',
    lost: 'lost',
    ended: 'not wanted',
    unplanned: 'no day, looked at',
    notPlanned: 'no day',
  },
  speedBenchmarks: [],
  sources: CITES,
  cautions: ['Rates of few cases vary by chance.'],
  asOf: '2026-03-31',
};

/** A report with everything in it, of an invented unit. */
export const REPORT: QualityReport = {
  title: 'Quality report',
  unit: { name: 'An invented unit', identifier: 'https://dissection-records.example/unit' },
  madeOn: '2026-04-02',
  curabilityRules: { stomach: 'set-a', colon: 'set-b', rectum: 'set-a' },
  outcomes: OUTCOMES,
  periods: [
    { label: '2025', cell: WHOLE },
    { label: '2026', cell: { ...HIDDEN, stratum: {} } },
  ],
  series: [
    {
      title: 'Cumulative sum',
      series: {
        kind: 'cusum',
        series: 'cusum-en-bloc',
        title: 'En bloc',
        aims: { acceptable: 0.1, unacceptable: 0.2, alpha: 0.1, beta: 0.1 },
        step: 0.1452,
        lowerLimit: -2.7095,
        upperLimit: 2.7095,
        points: CURVE,
        missing: 0,
        aimsOf: ['colon', 'rectum'],
        over: { organs: ['colon', 'rectum'] },
        ofOtherOrgans: 3,
        cites: CITES,
      },
    },
    {
      title: 'By operator',
      series: {
        kind: 'funnel',
        indicator: 'enBloc',
        target: 0.9,
        targetIs: 'own-rate',
        over: {},
        points: FUNNEL_POINTS,
        limits: [],
        leftOut: 0,
        cites: CITES,
      },
    },
    {
      title: 'Learning curve',
      series: {
        kind: 'learning-curve',
        blockSize: 20,
        cases: 22,
        over: { operator: HARM },
        blocks: [
          {
            ...{ fromCase: 1, toCase: 20, enBlocRate: 0.9, medianSpeedCm2PerH: 8.2 },
            counts: { enBlocRate: { events: 18, of: 20, lower: 0.699, upper: 0.972 } },
          },
        ],
        thresholds: [
          {
            ...{ of: 'enBlocRate', atLeast: 0.9, isOfThese: true, says: 'a published level' },
            ...{ reachedAtCase: 20, publishedAtCase: 40, cites: CITES },
          },
          { of: 'r0Rate', atLeast: 0.711, isOfThese: true, says: 'another', cites: CITES },
          {
            ...{ of: 'medianSpeedCm2PerH', atLeast: 9, isOfThese: false, organs: ['colon'] },
            ...{ says: 'one of others', cites: CITES },
          },
        ],
      },
    },
    {
      title: 'Speed against size',
      series: {
        kind: 'speed',
        points: SPEEDS.map(({ group, ...point }) => ({ ...point, organ: group })),
        told: SPEEDS.length,
        over: {},
        missing: 0,
        level: { speedCm2PerH: 9, says: 'expert level' },
        cites: CITES,
      },
    },
    { title: 'R0', series: { kind: 'hidden', because: 'small numbers are hidden.' } },
  ],
};

/** A report of nothing. */
export const EMPTY_REPORT: QualityReport = {
  title: 'Quality report',
  unit: { identifier: 'https://dissection-records.example/unit' },
  madeOn: '2026-04-02',
  curabilityRules: { stomach: 'set-a', colon: 'set-b', rectum: 'set-a' },
  outcomes: {
    query: { ...QUERY, filters: {}, by: [], interval: 'clopper-pearson' },
    policy: { smallCells: 'hide', threshold: 5 },
    cells: [],
    judgedBy: [],
    definitions: OUTCOMES.definitions,
    followUpDefinitions: OUTCOMES.followUpDefinitions,
    speedBenchmarks: [],
    sources: [],
    cautions: [],
    asOf: '2026-03-31',
  },
  periods: [],
  series: [],
};
