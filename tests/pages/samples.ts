import type {
  CusumPoint,
  FunnelPoint,
  LearningCurve,
  SurvivalCurve,
} from '../../src/outcomes/index.js';
import {
  cusumChart,
  type FunnelShape,
  funnelChart,
  type LearningForm,
  learningChart,
  type Markup,
  type RatePoint,
  rateChart,
  type SpeedPoint,
  speedChart,
  survivalChart,
} from '../../src/pages/index.js';

/** A text that does harm wherever it is not escaped; everything here is invented. */
export const HARM = `</title></svg><script>alert(1)</script><img src=x onerror='alert("2")'>&\u0000`;

export const rate = (label: string, events: number, of: number): RatePoint => ({
  kind: 'rate',
  label,
  events,
  of,
  rate: events / of,
  lower: Math.max(0, events / of - 0.08),
  upper: Math.min(1, events / of + 0.05),
});

export const QUARTERS: readonly RatePoint[] = [
  rate('2025 Q1', 28, 33),
  rate('2025 Q2', 31, 31),
  { kind: 'hidden', label: '2025 Q3' },
  { kind: 'none', label: '2025 Q4' },
  rate('2026 Q1', 41, 47),
];
const REFERENCES = [
  { value: 0.9, says: 'en bloc at least 90 %', source: 'a published work' },
  { value: 0.89, says: `close to it ${HARM}`, source: HARM },
];
export const rates = (points: readonly RatePoint[], axis: 'to-100' | 'to-highest' = 'to-100') =>
  rateChart({
    id: 'rates',
    title: 'Rates',
    points,
    are: 'periods',
    interval: '95 % interval (Wilson score)',
    references: REFERENCES,
    axis,
  });

/** Steps of the published worked values: p0 0.10, p1 0.20 (PMC6470078 fig. 3). */
const STEP = 0.1452;
export const CURVE: readonly CusumPoint[] = Array.from({ length: 19 }, (_, i) => ({
  number: i + 1,
  on: '2026-01-02',
  failed: i % 9 === 4,
  simple: [...Array(i + 1).keys()].reduce((sum, k) => sum + (k % 9 === 4 ? 0.9 : -0.1), 0),
  sequential: -(i + 1) * STEP,
  ...(i === 18 ? { reached: 'acceptable' as const } : {}),
}));
export const cusum = (form: 'simple' | 'sequential', points = CURVE, title = 'Curve') =>
  cusumChart({
    id: `cusum-${form}`,
    title,
    form,
    curve: {
      aims: { acceptable: 0.1, unacceptable: 0.2, alpha: 0.1, beta: 0.1 },
      step: STEP,
      lowerLimit: -2.7095,
      upperLimit: 2.7095,
      points,
      missing: 2,
      over: { organs: ['colon', 'rectum'] },
      ofOtherOrgans: 4,
    },
  });

export const point = (
  operator: string,
  events: number,
  of: number,
  position: FunnelPoint['position'],
): FunnelPoint => ({ stratum: { operator }, events, of, rate: events / of, position });
export const FUNNEL_POINTS = [
  point('op-a', 45, 50, 'within'),
  point('op-b', 30, 50, 'beyond-998'),
  point(HARM, 31, 50, 'beyond-95'),
  point('op-d', 10, 10, 'within'),
];
/** At 50 cases: quality notes, target 0.90, normal limits (worked example). */
const LIMITS = [10, 50, 90].map((of) => ({
  of,
  lower95: 0.8168,
  upper95: 0.9832,
  lower998: 0.7689,
  upper998: 1,
}));
export const funnel = (points: FunnelShape['points'], limits = LIMITS) =>
  funnelChart({
    id: 'funnel',
    title: 'Funnel',
    funnel: { target: 0.9, targetIs: 'given', points, limits, leftOut: 2, over: {} },
  });

const ORGANS = ['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'];
export const SPEEDS: readonly SpeedPoint[] = ORGANS.map((group, i) => ({
  areaCm2: 1.5 + i * 3.25,
  speedCm2PerH: 4.1 + i * 2.9,
  group,
}));
export const speeds = (points: readonly SpeedPoint[], told = points.length) =>
  speedChart({
    id: 'speeds',
    title: 'Speeds',
    points,
    told,
    missing: 1,
    threshold: { speedCm2PerH: 9, says: 'expert level', source: 'PMC7411630, abstract' },
  });

