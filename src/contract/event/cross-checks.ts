import type { CrossCheck } from '../cross-check.js';
import { courseChecks } from './course-checks.js';
import { gradeChecks } from './grade-checks.js';
import { kindChecks } from './kind-checks.js';
import type { ReadableEvent } from './readable-event.js';
import { surgeryChecks } from './surgery-checks.js';
import { timeChecks } from './time-checks.js';

/**
 * Contradictions within one event.
 *
 * Source: the consistency rule CC-11 (common practice, no source); the meaning of grade V: the
 * gradings; the nodes of a pN: UICC TNM, from memory; all others: project rules.
 */
export const EVENT_CHECKS: readonly CrossCheck<ReadableEvent>[] = [
  ...kindChecks,
  ...timeChecks,
  ...courseChecks,
  ...gradeChecks,
  ...surgeryChecks,
];
