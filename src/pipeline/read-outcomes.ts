import {
  type Asked,
  type Counted,
  countFollowUps,
  dimensionsOf,
  type FinestCells,
  type Hidden,
  hiddenIn,
  hiddenProblems,
  JUDGED_BY,
  judgedBy,
  judgedByOfAll,
  MEASURES,
  measuredCells,
  type OutcomeCounts,
  type OutcomeQuery,
  type OutcomeReport,
  type OutcomeStore,
  rollUp,
  type SmallCellPolicy,
  shownBut,
  toReport,
  withinAsked,
} from '../outcomes/index.js';
import type { FoundOutcomes, OutcomeQuestion } from './outcomes-service.js';
import type { PipelineSettings } from './settings.js';
import { type DayDeps, todayAt } from './today.js';

/** What reading outcomes needs of the world. */
export interface OutcomeDeps {
  readonly store: { readonly outcomes: OutcomeStore };
  readonly settings: PipelineSettings;
  /** The present, UTC instant. */
  readonly now: () => string;
}

export const policyOf = ({
  settings: { unit },
}: Pick<OutcomeDeps, 'settings'>): SmallCellPolicy => ({
  smallCells: unit.smallCells,
  threshold: unit.smallCellThreshold,
});

/** Rates, quartiles and follow-up of the cases that are asked for. */
export async function readOutcomes(
  question: OutcomeQuestion,
  deps: OutcomeDeps,
): Promise<FoundOutcomes> {
  const policy = policyOf(deps);
  const problems = hiddenProblems(question, policy);
  if (problems.length > 0) return { kind: 'invalid', problems };
  const query = asOfToday(question, deps);
  const report = await deps.store.outcomes.read((counts) => reportOf(query, policy, counts));
  return { kind: 'found', report };
}

export const asOfToday = (question: OutcomeQuestion, deps: DayDeps): OutcomeQuery => ({
  ...question,
  asOf: todayAt(deps),
});

export async function reportOf(
  query: OutcomeQuery,
  policy: SmallCellPolicy,
  counts: OutcomeCounts,
): Promise<OutcomeReport> {
  const counted = await countedFor(query, policy, counts);
  await othersTurn();
  if (policy.smallCells === 'show') return toReport(query, policy, counted);
  const hidden = await hiddenStepwise(query, policy, counted.cube);
  return toReport(query, policy, counted, shownBut(hidden, query, counted.cube));
}

/** What is hidden, found in steps: between them come the messages that wait meanwhile. */
export async function hiddenStepwise(
  query: OutcomeQuery,
  { threshold }: SmallCellPolicy,
  cube: FinestCells,
): Promise<Hidden> {
  const hidden = new Map<(typeof MEASURES)[number], ReadonlySet<string>>();
  for (const measure of MEASURES) {
    hidden.set(measure, hiddenIn(query, cube, threshold, measure));
    await othersTurn();
  }
  return hidden;
}

/** Messages that wait meanwhile come first. */
const othersTurn = (): Promise<void> => new Promise((goOn) => setImmediate(goOn));

/** Where small counts are hidden, every cell is looked at and what is asked is a part of them. */
async function countedFor(
  query: OutcomeQuery,
  policy: SmallCellPolicy,
  counts: OutcomeCounts,
): Promise<Counted> {
  const isHiding = policy.smallCells === 'hide';
  const dimensions = dimensionsOf(query);
  const cells = isHiding ? query.by : [...new Set([...query.by, ...JUDGED_BY])];
  const tally = await counts.tally(query, { cells, values: query.by });
  await othersTurn();
  const finest = isHiding
    ? await counts.cells(EVERYTHING, dimensions, hasPeriod(query))
    : tally.cells;
  const asked = isHiding ? withinAsked(finest, query) : finest;
  // Of a part of the cases neither is shown where small counts are hidden.
  const isCourseShown = !isHiding || isOfAll(query);
  return {
    ...measuredCells(asked, query.by, tally.values),
    cube: isHiding ? rollUp(finest, dimensions) : [],
    followUps: countFollowUps(isCourseShown ? tally.firstChecks : [], query.asOf),
    watched: isCourseShown ? tally.watched : [],
    judgedBy: isHiding
      ? judgedByOfAll(await counts.cells(EVERYTHING, JUDGED_BY, false), query, policy)
      : judgedBy(tally.cells),
  };
}

const isOfAll = (query: Asked): boolean =>
  !hasPeriod(query) && Object.keys(query.filters).length === 0;

export const EVERYTHING: Asked = { filters: {} };

const hasPeriod = ({ from, to }: Asked): boolean => from !== undefined || to !== undefined;
