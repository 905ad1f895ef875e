import type { IndicatorResult, OutcomeReport } from '../../outcomes/index.js';
import { element, type Markup } from '../markup.js';
import { counted } from '../words.js';
import type { PeriodCell } from './indicator-section.js';
import type { TitledSeries } from './series-section.js';

interface Shown {
  readonly outcomes: OutcomeReport;
  readonly periods: readonly PeriodCell[];
  readonly series: readonly TitledSeries[];
}

/** What the numbers of a report do not hold, counted where it can be. */
export function leftOutList({ outcomes, periods, series }: Shown): Markup {
  const cells = [...outcomes.cells, ...periods.map(({ cell }) => cell)];
  const hidden = cells
    .flatMap(({ indicators, quantities }) => [...indicators, ...quantities])
    .filter(({ kind }) => kind === 'suppressed').length;
  const all = outcomes.cells.find(({ stratum }) => Object.keys(stratum).length === 0);
  const sentences = [
    'Cases that were withdrawn are in no count.',
    ...(hidden === 0
      ? []
      : [`${counted(hidden, 'result')} of tables and charts not shown: small numbers.`]),
    ...(all?.indicators ?? []).flatMap((result) => notCounted(result, outcomes)),
    ...series.flatMap(({ title, series }) =>
      series.kind === 'hidden' ? [`Curve: ${title}.`] : [],
    ),
  ];
  return element(
    'ul',
    { class: 'left-out' },
    ...sentences.map((sentence) => element('li', {}, sentence)),
  );
}

function notCounted(result: IndicatorResult, { definitions }: OutcomeReport): readonly string[] {
  if (result.kind === 'suppressed') return [];
  const { missing, windowOpen } = result;
  if (missing + windowOpen === 0) return [];
  const title = definitions.find(({ id }) => id === result.id)?.title ?? result.id;
  return [`${title}: ${missing} missing, ${windowOpen} with the window open.`];
}
