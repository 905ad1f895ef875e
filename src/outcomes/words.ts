import {
  OUTCOME_DIMENSIONS as DIMENSIONS,
  OUTCOME_INDICATORS as INDICATOR_IDS,
  NOT_TOLD,
  SIZE_BANDS,
  TRAINEE_BANDS,
} from '../contract/index.js';

export { DIMENSIONS, INDICATOR_IDS, NOT_TOLD, SIZE_BANDS, TRAINEE_BANDS };

/**
 * What a record says of one indicator. `missing` is an outcome that nobody told and is never
 * counted as "no"; `window-open` is one whose time is not over, excluded and counted.
 */
export const INDICATOR_WORDS = ['yes', 'no', 'missing', 'window-open', 'not-applicable'] as const;
export type IndicatorWord = (typeof INDICATOR_WORDS)[number];

export type IndicatorId = (typeof INDICATOR_IDS)[number];

/** One word an indicator. */
export type IndicatorWords = { readonly [Id in IndicatorId]: IndicatorWord };

/** Numbers of which the middle is told, not a rate. */
export const QUANTITY_IDS = ['speedCm2PerH', 'sizeMm', 'procedureMin', 'pathologyDays'] as const;
export type QuantityId = (typeof QUANTITY_IDS)[number];

export type Dimension = (typeof DIMENSIONS)[number];

export type SizeBand = (typeof SIZE_BANDS)[number];

export type TraineeBand = (typeof TRAINEE_BANDS)[number];
