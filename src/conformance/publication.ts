import type { Problem } from '../kernel/index.js';
import { type Checked, failed, passed } from '../kernel/index.js';
import { brokenInBase } from './base-checks.js';
import type { CheckedBundle } from './check.js';
import { checkOutcomeReport } from './outcome-report.js';
import { isObject } from './quick/node.js';
import { subjectOf } from './resource-check.js';
import { schemaProblems } from './schema.js';
import { structureProblems } from './structure.js';

/**
 * Checks a transaction that puts outcomes on a server, as the gate checks that of a case: schema of
 * R4, structure, invariants of R4, and for the report the rules of its profile. What is in it is one
 * Measure and one report by this version of it, and nothing else: no record of a patient is checked
 * here, so none may pass.
 *
 * Source: FHIR R4 (4.0.1), Bundle, Measure, MeasureReport.measure; references, canonical versions.
 */
export function checkPublication(bundle: unknown): Checked<CheckedBundle> {
  const problems = problemsIn(bundle);
  return problems.length === 0 && isChecked(bundle) ? passed(bundle) : failed(problems);
}

/** Gives the brand: called only once every stage has passed. */
function isChecked(bundle: unknown): bundle is CheckedBundle {
  return isObject(bundle);
}

function problemsIn(bundle: unknown): readonly Problem[] {
  const malformed = schemaProblems(bundle);
  if (malformed.length > 0) return malformed;
  const hollow = structureProblems(bundle);
  if (hollow.length > 0) return hollow;
  const entries = isObject(bundle) && Array.isArray(bundle['entry']) ? bundle['entry'] : [];
  const [measure, report, ...others] = entries.map((entry: unknown) =>
    isObject(entry) ? entry['resource'] : undefined,
  );
  if (!isOf(measure, 'Measure') || !isOf(report, 'MeasureReport') || others.length > 0) {
    return [WRONG_ENTRIES];
  }
  const checked = checkOutcomeReport(report);
  return [
    ...[subjectOf(bundle, ''), subjectOf(measure, '/entry/0/resource')]
      .flatMap(brokenInBase)
      .map(({ problem }) => problem),
    ...(checked.ok ? [] : checked.problems.map(inReport)),
    ...(report['measure'] === `${measure['url']}|${measure['version']}` ? [] : [OTHER_MEASURE]),
  ];
}

const isOf = (value: unknown, type: string): value is Readonly<Record<string, unknown>> =>
  isObject(value) && value['resourceType'] === type;

const inReport = (problem: Problem): Problem => ({
  ...problem,
  pointer: `/entry/1/resource${problem.pointer}`,
});

const WRONG_ENTRIES: Problem = {
  rule: 'publication-entries',
  pointer: '/entry',
  message: 'Outcomes are put on a server as a Measure and a report by it, and nothing beside.',
  expected: 'two entries: a Measure, then a MeasureReport',
};

const OTHER_MEASURE: Problem = {
  rule: 'publication-measure',
  pointer: '/entry/1/resource/measure',
  message: 'The report is by another Measure than the one that goes with it.',
  expected: 'url and version of the Measure of the first entry, with | between them',
};
