import { roundTo } from '../kernel/index.js';
import { clopperPearsonInterval, wilsonInterval } from '../statistics/index.js';
import { boundsOf } from './bounds.js';
import type { MeasuredCell, Quartiles, WordCounts } from './counts.js';
import type { IntervalMethod } from './question.js';
import type { IndicatorResult, QuantityResult, RateInterval } from './report.js';
import { isSafe } from './small-cells/hide.js';
import type { IndicatorId, QuantityId } from './words.js';

/** Confidence of every interval of a rate or a share. */
export const LEVEL = 0.95;

/** Units of the quantities, as they are shown. */
const QUANTITY_UNITS: { readonly [Id in QuantityId]: string } = {
  speedCm2PerH: 'cm2/h',
  sizeMm: 'mm',
  procedureMin: 'min',
  pathologyDays: 'd',
};

/**
 * A rate with its interval. Missing outcomes and open windows are in neither count.
 *
 * Source: newcombe1998 or clopperPearson1934, see the statistics.
 */
export function indicatorResult(
  id: IndicatorId,
  counts: WordCounts,
  method: IntervalMethod,
  threshold: number,
): IndicatorResult {
  const { yes, no, missing, 'window-open': windowOpen } = counts;
  const denominator = yes + no;
  const interval = intervalOf(yes, denominator, method);
  if (interval === undefined) return { id, kind: 'no-rate', missing, windowOpen };
  return {
    id,
    kind: 'rate',
    numerator: yes,
    denominator,
    missing,
    windowOpen,
    rate: yes / denominator,
    interval,
    bounds: boundsOf(counts),
    isSmall: !isSafe(yes, threshold) || !isSafe(no, threshold),
  };
}

/** @returns undefined without an observation: there is no rate */
function intervalOf(events: number, of: number, method: IntervalMethod): RateInterval | undefined {
  const find = method === 'wilson' ? wilsonInterval : clopperPearsonInterval;
  const found = find({ events, of }, LEVEL);
  return found.kind === 'determined' ? { ...found.value, method, level: LEVEL } : undefined;
}

export function quantityResult(id: QuantityId, { n, missing, ...at }: Quartiles): QuantityResult {
  const { q1, median, q3 } = at;
  if (q1 === null || median === null || q3 === null) return { id, kind: 'no-value', missing };
  const rounded = { q1: round(q1), median: round(median), q3: round(q3) };
  return { id, kind: 'quartiles', unit: QUANTITY_UNITS[id], n, missing, ...rounded };
}

/** A store and a program divide binary fractions otherwise in the last digits. */
const round = (value: number): number => roundTo(value, 6);

export const NO_CASES: Omit<MeasuredCell, 'stratum'> = (() => {
  const none: WordCounts = { yes: 0, no: 0, missing: 0, 'window-open': 0, 'not-applicable': 0 };
  const empty: Quartiles = { n: 0, missing: 0, q1: null, median: null, q3: null };
  return {
    cases: 0,
    indicators: {
      enBloc: none,
      r0: none,
      curative: none,
      intraproceduralPerforation: none,
      delayedPerforation: none,
      bleeding28d: none,
      bleeding6h30d: none,
      bleeding30dCsdb: none,
      stricture: none,
      conversionToSurgery: none,
      death30d: none,
      readmission30d: none,
      adverseEvent30d: none,
      residualOrRecurrence: none,
    },
    quantities: {
      speedCm2PerH: empty,
      sizeMm: empty,
      procedureMin: empty,
      pathologyDays: empty,
    },
  };
})();
