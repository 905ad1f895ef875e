export { sizeBandOf, traineeBandOf } from './bands.js';
export { boundsOf, type MissingBounds } from './bounds.js';
export { MISSING_IN_NO_RATE, NOT_ADJUSTED } from './cautions.js';
export { NO_CASES } from './cell-results.js';
export { measuredCells, rollUp, withinAsked } from './cells.js';
export type {
  Asked,
  CaseInOrder,
  CountedCell,
  CubeCell,
  FinestCells,
  FirstCheckCount,
  FollowUpCounts,
  MeasuredCell,
  OutcomeCounts,
  OutcomeStore,
  Quartiles,
  Stratum,
  StratumValues,
  Tally,
  ToldApart,
  WatchedFor,
  WordCounts,
} from './counts.js';
export { countFollowUps, LOST_AFTER_DAYS } from './follow-up-state.js';
export { TOO_MANY_CASES } from './hidden-series.js';
export { INDICATORS, WINDOW_DAYS } from './indicators.table.js';
export { JUDGED_BY, judgedBy, judgedByOfAll } from './judged-by.js';
export { type OfOrgans, organsOf, type RanOver, ranOver, speaksOf } from './organs.js';
export type {
  Filters,
  IntervalMethod,
  OutcomeQuery,
  Period,
  SeriesName,
  SeriesQuery,
  SmallCellPolicy,
  SmallCells,
} from './question.js';
export type {
  Benchmark,
  Definition,
  IndicatorResult,
  JudgedBy,
  OutcomeReport,
  QuantityResult,
  RateInterval,
  ReportCell,
  SurvivalCurve,
  SurvivalPoint,
} from './report.js';
export type {
  CusumPoint,
  CusumSeries,
  Funnel,
  FunnelLimits,
  FunnelPlace,
  FunnelPoint,
  HiddenSeries,
  LearningBlock,
  LearningCurve,
  OutcomeSeries,
  SpeedOfCase,
  SpeedSeries,
  Threshold,
} from './series.js';
export { CURVE_ORGANS, SERIES } from './series.table.js';
export {
  dimensionsOf,
  type Hidden,
  hiddenIn,
  hiddenProblems,
  MEASURES,
  shownBut,
} from './shown.js';
export { speedSeries } from './speed-series.js';
export { toFunnel } from './to-funnel.js';
export { type Counted, toReport } from './to-report.js';
export { cusumSeries, learningCurve } from './to-series.js';
export {
  DIMENSIONS,
  type Dimension,
  INDICATOR_IDS,
  INDICATOR_WORDS,
  type IndicatorId,
  type IndicatorWord,
  type IndicatorWords,
  NOT_TOLD,
  type QuantityId,
  SIZE_BANDS,
  type SizeBand,
  TRAINEE_BANDS,
  type TraineeBand,
} from './words.js';
