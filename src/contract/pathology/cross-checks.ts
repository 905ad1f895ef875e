import type { CrossCheck } from '../cross-check.js';
import { backgroundChecks } from './background-checks.js';
import { invasionChecks } from './invasion-checks.js';
import { marginChecks } from './margin-checks.js';
import type { ReadablePathology } from './readable-pathology.js';
import { reportChecks } from './report-checks.js';
import { specimenChecks } from './specimen-checks.js';
import { tumourChecks } from './tumour-checks.js';

/**
 * Contradictions within one report.
 *
 * Source: the consistency rules CC-02 to CC-06 (common practice, no source); no invasion together
 * with a pure dysplasia: the inputs of the curability rules; the grades of budding: ITBCC 2016; all
 * others: project rules for words that do not go together.
 */
export const PATHOLOGY_CHECKS: readonly CrossCheck<ReadablePathology>[] = [
  ...reportChecks,
  ...specimenChecks,
  ...tumourChecks,
  ...invasionChecks,
  ...marginChecks,
  ...backgroundChecks,
];