/** Kaplan-Meier by hand: 10 at risk, 1 event: 0.9; 6 at risk, 1 event: 0.75. */
export const SURVIVAL: SurvivalCurve = {
  lesions: 10,
  events: 2,
  level: 0.95,
  isByMonth: false,
  isCoarsened: false,
  points: [
    { months: 0, atRisk: 10, events: 0, censored: 0, survival: 1, lower: 1, upper: 1 },
    { months: 6, atRisk: 10, events: 1, censored: 3, survival: 0.9, lower: 0.47, upper: 0.99 },
    { months: 18, atRisk: 6, events: 1, censored: 5, survival: 0.75, lower: 0.3, upper: 0.94 },
  ],
};
export const survival = (curves: readonly SurvivalCurve[], label = 'all lesions') =>
  survivalChart({
    id: 'survival',
    title: 'Survival',
    upTitle: 'Percentage without recurrence',
    curves: curves.map((curve, i) => ({ label: `${label} ${i + 1}`, curve })),
  });

/** 16 of 20 by Wilson; newcombe1998 has the formula. */
const R0_COUNT = { r0Rate: { events: 16, of: 20, lower: 0.584, upper: 0.919 } };

/** Of an invented operator; the last block is smaller, and one tells no R0. */
export const LEARNING: LearningCurve = {
  kind: 'learning-curve',
  blockSize: 20,
  cases: 67,
  over: { organs: ['colon', 'rectum'], operator: 'op-a' },
  blocks: [
    { fromCase: 1, toCase: 20, counts: {}, enBlocRate: 0.75, r0Rate: 0.5, medianSpeedCm2PerH: 4.2 },
    {
      fromCase: 21,
      toCase: 40,
      counts: {},
      enBlocRate: 0.9,
      curativeRate: 0.6,
      medianSpeedCm2PerH: 7.9,
    },
    {
      fromCase: 41,
      toCase: 60,
      counts: R0_COUNT,
      enBlocRate: 1,
      r0Rate: 0.8,
      medianSpeedCm2PerH: 11.5,
    },
    { fromCase: 61, toCase: 67, counts: {}, enBlocRate: 1, r0Rate: 1, medianSpeedCm2PerH: 10 },
  ],
  thresholds: [
    { of: 'enBlocRate', atLeast: 0.9, isOfThese: true, says: `90 % ${HARM}`, cites: [] },
    { of: 'medianSpeedCm2PerH', atLeast: 9, isOfThese: true, says: '9 cm2/h', cites: [] },
    { of: 'medianSpeedCm2PerH', atLeast: 17.9, isOfThese: false, says: '17.9 cm2/h', cites: [] },
  ],
};
export const learning = (form: LearningForm, curve = LEARNING) =>
  learningChart({ id: `learning-${form}`, title: 'Learning', form, curve });

/** Every kind of chart, with some data, with one observation and with none. */
export const CHARTS: readonly (readonly [string, Markup])[] = [
  ['rates', rates(QUARTERS)],
  ['rates of adverse events', rates([rate(HARM, 1, 90), rate('b', 3, 80)], 'to-highest')],
  ['one rate', rates([rate('2026 Q1', 1, 1)])],
  ['no rate', rates([])],
  ['rates of many periods', rates(Array.from({ length: 60 }, (_, i) => rate(`week ${i}`, i, 60)))],
  ['simple curve', cusum('simple')],
  ['sequential curve', cusum('sequential')],
  ['curve of one case', cusum('sequential', CURVE.slice(0, 1), HARM)],
  ['no curve', cusum('simple', [])],
  ['funnel', funnel(FUNNEL_POINTS)],
  ['funnel of one point', funnel([point('op-a', 9, 10, 'within')], LIMITS.slice(0, 1))],
  ['no funnel', funnel([], [])],
  ['speeds', speeds(SPEEDS)],
  ['speeds of many groups', speeds([...SPEEDS, { ...point0(), group: HARM }, point0()])],
  ['speeds of which some are drawn', speeds(SPEEDS, 1234)],
  ['one speed', speeds(SPEEDS.slice(0, 1))],
  ['no speed', speeds([])],
  ['learning by rates', learning('rates')],
  ['learning by speed', learning('speed')],
  [
    'learning of one block',
    learning('rates', { ...LEARNING, blocks: LEARNING.blocks.slice(0, 1) }),
  ],
  ['no learning', learning('speed', { ...LEARNING, cases: 0, blocks: [] })],
  ['survival', survival([SURVIVAL])],
  [
    'survival of five groups',
    survival(
      [1, 2, 3, 4, 5].map(() => SURVIVAL),
      HARM,
    ),
  ],
  ['no survival', survival([])],
];

function point0(): SpeedPoint {
  return { areaCm2: 2, speedCm2PerH: 3, group: 'a further group' };
}
