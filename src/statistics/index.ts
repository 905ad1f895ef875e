import type { QuantityRule } from '../rules/index.js';
import { CALENDAR_RULE } from './calendar-rule.js';
import { CUSUM_RULE, EXACT_FUNNEL_RULE, FUNNEL_RULE } from './chart-rules.js';
import { CLOPPER_PEARSON_RULE, RATE_RULE, WILSON_RULE } from './proportion-rules.js';

export { clopperPearsonInterval } from './clopper-pearson.js';
export type { Counts, Interval } from './counts.js';
export { type CusumAims, type CusumParameters, cusumParameters } from './cusum.js';
export { exactFunnelLimits, normalFunnelLimits } from './funnel.js';
export { ratePercent } from './rate.js';
export { wilsonInterval } from './wilson.js';

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
