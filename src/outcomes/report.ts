import type { Citation } from '../kernel/index.js';
import type { MissingBounds } from './bounds.js';
import type { FollowUpCounts, Stratum } from './counts.js';
import type { OfOrgans } from './organs.js';
import type { IntervalMethod, OutcomeQuery, SmallCellPolicy } from './question.js';
import type { IndicatorId, QuantityId } from './words.js';

/** Two ends of a rate, shares of 0 to 1. */
export interface RateInterval {
  readonly lower: number;
  readonly upper: number;
  readonly method: IntervalMethod;
  readonly level: number;
}

/** A rate with its counts; numbers unrounded. */
export type IndicatorResult =
  | {
      readonly id: IndicatorId;
      readonly kind: 'rate';
      readonly numerator: number;
      readonly denominator: number;
      /** Cases whose outcome nobody told: in neither count. */
      readonly missing: number;
      /** Cases whose window is not over: in neither count. */
      readonly windowOpen: number;
      /** Share of 0 to 1. */
      readonly rate: number;
      readonly interval: RateInterval;
      /** The rate whatever the missing outcomes were. */
      readonly bounds: MissingBounds;
      /** Shown although small, to those who may see it. */
      readonly isSmall: boolean;
    }
  | {
      readonly id: IndicatorId;
      /** Nobody to count: there is no rate. */
      readonly kind: 'no-rate';
      readonly missing: number;
      readonly windowOpen: number;
    }
  /** Small, or it would give away a small one elsewhere; which of both is not said. */
  | { readonly id: IndicatorId; readonly kind: 'suppressed' };

/** Quartiles of the values that are told; those of speed are counted to 0.1 cm2/h. */
export type QuantityResult =
  | {
      readonly id: QuantityId;
      readonly kind: 'quartiles';
      readonly unit: string;
      readonly n: number;
      readonly missing: number;
      readonly q1: number;
      readonly median: number;
      readonly q3: number;
    }
  | { readonly id: QuantityId; readonly kind: 'no-value'; readonly missing: number }
  | { readonly id: QuantityId; readonly kind: 'suppressed' };

export interface ReportCell {
  readonly stratum: Stratum;
  /** Absent: suppressed. */
  readonly cases?: number;
  /** Whether rates of this cell may stand in a ranking: 10 cases or more. */
  readonly isRankable: boolean;
  readonly indicators: readonly IndicatorResult[];
  readonly quantities: readonly QuantityResult[];
}

/** One step of a curve of lesions without recurrence. */
export interface SurvivalPoint {
  /** Months of 30.4375 days after the resection. */
  readonly months: number;
  /** Lesions watched up to just before. */
  readonly atRisk: number;
  readonly events: number;
  /** Lesions whose last check was here. */
  readonly censored: number;
  /** Share of 0 to 1 without recurrence. */
  readonly survival: number;
  /** Both 1 before the first event, where the formula has no width; 0 and the last one at 0. */
  readonly lower: number;
  readonly upper: number;
}

export interface SurvivalCurve {
  readonly lesions: number;
  readonly events: number;
  readonly level: number;
  /**
   * By time; the first is month 0. More than 240 are joined to one a month, which tells how many
   * were at risk before the first of them, and the share after the last.
   */
  readonly points: readonly SurvivalPoint[];
  /** Whether points were joined because they were so many. */
  readonly isByMonth: boolean;
  /** Points were joined or cut so that no small count shows. */
  readonly isCoarsened: boolean;
}

/**
 * A published rate or speed; never a limit of its own. It stands beside cases of its organs alone.
 */
export interface Benchmark extends OfOrgans {
  readonly says: string;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly cites: readonly Citation[];
}

/** What an indicator counts, for readers; with the organs of its cases where they are some alone. */
export interface Definition extends OfOrgans {
  readonly id: IndicatorId;
  readonly title: string;
  readonly numerator: string;
  readonly denominator: string;
  readonly exclusions: readonly string[];
  readonly windowDays?: number;
  readonly good: 'high' | 'low';
  readonly benchmarks: readonly Benchmark[];
  readonly cites: readonly Citation[];
}

/**
 * A rule set by which cases of an organ were judged. A record keeps the set that was in force
 * in its unit when it was judged.
 */
export interface JudgedBy {
  readonly organ: string;
  readonly ruleSet: string;
  /** Cases in the rate of curative resections; absent: small counts are hidden. */
  readonly judged?: number;
}

export interface OutcomeReport {
  readonly query: OutcomeQuery;
  readonly policy: SmallCellPolicy;
  /** All cases asked for come first, with an empty stratum, then the strata. */
  readonly cells: readonly ReportCell[];
  /** Absent: suppressed. */
  readonly followUp?: FollowUpCounts;
  /** Absent: suppressed, or no lesion was checked. */
  readonly recurrence?: SurvivalCurve;
  /** Behind the rate of curative resections; where small counts are hidden, of all kept cases. */
  readonly judgedBy: readonly JudgedBy[];
  readonly definitions: readonly Definition[];
  /** What each state of the first check means; derived, no source. */
  readonly followUpDefinitions: { readonly [State in keyof FollowUpCounts]: string };
  /** Published speeds, in cm2/h. */
  readonly speedBenchmarks: readonly Benchmark[];
  /** Of the intervals, of the bounds and of the curve. */
  readonly sources: readonly Citation[];
  /** For readers: what the numbers cannot say. */
  readonly cautions: readonly string[];
  readonly asOf: string;
}
