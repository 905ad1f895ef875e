import { fixedText, toCsv, trimmedText } from '../kernel/index.js';
import type { ComparedIndicator, Comparison } from '../measure/index.js';
import type { FunnelPoint, IndicatorResult } from '../outcomes/index.js';
import { tableOf } from './table.js';
import { wrap } from './wrap.js';

/** Rates of units for people: a table an indicator. */
export function describeComparison(comparison: Comparison): string {
  const { measure, period, units, interval, indicators, cautions } = comparison;
  return [
    `Resections from ${period.from} to ${period.to}, by ${measure}`,
    ...(interval === undefined
      ? []
      : [`Intervals: ${trimmedText(100 * interval.level, 1)} %, ${interval.method}`]),
    ...units.map(({ unit, title, countedAt }) =>
      title === unit
        ? `  ${unit}, counted ${countedAt}`
        : `  ${title} (${unit}), counted ${countedAt}`,
    ),
    '',
    ...indicators.flatMap((compared) => [describe(compared), '']),
    wrap('', cautions.join(' ')),
  ].join('\n');
}

function describe({ definition, units, funnel }: ComparedIndicator): string {
  const { title, good } = definition;
  const rows = units.map(({ title: unit, result }) => [
    unit,
    ...cells(result),
    positionOf(unit, funnel.points),
  ]);
  const all = funnel.points.length < 2 ? '' : `; all shown together ${percent(funnel.target)}`;
  return [
    `${title} (a ${good === 'high' ? 'higher' : 'lower'} rate is better${all})`,
    tableOf(HEADER, rows, [1, 2, 3, 4, 5, 6]),
  ].join('\n');
}

const HEADER = [
  ...['unit', 'rate', 'interval', 'count', 'of', 'missing', 'open'],
  'between the limits of all',
];

function cells(result: IndicatorResult): readonly string[] {
  switch (result.kind) {
    case 'suppressed':
      return ['hidden', '', '', '', '', ''];
    case 'no-rate':
      return ['none', '', '', '0', String(result.missing), String(result.windowOpen)];
    case 'rate': {
      const { lower, upper } = result.interval;
      return [
        percent(result.rate),
        `${fixedText(100 * lower, 1)} to ${percent(upper)}`,
        ...[result.numerator, result.denominator, result.missing, result.windowOpen].map(String),
      ];
    }
  }
}

const percent = (share: number): string => `${fixedText(100 * share, 1)} %`;

const POSITIONS: { readonly [P in FunnelPoint['position']]: string } = {
  within: 'within',
  'beyond-95': 'beyond 95 %',
  'beyond-998': 'beyond 99.8 %',
};

function positionOf(unit: string, points: readonly FunnelPoint[]): string {
  if (points.length < 2) return 'no other unit';
  const point = points.find(({ stratum }) => stratum.unit === unit);
  return point === undefined ? 'not drawn' : POSITIONS[point.position];
}

/** One row for each indicator and unit; what is hidden is empty and says so. */
export function compareAsCsv({ period, indicators }: Comparison): string {
  const rows = indicators.flatMap(({ definition, units }) =>
    units.map(({ unit, result }) => [
      ...[period.from, period.to, definition.id, unit, result.kind],
      ...numbers(result),
    ]),
  );
  return toCsv(COLUMNS, rows);
}

const COLUMNS = [
  ...['from', 'to', 'indicator', 'unit', 'kind', 'numerator', 'denominator', 'missing'],
  ...['windowOpen', 'rate', 'lower', 'upper', 'level', 'method'],
];

/** As many as there are columns left. */
function numbers(result: IndicatorResult): readonly (string | number | undefined)[] {
  switch (result.kind) {
    case 'suppressed':
      return Array.from({ length: 9 }, () => undefined);
    case 'no-rate':
      return [
        ...[undefined, 0, result.missing, result.windowOpen],
        ...Array.from({ length: 5 }, () => undefined),
      ];
    case 'rate': {
      const { lower, upper, level, method } = result.interval;
      return [
        ...[result.numerator, result.denominator, result.missing, result.windowOpen],
        ...[result.rate, lower, upper].map((share) => trimmedText(share, 6)),
        level,
        method,
      ];
    }
  }
}
