import type { CrossCheck } from '../cross-check.js';
import { axisChecks } from './axis-checks.js';
import { equipmentChecks } from './equipment-checks.js';
import { outcomeChecks } from './outcome-checks.js';
import type { ReadableCase } from './readable-case.js';
import { timeChecks } from './time-checks.js';

/**
 * Contradictions on which no record can stand.
 *
 * Source: the consistency rules CC-01, 02, 03, 07, 09 and 12, PC-12 and PC-15 (common practice, no
 * source), the limits of specimen axes and area, and project rules for what FHIR R4 cannot hold.
 */
export const CROSS_CHECKS: readonly CrossCheck<ReadableCase>[] = [
  ...timeChecks,
  ...axisChecks,
  ...equipmentChecks,
  ...outcomeChecks,
];
