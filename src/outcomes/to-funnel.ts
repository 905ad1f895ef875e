import { invariant } from '../kernel/index.js';
import { EXACT_FUNNEL_CITES, exactFunnelLimits } from '../statistics/index.js';
import type { RanOver } from './organs.js';
import type { ReportCell } from './report.js';
import type { Funnel, FunnelLimits, FunnelPlace, FunnelPoint } from './series.js';
import { LEAST_FOR_RANKING } from './to-report.js';
import type { IndicatorId } from './words.js';

/** Limits are drawn at so many sizes at most. */
const MOST_SIZES = 60;

/**
 * Rates of operators or units beside the limits of one target, by the binomial distribution.
 * Strata with fewer than 10 observations, or that are hidden, are left out and counted.
 *
 * Source: funnelSmall2012; 95 and 99.8 %: spiegelhalter2005 (from memory).
 *
 * @param strata of a report without the cell of all cases, or units
 * @param target share of 0 to 1; absent: the rate of all points together
 * @param over whose cases the strata hold
 * @throws InvariantError for another target
 */
export function toFunnel(
  strata: readonly (Pick<ReportCell, 'indicators'> & { readonly stratum: FunnelPlace })[],
  indicator: IndicatorId,
  target?: number,
  over: RanOver = {},
): Funnel {
  const rates = strata.flatMap(({ stratum, indicators }) => {
    const found = indicators.find(({ id }) => id === indicator);
    if (found?.kind !== 'rate' || found.denominator < LEAST_FOR_RANKING) return [];
    return [{ stratum, events: found.numerator, of: found.denominator, rate: found.rate }];
  });
  const all = rates.reduce((sum, { of }) => sum + of, 0);
  const events = rates.reduce((sum, each) => sum + each.events, 0);
  const aim = target ?? (all === 0 ? 0 : events / all);
  invariant(aim >= 0 && aim <= 1, 'a target lies between 0 and 1');
  return {
    kind: 'funnel',
    indicator,
    target: aim,
    targetIs: target === undefined ? 'own-rate' : 'given',
    over,
    points: rates.map((each): FunnelPoint => ({ ...each, position: positionOf(each, aim) })),
    limits: sizesFor(rates.map(({ of }) => of)).map((of) => limitsAt(aim, of)),
    leftOut: strata.length - rates.length,
    cites: EXACT_FUNNEL_CITES,
  };
}

function limitsAt(target: number, of: number): FunnelLimits {
  const [inner, outer] = [
    exactFunnelLimits(target, of, 0.95),
    exactFunnelLimits(target, of, 0.998),
  ];
  return {
    of,
    lower95: inner.lower,
    upper95: inner.upper,
    lower998: outer.lower,
    upper998: outer.upper,
  };
}

function positionOf(
  { rate, of }: Pick<FunnelPoint, 'rate' | 'of'>,
  target: number,
): FunnelPoint['position'] {
  const limits = limitsAt(target, of);
  if (rate < limits.lower998 || rate > limits.upper998) return 'beyond-998';
  return rate < limits.lower95 || rate > limits.upper95 ? 'beyond-95' : 'within';
}

/** From the least that is ranked to somewhat beyond the largest, the points themselves among them. */
function sizesFor(sizes: readonly number[]): readonly number[] {
  if (sizes.length === 0) return [];
  const last = Math.ceil(Math.max(...sizes) * 1.1);
  const step = Math.max(1, Math.ceil((last - LEAST_FOR_RANKING) / MOST_SIZES));
  const grid = Array.from(
    { length: Math.floor((last - LEAST_FOR_RANKING) / step) + 1 },
    (_, i) => LEAST_FOR_RANKING + i * step,
  );
  return [...new Set([...grid, ...sizes])].sort((a, b) => a - b);
}
