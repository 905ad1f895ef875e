export { type CaseFields, caseSchema } from './case/case.js';
export { CROSS_CHECKS } from './case/cross-checks.js';
export { type EsdCase, parseCase } from './parse-case.js';
export type { Identifier } from './scalars.js';
export * from './words.js';
