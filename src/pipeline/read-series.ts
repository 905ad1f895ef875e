import type { Problem } from '../kernel/index.js';
import {
  type Asked,
  type CaseInOrder,
  cusumSeries,
  learningCurve,
  type OutcomeCounts,
  ranOver,
  SERIES,
  type SeriesName,
  speedSeries,
  toFunnel,
} from '../outcomes/index.js';
import type { FoundSeries, OtherAims, SeriesQuestion } from './outcomes-service.js';
import { type OutcomeDeps, policyOf, readOutcomes } from './read-outcomes.js';

/** Cases of one curve at most: it is read and drawn case by case. */
const MOST_CASES = 10_000;

/** One curve over the cases that are asked for. */
export async function readSeries(
  question: SeriesQuestion,
  deps: OutcomeDeps,
): Promise<FoundSeries> {
  const policy = policyOf(deps);
  switch (question.series) {
    case 'funnel': {
      const { by, indicator, target, ...asked } = question;
      const found = await readOutcomes({ ...asked, by: [by], interval: 'wilson' }, deps);
      if (found.kind === 'invalid') return found;
      const strata = found.report.cells.slice(1);
      const over = ranOver(question.filters);
      return { kind: 'found', series: toFunnel(strata, indicator, target, over) };
    }
    case 'speed': {
      const cases = policy.smallCells === 'hide' ? [] : await casesFor(question, deps);
      if (cases === undefined) return TOO_MANY;
      return { kind: 'found', series: speedSeries(cases, policy, ranOver(question.filters)) };
    }
    case 'learning-curve': {
      const cases = policy.smallCells === 'hide' ? [] : await casesFor(question, deps);
      if (cases === undefined) return TOO_MANY;
      const over = ranOver(question.filters);
      return { kind: 'found', series: learningCurve(cases, policy, question.blockSize, over) };
    }
    default: {
      const { series, aims, filters } = question;
      const problems = aimsProblems(series, aims);
      if (problems.length > 0) return { kind: 'invalid', problems };
      const cases = policy.smallCells === 'hide' ? [] : await casesFor(question, deps);
      if (cases === undefined) return TOO_MANY;
      return { kind: 'found', series: cusumSeries(cases, series, policy, { filters, aims }) };
    }
  }
}

const casesFor = (asked: Asked, { store }: OutcomeDeps) =>
  store.outcomes.read((counts) => casesInOrder(asked, counts));

/** @returns undefined when there are too many for a curve */
export async function casesInOrder(
  { filters, from, to }: Asked,
  counts: OutcomeCounts,
): Promise<readonly CaseInOrder[] | undefined> {
  const days = { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
  const cases = await counts.inOrder({ filters, ...days }, MOST_CASES + 1);
  return cases.length > MOST_CASES ? undefined : cases;
}

const TOO_MANY: FoundSeries = {
  kind: 'invalid',
  problems: [
    {
      rule: 'too-many-cases',
      pointer: '',
      message: 'A curve shows each case, and these are too many.',
      expected: `a period or filters that leave at most ${MOST_CASES} cases`,
    },
  ],
};

/** What the aims of a question and those of the table cannot be together. */
function aimsProblems(series: SeriesName, aims: OtherAims): readonly Problem[] {
  const { acceptable, unacceptable, alpha, beta } = { ...SERIES[series].aims, ...aims };
  return [
    ...(acceptable < unacceptable ? [] : [aimsProblem('unacceptable', `above ${acceptable}`)]),
    ...(alpha + beta < 1 ? [] : [aimsProblem('beta', 'below 1 together with alpha')]),
  ];
}

const aimsProblem = (name: string, expected: string): Problem => ({
  rule: 'aims-out-of-order',
  pointer: `/${name}`,
  message: 'These aims make no test.',
  expected,
});
