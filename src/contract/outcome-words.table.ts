import { CURABILITY_RULE_SETS, FIBROSIS_GRADES, ORGANS, TECHNIQUES } from './words.table.js';

/** A dimension that a record does not tell, as a query names it. */
export const NOT_TOLD = 'not-told';

const RULE_SETS = [...new Set(Object.values(CURABILITY_RULE_SETS).flat())];

/** Longest axis of the lesion. */
export const SIZE_BANDS = ['under-20-mm', '20-to-29-mm', '30-to-49-mm', '50-mm-and-more'] as const;

/** How much of the dissection a trainee did. */
export const TRAINEE_BANDS = ['none', 'less-than-half', 'half-and-more', 'all', NOT_TOLD] as const;

/** Values of each dimension of outcomes, as a query names them; an operator has a pseudonym. */
export const OUTCOME_FILTERS = {
  organ: [...ORGANS],
  ruleSet: RULE_SETS,
  sizeBand: SIZE_BANDS,
  fibrosis: [...FIBROSIS_GRADES, NOT_TOLD],
  technique: [...TECHNIQUES, NOT_TOLD],
  traineeBand: TRAINEE_BANDS,
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** By what cases can be told apart. */
export const OUTCOME_DIMENSIONS = [
  'organ',
  'ruleSet',
  'sizeBand',
  'fibrosis',
  'technique',
  'operator',
  'traineeBand',
] as const;

export const OUTCOME_INTERVALS = ['wilson', 'clopper-pearson'] as const;

/** Each indicator; the facts of a record hold one word under the same name. */
export const OUTCOME_INDICATORS = [
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

/** Curves of one outcome, case by case. */
export const CUSUM_SERIES = [
  'cusum-en-bloc',
  'cusum-r0',
  'cusum-speed',
  'cusum-perforation',
] as const;

export const OUTCOME_SERIES = [...CUSUM_SERIES, 'learning-curve', 'speed', 'funnel'] as const;

export const OUTCOME_CHARTS = [
  ...CUSUM_SERIES,
  'learning-curve',
  'speed',
  'funnel',
  'rates',
  'rates-by-year',
  'recurrence',
] as const;
