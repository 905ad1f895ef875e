import type {
  Benchmark,
  Definition,
  IndicatorId,
  IndicatorResult,
  OutcomeReport,
  ReportCell,
} from '../../outcomes/index.js';
import { element, type Markup } from '../markup.js';
import { type RatePoint, type ReferenceLine, rateChart } from '../rate-chart.js';
import { dimensionsText, shortText } from '../stratum-text.js';
import { organsText, percentText } from '../words.js';
import { boundedCells, intervalText, rateColumns } from './indicator-words.js';
import { judgedTable } from './judged-table.js';
import { citationText } from './sources.js';
import { type Row, tableOf } from './table.js';

/** Results of one period of the resection. */
export interface PeriodCell {
  /** As `2026 Q1`. */
  readonly label: string;
  readonly cell: ReportCell;
}

/** One table over all indicators, of all cases together. */
export function summaryTable(report: OutcomeReport): Markup {
  const { cells, definitions } = report;
  const all = cells.find(({ stratum }) => Object.keys(stratum).length === 0);
  return tableOf({
    caption: 'All cases together',
    columns: rateColumns('Indicator', report),
    parts: [
      {
        rows: definitions.map(({ id, title, good }) => ({
          head: `${title} (${good === 'high' ? 'more' : 'fewer'} is better)`,
          cells: cellsFor(all, id),
        })),
      },
    ],
  });
}

/** So many rows stand beside a chart on paper; a longer table goes over pages above its chart. */
const MOST_BESIDE = 20;

/** What one indicator counts, its table over groups and periods, and its chart over periods. */
export function indicatorSection(
  definition: Definition,
  report: OutcomeReport,
  periods: readonly PeriodCell[],
): Markup {
  const { id, title } = definition;
  return element(
    'section',
    { class: report.cells.length + periods.length > MOST_BESIDE ? undefined : 'beside whole' },
    element('h3', { id: `indicator-${id}` }, title),
    element('p', { class: 'lead' }, definitionText(definition)),
    resultsTable(definition, report, periods),
    ...(id === 'curative' ? [judgedTable(report)] : []),
    ...(periods.length === 0
      ? []
      : [element('figure', {}, ratesOver(definition, periods, report, 'periods'))]),
  );
}

function resultsTable(
  { id, title }: Definition,
  report: OutcomeReport,
  periods: readonly PeriodCell[],
): Markup {
  const { cells } = report;
  const isAll = (cell: ReportCell): boolean => Object.keys(cell.stratum).length === 0;
  const row = (head: string, cell: ReportCell): Row => ({
    head: cell.isRankable || isAll(cell) ? head : `${head} (too few cases to compare)`,
    cells: cellsFor(cell, id),
  });
  return tableOf({
    caption: title,
    columns: rateColumns('Cases', report),
    parts: [
      { rows: cells.filter(isAll).map((cell) => row('all cases', cell)) },
      {
        title: `By ${dimensionsText(report.query.by)}`,
        rows: cells
          .filter((cell) => !isAll(cell))
          .map((cell) => row(shortText(cell.stratum), cell)),
      },
      { title: 'By period', rows: periods.map(({ label, cell }) => row(label, cell)) },
    ],
  });
}

/**
 * The rates of one indicator over periods or groups. A published value of some organs is drawn
 * where all that is drawn is of these organs; elsewhere the caption says it.
 */
export function ratesOver(
  definition: Definition,
  cells: readonly PeriodCell[],
  report: OutcomeReport,
  are: 'periods' | 'groups',
): Markup {
  const { id, title, good, benchmarks } = definition;
  const organs = cells.map(({ cell }) => {
    const organ = cell.stratum.organ ?? report.query.filters.organ;
    return organ === undefined ? definition.organs : [organ];
  });
  const isDrawn = (benchmark: Benchmark): boolean => organs.every((each) => isOf(benchmark, each));
  return rateChart({
    id: `${are === 'periods' ? 'over-time' : 'by-group'}-${id.toLowerCase()}`,
    title: are === 'periods' ? `${title} over time` : title,
    points: cells.map(({ label, cell }) => pointOf(label, resultOf(cell, id))),
    are,
    interval: intervalText(report),
    references: benchmarks.filter(isDrawn).flatMap(referenceOf),
    caption: benchmarks.filter((benchmark) => !isDrawn(benchmark)).map(notDrawn),
    axis: good === 'high' ? 'to-100' : 'to-highest',
  });
}

function pointOf(label: string, result: IndicatorResult | undefined): RatePoint {
  if (result?.kind === 'suppressed') return { label, kind: 'hidden' };
  if (result?.kind !== 'rate') return { label, kind: 'none' };
  const { numerator: events, denominator: of, rate, interval } = result;
  return { label, kind: 'rate', events, of, rate, lower: interval.lower, upper: interval.upper };
}

function referenceOf({ says, atLeast, atMost, cites }: Benchmark): readonly ReferenceLine[] {
  const value = atLeast ?? atMost;
  if (value === undefined) return [];
  const bound = `${atLeast === undefined ? 'at most' : 'at least'} ${percentText(value)}`;
  const words = says.includes('%') ? says : `${says}: ${bound}`;
  return [{ value, says: words, source: cites.map(citationText).join('; ') }];
}

/** Whether a published value speaks of all cases of some organs; undefined: of any organ. */
const isOf = ({ organs }: Benchmark, counted: readonly string[] | undefined): boolean =>
  organs === undefined ||
  (counted?.every((organ) => organs.some((each) => each === organ)) ?? false);

const notDrawn = ({ says, organs }: Benchmark): string =>
  `Of ${organsText(organs)} alone, and not drawn beside other cases: ${says}.`;

/** What is counted, of what, in which time and without whom. */
function definitionText({ numerator, denominator, windowDays, exclusions }: Definition): string {
  const window = windowDays === undefined ? '' : ` Judged once ${windowDays} days are over.`;
  const without = exclusions.length === 0 ? '' : ` Not counted: ${exclusions.join('; ')}.`;
  return `Counts: ${numerator}. Out of: ${denominator}.${window}${without}`;
}

const resultOf = (cell: ReportCell | undefined, id: IndicatorId): IndicatorResult | undefined =>
  cell?.indicators.find((result) => result.id === id);

function cellsFor(cell: ReportCell | undefined, id: IndicatorId): Row['cells'] {
  const result = resultOf(cell, id);
  return result === undefined ? 'not in this report' : boundedCells(result);
}
