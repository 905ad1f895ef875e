import { CAUTION } from '../../kernel/index.js';
import type { ComparedIndicator, Comparison } from '../../measure/index.js';
import type { FunnelPoint, IndicatorResult } from '../../outcomes/index.js';
import { funnelChart } from '../funnel-chart.js';
import { breakable, element, type Markup } from '../markup.js';
import { documentOf, type Page } from '../report/document.js';
import { intervalWords, rateCells } from '../report/indicator-words.js';
import { citationText } from '../report/sources.js';
import { type Row, tableOf } from '../report/table.js';

/** Rates of several units as one HTML document for screen and paper, without scripts. */
export function renderComparison(comparison: Comparison): Page {
  const { measure, period, units, interval, indicators, cautions } = comparison;
  const title = 'Outcomes of several units';
  const days = `${period.from} to ${period.to}`;
  return documentOf({
    title,
    foot: `${title}, resections ${days}`,
    header: element(
      'header',
      {},
      element('h1', {}, title),
      element(
        'dl',
        {},
        element('dt', {}, 'Resections'),
        element('dd', {}, `${days}, both included`),
        element('dt', {}, 'Definitions'),
        element('dd', {}, measure),
        ...(interval === undefined
          ? []
          : [element('dt', {}, 'Intervals'), element('dd', {}, intervalWords(interval))]),
        ...units.flatMap(({ unit, title: unitTitle, countedAt }) => [
          element('dt', {}, breakable(unitTitle)),
          element(
            'dd',
            {},
            `counted ${countedAt.slice(0, 10)}`,
            ...(unitTitle === unit ? [] : [' ', element('small', {}, unit)]),
          ),
        ]),
      ),
    ),
    content: [
      element(
        'div',
        { class: 'note' },
        element('ul', {}, ...[CAUTION, ...cautions].map((says) => element('li', {}, says))),
      ),
      ...indicators.map(section),
    ],
  });
}

function section(compared: ComparedIndicator): Markup {
  const { definition, units, funnel } = compared;
  const { id, title, numerator, denominator } = definition;
  return element(
    'section',
    { class: 'beside whole', 'aria-labelledby': `indicator-${id}` },
    element('h2', { id: `indicator-${id}` }, title),
    element('p', { class: 'lead' }, `Counts: ${numerator}. Out of: ${denominator}.`),
    tableOf({
      caption: `${title}, by unit`,
      columns: COLUMNS,
      parts: [
        {
          rows: units.map(({ unit, title: unitTitle, result }) => ({
            head: unitTitle === unit ? element('small', {}, breakable(unit)) : unitTitle,
            cells: cellsOf(result, positionOf(unitTitle, funnel.points)),
          })),
        },
      ],
    }),
    element('figure', {}, comparisonChart(compared)),
  );
}

/** The funnel of one indicator over the units. */
export const comparisonChart = ({ definition, funnel }: ComparedIndicator): Markup =>
  funnelChart({
    id: `funnel-${definition.id.toLowerCase()}`,
    title: `${definition.title}, by unit`,
    funnel,
    caption: funnel.cites.map((cite) => `Source: ${citationText(cite)}.`),
  });

const COLUMNS = [
  { title: 'Unit' },
  { title: 'Rate', isNumber: true },
  { title: 'Interval', isNumber: true },
  { title: 'Count', isNumber: true },
  { title: 'Out of (n)', isNumber: true },
  { title: 'Missing', isNumber: true },
  { title: 'Window open', isNumber: true },
  { title: 'Beside the limits' },
];

function cellsOf(result: IndicatorResult, position: string): Row['cells'] {
  const cells = rateCells(result);
  return typeof cells === 'string' ? cells : [...cells, position];
}

const POSITIONS: { readonly [P in FunnelPoint['position']]: string } = {
  within: 'within',
  'beyond-95': 'beyond 95 %',
  'beyond-998': 'beyond 99.8 %',
};

/** Where a unit lies in a funnel, in words; a unit of few cases is not drawn. */
function positionOf(title: string, points: readonly FunnelPoint[]): string {
  if (points.length < 2) return 'no other unit';
  const point = points.find(({ stratum }) => stratum.unit === title);
  return point === undefined ? 'too few cases' : POSITIONS[point.position];
}
