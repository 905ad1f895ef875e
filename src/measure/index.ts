export {
  type ComparedIndicator,
  type Comparison,
  compareUnits,
  type NamedReport,
  type RefusedReport,
} from './compare-units.js';
export { toMeasure } from './to-measure.js';
export { type Reporting, toMeasureReport } from './to-measure-report.js';
export { toPublication } from './to-publication.js';
export { toUnitReport, type UnitReport } from './unit-report.js';
