import type { CountedValue } from '../statistics/index.js';
import type { Filters, Period } from './question.js';
import type { Dimension, IndicatorId, IndicatorWord, IndicatorWords, QuantityId } from './words.js';

/** Values of the dimensions by which a cell is told apart; empty: all cases that are asked for. */
export type Stratum = Filters;

/** Cases by the word that their records say of an indicator. */
export type WordCounts = { readonly [Word in IndicatorWord]: number };

/** Middle and quarters of the values that are told, by linear interpolation between ranks. */
export interface Quartiles {
  /** Values told. */
  readonly n: number;
  /** Cases of the denominator without a value. */
  readonly missing: number;
  readonly q1: number | null;
  readonly median: number | null;
  readonly q3: number | null;
}

/** Counts of one cell, as a store makes them. */
export interface CountedCell {
  readonly stratum: Stratum;
  readonly cases: number;
  readonly indicators: { readonly [Id in IndicatorId]: WordCounts };
}

/** A cell that is reported has its quantities too. */
export interface MeasuredCell extends CountedCell {
  readonly quantities: { readonly [Id in QuantityId]: Quartiles };
}

/**
 * Counts for deciding which cells are small, over every subset of the dimensions: the cells of
 * `{organ: 'colon', fibrosis: 'F1'}`, of `{organ: 'colon'}`, of `{fibrosis: 'F1'}` and of `{}`.
 * The year of the resection is a dimension of its own. Cells without a case may be left out.
 */
export interface CubeCell extends CountedCell {
  /** Calendar year of the resection; absent: all years. */
  readonly year?: string;
}

/** State of the first check after a resection, by the days that a record tells. */
export interface FollowUpCounts {
  /** At or before its latest day. */
  readonly onTime: number;
  readonly late: number;
  /** Not done, and the latest day is not over. */
  readonly notYetDue: number;
  /** Not done, and the latest day is over. */
  readonly overdue: number;
  /** Overdue by so long that nobody expects it any more. */
  readonly lost: number;
  /** Nothing more is wanted: death, surgery or refusal came first. */
  readonly ended: number;
  /** No day was planned, and the scar was looked at all the same. */
  readonly unplanned: number;
  /** No day is planned, and nobody looked: no verdict yet, or nothing follows. */
  readonly notPlanned: number;
}

/** Cases by where their first check after the resection stands. */
export interface FirstCheckCount {
  /**
   * `done` by its last day, or `late`; `unplanned`: nothing was planned, and the scar was looked
   * at all the same.
   */
  readonly check:
    | ('done' | 'late' | 'open' | 'provisional')
    | ('lost' | 'ended' | 'not-planned' | 'unplanned');
  /** Last calendar day of its window while it is open. */
  readonly openUntil: string | null;
  readonly cases: number;
}

/** Lesions that were watched for as many days: up to neoplasia at the scar, or the last check. */
export interface WatchedFor {
  readonly days: number;
  readonly recurred: boolean;
  readonly lesions: number;
}

/** One case of a curve, in the order of resection. */
export interface CaseInOrder {
  /** Day of the resection. */
  readonly on: string;
  readonly operator: string;
  readonly organ: string;
  readonly words: Pick<IndicatorWords, 'enBloc' | 'r0' | 'curative' | 'intraproceduralPerforation'>;
  readonly speedCm2PerH: number | null;
  /** Area of the specimen, in cm2. */
  readonly areaCm2: number | null;
}

/** Cases that are asked for. */
export interface Asked extends Period {
  readonly filters: Filters;
}

/** Cells of the finest table that was asked for; those without a case are left out. */
export type FinestCells = readonly CubeCell[];

/** Values of the cases that are in the denominator of each quantity; speeds to 0.1 cm2/h, times to a minute. */
export interface StratumValues {
  readonly stratum: Stratum;
  readonly values: { readonly [Id in QuantityId]: readonly CountedValue[] };
}

/** By what cases are told apart in one reading of the facts. */
export interface ToldApart {
  /** Of the cells. */
  readonly cells: readonly Dimension[];
  /** Of the values: a part of those of the cells. */
  readonly values: readonly Dimension[];
}

/** Everything that is counted of a question. */
export interface Tally {
  readonly cells: FinestCells;
  /** Of each stratum that occurs, told apart by the dimensions of the quantities. */
  readonly values: readonly StratumValues[];
  readonly firstChecks: readonly FirstCheckCount[];
  /** Lesions that were checked at least once. */
  readonly watched: readonly WatchedFor[];
}

/** Counts at one moment: every answer sees the same records. Withdrawn cases never count. */
export interface OutcomeCounts {
  /** Reads the facts once for all of it. */
  tally(asked: Asked, by: ToldApart): Promise<Tally>;
  /**
   * One cell a combination of values that occurs, told apart by all of the dimensions.
   *
   * @param byYear whether years of the resection are told apart too
   */
  cells(asked: Asked, by: readonly Dimension[], byYear: boolean): Promise<FinestCells>;
  /** By day, begin of the procedure and id of the case. @param limit cases at most */
  inOrder(asked: Asked, limit: number): Promise<readonly CaseInOrder[]>;
}

/** Counts cases; a store implements it. Throws StoreUnavailable, also where too many ask at once. */
export interface OutcomeStore {
  read<T>(work: (counts: OutcomeCounts) => Promise<T>): Promise<T>;
}
