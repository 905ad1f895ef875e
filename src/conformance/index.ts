export { type BundleCheck, type CheckedBundle, checkBundle, type SwitchableRule } from './check.js';
export { checkOutcomeReport } from './outcome-report.js';
export { checkPublication } from './publication.js';
