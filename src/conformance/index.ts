export { type BundleCheck, type CheckedBundle, checkBundle } from './check.js';
