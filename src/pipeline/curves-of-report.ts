import {
  type CaseInOrder,
  CURVE_ORGANS,
  cusumSeries,
  learningCurve,
  type OutcomeCounts,
  type OutcomeReport,
  type OutcomeSeries,
  type RanOver,
  ranOver,
  SERIES,
  type SeriesName,
  type SmallCellPolicy,
  speedSeries,
  TOO_MANY_CASES,
  toFunnel,
} from '../outcomes/index.js';
import type { OutcomesAtLarge } from './outcomes-service.js';
import { casesInOrder } from './read-series.js';

type Titled = OutcomesAtLarge['series'][number];

const CUSUMS: readonly SeriesName[] = ['cusum-en-bloc', 'cusum-r0', 'cusum-perforation'];
const IN_FUNNELS = ['enBloc', 'adverseEvent30d'] as const;

/**
 * Funnels of the groups; of all cases together curves, the speeds, and of one operator learning.
 * What is published for some organs has a curve over these organs alone.
 */
export async function curvesOf(
  report: OutcomeReport,
  policy: SmallCellPolicy,
  counts: OutcomeCounts,
): Promise<readonly Titled[]> {
  const { query } = report;
  const cases = policy.smallCells === 'hide' ? [] : await casesInOrder(query, counts);
  if (cases === undefined) {
    return [...funnelsOf(report), { title: 'Case by case', series: TOO_MANY_CASES }];
  }
  const cusums = CUSUMS.map((name) =>
    titled(
      `Case by case: ${SERIES[name].title}`,
      cusumSeries(cases, name, policy, { filters: query.filters, aims: {} }),
    ),
  );
  const overs = oversOf(report, cases);
  const learning = overs.map((over) =>
    titled('Learning curve', learningCurve(cases, policy, undefined, over)),
  );
  // Of all that is asked for, and once more where a published speed stands beside it.
  const speeds = overs
    .map((over) => titled('Speed against size', speedSeries(cases, policy, over)))
    .filter(({ series }, i) => i === 0 || (series.kind === 'speed' && series.level !== undefined));
  const isOfOne = query.filters.operator !== undefined;
  return [...funnelsOf(report), ...cusums, ...(isOfOne ? learning : []), ...speeds];
}

function funnelsOf({ query, cells, definitions }: OutcomeReport): readonly Titled[] {
  const strata = cells.slice(1);
  return IN_FUNNELS.flatMap((id) => {
    const title = definitions.find((each) => each.id === id)?.title ?? id;
    const series = toFunnel(strata, id, undefined, ranOver(query.filters));
    return strata.length === 0 ? [] : [{ title: `${title} of the groups`, series }];
  });
}

/** All cases that are asked for, then those of the organs of which something is published. */
function oversOf(
  { query: { filters } }: OutcomeReport,
  cases: readonly CaseInOrder[],
): readonly RanOver[] {
  if (filters.organ !== undefined) return [ranOver(filters)];
  const some = CURVE_ORGANS.filter((organs) =>
    cases.some(({ organ }) => organs.some((each) => each === organ)),
  );
  return [ranOver(filters), ...some.map((organs) => ranOver(filters, organs))];
}

/** The title with the organs, so that curves of several are told apart. */
function titled(title: string, series: OutcomeSeries): Titled {
  const { organs } = series.kind === 'hidden' ? {} : series.over;
  return { title: organs === undefined ? title : `${title}, ${organs.join(' and ')}`, series };
}
