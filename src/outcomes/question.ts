import type { Dimension } from './words.js';

/** Calendar days of the resection, both included; absent: without a border. */
export interface Period {
  readonly from?: string;
  readonly to?: string;
}

/** One value a dimension; absent: any. `operator` is the pseudonym of the outcomes. */
export type Filters = { readonly [D in Dimension]?: string };

export type IntervalMethod = 'wilson' | 'clopper-pearson';

/** What is asked of the outcomes. Withdrawn cases never count. */
export interface OutcomeQuery extends Period {
  readonly filters: Filters;
  /** Strata, at most two; empty: all together. */
  readonly by: readonly Dimension[];
  readonly interval: IntervalMethod;
  /** Calendar day as of which windows and follow-ups are judged. */
  readonly asOf: string;
}

/** Which curve is asked for. */
export type SeriesName = 'cusum-en-bloc' | 'cusum-r0' | 'cusum-speed' | 'cusum-perforation';

export interface SeriesQuery extends Period {
  readonly filters: Filters;
  readonly series: SeriesName;
}

/** Whether counts below the threshold are shown, as to those who hold the records anyway. */
export type SmallCells = 'show' | 'hide';

export interface SmallCellPolicy {
  readonly smallCells: SmallCells;
  /** Counts from 1 to one less are small. */
  readonly threshold: number;
}
