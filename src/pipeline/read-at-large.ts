import {
  countFollowUps,
  dimensionsOf,
  type FinestCells,
  type Hidden,
  hiddenProblems,
  NO_CASES,
  type OutcomeCounts,
  type OutcomeQuery,
  rollUp,
  type SmallCellPolicy,
  shownBut,
  toReport,
  withinAsked,
} from '../outcomes/index.js';
import { curvesOf } from './curves-of-report.js';
import type { FoundAtLarge, OutcomeQuestion, OutcomesAtLarge } from './outcomes-service.js';
import {
  asOfToday,
  EVERYTHING,
  hiddenStepwise,
  type OutcomeDeps,
  policyOf,
  reportOf,
} from './read-outcomes.js';

/** A report with its years and curves, all of one moment. */
export async function readOutcomesAtLarge(
  question: OutcomeQuestion,
  deps: OutcomeDeps,
): Promise<FoundAtLarge> {
  const policy = policyOf(deps);
  const problems = hiddenProblems(question, policy);
  if (problems.length > 0) return { kind: 'invalid', problems };
  const query = asOfToday(question, deps);
  const report = await deps.store.outcomes.read(async (counts): Promise<OutcomesAtLarge> => {
    const outcomes = await reportOf(query, policy, counts);
    return {
      title: 'Outcomes of endoscopic submucosal dissection',
      unit: { name: deps.settings.unit.name, identifier: deps.settings.unit.identifierBase },
      madeOn: query.asOf,
      curabilityRules: deps.settings.unit.curabilityRules,
      outcomes,
      periods: await yearsOf(query, policy, counts),
      series: await curvesOf(outcomes, policy, counts),
    };
  });
  return { kind: 'found', report };
}

async function yearsOf(
  query: OutcomeQuery,
  policy: SmallCellPolicy,
  counts: OutcomeCounts,
): Promise<OutcomesAtLarge['periods']> {
  const whole: OutcomeQuery = { ...query, by: [] };
  const probe = { ...whole, from: '2000-01-01', to: '2000-12-31' };
  if (hiddenProblems(probe, policy).length > 0) return [];
  const dimensions = dimensionsOf(whole);
  const isHiding = policy.smallCells === 'hide';
  const finest = isHiding
    ? await counts.cells(EVERYTHING, dimensions, true)
    : await counts.cells(whole, [], true);
  const cube = isHiding ? rollUp(finest, dimensions) : [];
  const asked = isHiding ? withinAsked(finest, whole) : finest;
  // Whichever year is asked for, the same cells of the cube are hidden.
  const hidden = isHiding ? await hiddenStepwise(probe, policy, cube) : undefined;
  return yearNames(asked).flatMap((year) => {
    const cell = cellOf(year, whole, policy, asked, cube, hidden);
    return cell === undefined ? [] : [{ label: year, cell }];
  });
}

const yearNames = (cells: FinestCells): readonly string[] =>
  [...new Set(cells.flatMap(({ year }) => (year === undefined ? [] : [year])))].sort();

function cellOf(
  year: string,
  whole: OutcomeQuery,
  policy: SmallCellPolicy,
  asked: FinestCells,
  cube: FinestCells,
  hidden: Hidden | undefined,
) {
  const ofYear = { ...whole, from: `${year}-01-01`, to: `${year}-12-31` };
  // These cells are of the question already; only the year is to be told apart.
  const [all] = rollUp(withinAsked(asked, { ...ofYear, filters: {} }), []);
  if (all === undefined) return undefined;
  const { quantities } = NO_CASES;
  const none = { strata: [], followUps: countFollowUps([], whole.asOf), watched: [], judgedBy: [] };
  const counted = { ...none, all: { ...all, quantities }, cube };
  const shown = hidden === undefined ? undefined : shownBut(hidden, ofYear, cube);
  return toReport(ofYear, policy, counted, shown).cells[0];
}
