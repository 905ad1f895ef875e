export { MEASURE_URL } from './codes.table.js';
export { toMeasure } from './to-measure.js';
export { type Reporting, toMeasureReport } from './to-measure-report.js';
