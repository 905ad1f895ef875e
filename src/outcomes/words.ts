/**
 * What a record says of one indicator. `missing` is an outcome that nobody told and is never
 * counted as "no"; `window-open` is one whose time is not over, excluded and counted.
 */
export const INDICATOR_WORDS = ['yes', 'no', 'missing', 'window-open', 'not-applicable'] as const;
export type IndicatorWord = (typeof INDICATOR_WORDS)[number];

/** Each indicator; the facts of a record hold one word under the same name. */
export const INDICATOR_IDS = [
  'enBloc',
  'r0',
  'curative',
  'intraproceduralPerforation',
  'delayedPerforation',
  'bleeding28d',
  'bleeding6h30d',
  'bleeding30dCsdb',
  'stricture',
  'conversionToSurgery',
  'death30d',
  'readmission30d',
  'adverseEvent30d',
  'residualOrRecurrence',
] as const;
export type IndicatorId = (typeof INDICATOR_IDS)[number];

/** One word an indicator. */
export type IndicatorWords = { readonly [Id in IndicatorId]: IndicatorWord };

/** Numbers of which the middle is told, not a rate. */
export const QUANTITY_IDS = ['speedCm2PerH', 'sizeMm', 'procedureMin', 'pathologyDays'] as const;
export type QuantityId = (typeof QUANTITY_IDS)[number];

/** By what cases can be told apart. */
export const DIMENSIONS = [
  'organ',
  'ruleSet',
  'sizeBand',
  'fibrosis',
  'technique',
  'operator',
  'traineeBand',
] as const;
export type Dimension = (typeof DIMENSIONS)[number];

/** Value of a dimension that a record does not tell. */
export const NOT_TOLD = 'not-told';

/** Longest axis of the lesion. */
export const SIZE_BANDS = ['under-20-mm', '20-to-29-mm', '30-to-49-mm', '50-mm-and-more'] as const;
export type SizeBand = (typeof SIZE_BANDS)[number];

/** How much of the dissection a trainee did. */
export const TRAINEE_BANDS = ['none', 'less-than-half', 'half-and-more', 'all', NOT_TOLD] as const;
export type TraineeBand = (typeof TRAINEE_BANDS)[number];
