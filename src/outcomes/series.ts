import type { Citation } from '../kernel/index.js';
import type { CusumAims } from '../statistics/index.js';
import type { Stratum } from './counts.js';
import type { OfOrgans, RanOver } from './organs.js';
import type { SeriesName } from './question.js';
import type { IndicatorId } from './words.js';

/** One observation of a curve. */
export interface CusumPoint {
  /** 1 for the first observation. */
  readonly number: number;
  readonly on: string;
  readonly failed: boolean;
  /** Sum of failures less the target: rising is worse. */
  readonly simple: number;
  /** As a sequential test, started anew at each limit. */
  readonly sequential: number;
  /** Which limit this observation reached. */
  readonly reached?: 'acceptable' | 'unacceptable';
}

export interface CusumSeries {
  readonly kind: 'cusum';
  readonly series: SeriesName;
  readonly title: string;
  readonly aims: CusumAims;
  /** Of which organs the aims speak; absent: of any, or they came with the question. */
  readonly aimsOf?: readonly string[];
  readonly over: RanOver;
  /** Cases that were asked for and left out: of an organ of which the aims do not speak. */
  readonly ofOtherOrgans: number;
  readonly step: number;
  readonly lowerLimit: number;
  readonly upperLimit: number;
  readonly points: readonly CusumPoint[];
  /** Cases whose outcome nobody told: not on the curve. */
  readonly missing: number;
  readonly cites: readonly Citation[];
}

/** What a point of a funnel is: a stratum, or a whole unit among others. */
export type FunnelPlace = Stratum & { readonly unit?: string };

/** One operator or unit beside the limits. */
export interface FunnelPoint {
  readonly stratum: FunnelPlace;
  readonly events: number;
  readonly of: number;
  readonly rate: number;
  /** Beyond the wider limits, the narrower ones, or within. */
  readonly position: 'within' | 'beyond-95' | 'beyond-998';
}

/** Limits at one number of observations, shares of 0 to 1. */
export interface FunnelLimits {
  readonly of: number;
  readonly lower95: number;
  readonly upper95: number;
  readonly lower998: number;
  readonly upper998: number;
}

export interface Funnel {
  readonly kind: 'funnel';
  readonly indicator: IndicatorId;
  /** Share of 0 to 1 that points are held to: the rate of all points together, or one given. */
  readonly target: number;
  readonly targetIs: 'own-rate' | 'given';
  readonly over: RanOver;
  readonly points: readonly FunnelPoint[];
  readonly limits: readonly FunnelLimits[];
  /** Strata left out: fewer than 10 observations, or suppressed. */
  readonly leftOut: number;
  readonly cites: readonly Citation[];
}

/** Rates over the cases of one operator, in blocks of their order. */
export interface LearningBlock {
  readonly fromCase: number;
  readonly toCase: number;
  readonly enBlocRate?: number;
  readonly r0Rate?: number;
  readonly curativeRate?: number;
  /** What each rate of the block counts, and its Wilson interval of 95 %. */
  readonly counts: {
    readonly [R in 'enBlocRate' | 'r0Rate' | 'curativeRate']?: {
      readonly events: number;
      readonly of: number;
      readonly lower: number;
      readonly upper: number;
    };
  };
  readonly medianSpeedCm2PerH?: number;
}

/** The first case after which a curve keeps a published level, over a whole block. */
export interface Threshold extends OfOrgans {
  readonly of: 'enBlocRate' | 'r0Rate' | 'medianSpeedCm2PerH';
  /** Share of 0 to 1, or cm2/h. */
  readonly atLeast: number;
  readonly says: string;
  /** Whether it speaks of the cases of the curve; if not, whether it was reached is not said. */
  readonly isOfThese: boolean;
  readonly reachedAtCase?: number;
  readonly publishedAtCase?: number;
  readonly cites: readonly Citation[];
}

export interface LearningCurve {
  readonly kind: 'learning-curve';
  readonly blockSize: number;
  readonly cases: number;
  readonly over: RanOver;
  readonly blocks: readonly LearningBlock[];
  readonly thresholds: readonly Threshold[];
}

/** Speed of the dissections by the area of the specimen, one point a case. */
export interface SpeedSeries {
  readonly kind: 'speed';
  /** In the order of resection; where they are many, evenly thinned. */
  readonly points: readonly SpeedOfCase[];
  /** Dissections that tell both: as many as points, unless they were thinned. */
  readonly told: number;
  /** Dissections that do not tell both. */
  readonly missing: number;
  readonly over: RanOver;
  /** A published speed to hold beside the points; absent: none speaks of their organs alone. */
  readonly level?: { readonly speedCm2PerH: number; readonly says: string };
  readonly cites: readonly Citation[];
}

export interface SpeedOfCase {
  readonly areaCm2: number;
  readonly speedCm2PerH: number;
  readonly organ: string;
}

/** No curve: small counts are hidden, cases are too many, or the aims are not of their organ. */
export interface HiddenSeries {
  readonly kind: 'hidden';
  readonly because: string;
}

export type OutcomeSeries = CusumSeries | Funnel | LearningCurve | SpeedSeries | HiddenSeries;
