export { comparisonChart, renderComparison } from './comparison/comparison-page.js';
export { type CusumChart, type CusumCurve, type CusumForm, cusumChart } from './cusum-chart.js';
export { drawChart, type SingleChart } from './draw-chart.js';
export type { ChartText } from './figure.js';
export { type FunnelChart, type FunnelShape, funnelChart } from './funnel-chart.js';
export { type LearningChart, type LearningForm, learningChart } from './learning-chart.js';
export type { Markup } from './markup.js';
export { type RateChart, type RatePoint, type ReferenceLine, rateChart } from './rate-chart.js';
export type { PeriodCell } from './report/indicator-section.js';
export { type QualityReport, renderQualityReport } from './report/quality-report.js';
export type { TitledSeries } from './report/series-section.js';
export {
  type SpeedChart,
  type SpeedPoint,
  type SpeedThreshold,
  speedChart,
} from './speed-chart.js';
export { stratumText } from './stratum-text.js';
export { type SurvivalChart, survivalChart } from './survival-chart.js';
