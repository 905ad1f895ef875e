export type { CaseFacts } from './case-facts.js';
export { toFacts } from './facts.js';
export { foldRecord } from './fold.js';
export { type CaseMessage, type RecordVersion, readVersion } from './version.js';
