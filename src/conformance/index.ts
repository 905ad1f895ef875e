export { type BundleCheck, type CheckedBundle, checkBundle, type SwitchableRule } from './check.js';
export { outcomeReportProblems } from './outcome-report.js';
