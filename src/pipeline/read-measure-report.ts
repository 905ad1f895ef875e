import { checkOutcomeReport } from '../conformance/index.js';
import { invariant, type Problem } from '../kernel/index.js';
import { toMeasureReport } from '../measure/index.js';
import { hiddenProblems } from '../outcomes/index.js';
import type { FoundMeasureReport, OutcomeQuestion } from './outcomes-service.js';
import { asOfToday, type OutcomeDeps, reportOf } from './read-outcomes.js';

/**
 * The outcomes of the unit as a MeasureReport, to be given to others. Small counts are hidden
 * whatever the unit shows to its own people; so is a period that would give them away.
 *
 * @param question of all cases, with both days of the period
 * @throws InvariantError when the report that is made breaks a rule: our bug
 */
export async function readMeasureReport(
  question: OutcomeQuestion,
  deps: OutcomeDeps,
): Promise<FoundMeasureReport> {
  const { unit } = deps.settings;
  const policy = { smallCells: 'hide', threshold: unit.smallCellThreshold } as const;
  const problems = [...incomplete(question), ...hiddenProblems(question, policy)];
  if (problems.length > 0) return { kind: 'invalid', problems };
  const report = toMeasureReport(
    await deps.store.outcomes.read((counts) => reportOf(asOfToday(question, deps), policy, counts)),
    { identifierBase: unit.identifierBase, name: unit.name, countedAt: deps.now() },
  );
  const checked = checkOutcomeReport(report);
  invariant(checked.ok, 'a report of outcomes passes every check');
  return { kind: 'found', report: checked.value };
}

function incomplete({ from, to, filters }: OutcomeQuestion): readonly Problem[] {
  const days = Object.entries({ from, to }).flatMap(([name, day]) =>
    day === undefined ? [dayNeeded(name)] : [],
  );
  const filtered = Object.entries(filters).flatMap(([name, value]: [string, string | undefined]) =>
    value === undefined ? [] : [ofAllCases(name)],
  );
  return [...days, ...filtered];
}

const dayNeeded = (name: string): Problem => ({
  rule: 'report-period',
  pointer: `/${name}`,
  message: 'A MeasureReport is of a period with both its days.',
  expected: 'the first day of a year as from, the last day of a year as to',
});

const ofAllCases = (name: string): Problem => ({
  rule: 'report-all-cases',
  pointer: `/${name}`,
  message: 'The Measure is about all cases: a filter would make it another one.',
  expected: 'no filter; by tells groups apart',
});
