import type { QuantityRule } from '../rules/index.js';
import { CALENDAR_RULE } from './calendar-rule.js';
import { CUSUM_RULE, EXACT_FUNNEL_RULE, FUNNEL_RULE } from './chart-rules.js';
import { CLOPPER_PEARSON_RULE, RATE_RULE, WILSON_RULE } from './proportion-rules.js';

export { CLOPPER_PEARSON_CITES, clopperPearsonInterval } from './clopper-pearson.js';
export type { Counts, Interval } from './counts.js';
export { CUSUM_CITES, type CusumAims, type CusumParameters, cusumParameters } from './cusum.js';
export { type CusumStep, cusumCurve } from './cusum-curve.js';
export { EXACT_FUNNEL_CITES, exactFunnelLimits, normalFunnelLimits } from './funnel.js';
export {
  KAPLAN_MEIER_CITES,
  kaplanMeier,
  type SurvivalStep,
  type Watched,
} from './kaplan-meier.js';
export {
  type CountedValue,
  type QuartileValues,
  quartiles,
  quartilesOfCounted,
} from './quartiles.js';
export { ratePercent } from './rate.js';
export { WILSON_CITES, wilsonInterval } from './wilson.js';

/** Rates, intervals and charts that can be asked like any other rule. */
export const STATISTICS_RULES: readonly QuantityRule[] = [
  RATE_RULE,
  WILSON_RULE,
  CLOPPER_PEARSON_RULE,
  CUSUM_RULE,
  FUNNEL_RULE,
  EXACT_FUNNEL_RULE,
  CALENDAR_RULE,
];
