export { type BundleCheck, type CheckedBundle, checkBundle, type SwitchableRule } from './check.js';
