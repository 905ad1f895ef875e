import type { CrossCheck } from '../cross-check.js';
import { findingChecks } from './finding-checks.js';
import { nextChecks } from './next-checks.js';
import type { ReadableExamination } from './readable-examination.js';
import { timeChecks } from './time-checks.js';

/**
 * Contradictions within one examination.
 *
 * Source: the consistency rule CC-12 (common practice, no source); all others: project rules.
 */
export const EXAMINATION_CHECKS: readonly CrossCheck<ReadableExamination>[] = [
  ...timeChecks,
  ...findingChecks,
  ...nextChecks,
];
