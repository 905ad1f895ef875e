import type { MeasureReport } from 'fhir/r4.js';
import profile from '../../profiles/StructureDefinition-dr-outcome-report.json' with {
  type: 'json',
};
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';
import { brokenInBase } from './base-checks.js';
import { brokenBy, constraintsOf, type TestedRule, tested } from './own-invariants.js';
import { shapeRules } from './profile-shape.js';
import type { Profile } from './profiles.js';
import { isObject } from './quick/node.js';
import { type Broken, subjectOf } from './resource-check.js';
import { schemaProblems } from './schema.js';
import { structureProblems } from './structure.js';

const PROFILE: Profile = profile;

/** The rules of our own on a report of outcomes. */
export const OUTCOME_REPORT_RULES = constraintsOf(PROFILE);

/**
 * Checks a MeasureReport as the gate checks a Bundle: the schema of R4, the structure, the
 * invariants of R4 and our own, and what the profile demands beside; each stage with all its
 * problems at once, on what the one before has accepted. The profile is asked whether or not the
 * report claims it.
 *
 * @param report what was made here, or anything at all that another unit sent
 */
export function checkOutcomeReport(report: unknown): Checked<MeasureReport> {
  const problems = problemsIn(report);
  return problems.length === 0 && isChecked(report) ? passed(report) : failed(problems);
}

/** Gives the type: called only once every stage has passed. */
function isChecked(report: unknown): report is MeasureReport {
  return isObject(report);
}

function problemsIn(report: unknown): readonly Problem[] {
  const wrapped = { resourceType: 'Bundle', type: 'collection', entry: [{ resource: report }] };
  const malformed = schemaProblems(wrapped);
  if (malformed.length > 0) return malformed.map(unwrapped);
  const hollow = structureProblems(wrapped);
  if (hollow.length > 0) return hollow.map(unwrapped);
  const subject = subjectOf(report, '');
  const shape = brokenBy(rules().shape, subject);
  if (shape.length > 0) return shape.map(problemOf);
  return [...brokenInBase(subject), ...brokenBy(rules().own, subject)].map(problemOf);
}

const problemOf = ({ problem }: Broken): Problem => problem;

const WRAPPING = '/entry/0/resource';

const unwrapped = (problem: Problem): Problem =>
  problem.pointer.startsWith(WRAPPING)
    ? { ...problem, pointer: problem.pointer.slice(WRAPPING.length) }
    : problem;

let compiled: Readonly<Record<'shape' | 'own', readonly TestedRule[]>> | undefined;

/** Compiled when the first report comes. A report of another type has no shape of this one. */
function rules() {
  compiled ??= {
    shape: tested([IS_REPORT, ...shapeRules(PROFILE)]),
    own: tested(OUTCOME_REPORT_RULES),
  };
  return compiled;
}

const IS_REPORT = {
  key: 'profile-shape',
  severity: 'error',
  human: 'a MeasureReport',
  expression: '$this.is(MeasureReport)',
  context: 'MeasureReport',
} as const;
