import { invariant } from '../kernel/index.js';
import { acrossNames } from './across-names.js';
import { levels, upAxis } from './axes.js';
import { group, mark, type Point, path, text } from './drawing.js';
import { type ChartText, emptyFigure, figure, type Plot } from './figure.js';
import type { Legend } from './legend.js';
import type { Markup } from './markup.js';
import { BLUE, INK, SECOND_INK } from './palette.table.js';
import { percentScale, place, type Scale } from './scale.js';
import { percentText, rangeText } from './words.js';

/** One period, or one group of cases. Shares are of 0 to 1. */
export type RatePoint = { readonly label: string } & (
  | {
      readonly kind: 'rate';
      readonly events: number;
      readonly of: number;
      readonly rate: number;
      readonly lower: number;
      readonly upper: number;
    }
  /** Numbers too small to show. */
  | { readonly kind: 'hidden' }
  /** Nobody to count. */
  | { readonly kind: 'none' }
);

/** A published value to compare with. */
export interface ReferenceLine {
  /** Share of 0 to 1. */
  readonly value: number;
  readonly says: string;
  readonly source: string;
}

export interface RateChart extends ChartText {
  /** Periods follow each other and are joined by a line; groups are not. */
  readonly points: readonly RatePoint[];
  readonly are: 'periods' | 'groups';
  /** What the interval is, as `95 % interval, Wilson score`. */
  readonly interval: string;
  readonly references: readonly ReferenceLine[];
  /** Whether the axis always ends at 100 %, or just above what is shown. */
  readonly axis: 'to-100' | 'to-highest';
}

/**
 * Rates with their intervals, in the order given, beside published values.
 *
 * @throws InvariantError when a share lies outside 0 to 1
 */
export function rateChart(chart: RateChart): Markup {
  if (!chart.points.some(({ kind }) => kind === 'rate')) {
    return emptyFigure(chart, 'No rate to draw: there is no case to count, or numbers are small.');
  }
  const names = acrossNames(chart.points.map(namesOf));
  return figure(chart, {
    description: described(chart),
    upTitle: 'Percentage of cases',
    acrossTitle: chart.are === 'periods' ? 'Period of the resection' : 'Group',
    labelRoom: names.height,
    body: (plot) => [...body(chart, plot), names.draw(plot)],
    legend: legendFor(chart),
    notes: notesOn(chart),
  });
}

function body(chart: RateChart, plot: Plot): readonly Markup[] {
  const up = percentScale(highest(chart), [plot.bottom, plot.top]);
  const slot = (plot.right - plot.left) / chart.points.length;
  const at = (i: number): number => plot.left + (i + 0.5) * slot;
  return [
    upAxis(plot, up, ' %'),
    levels(
      plot,
      up,
      chart.references.map(({ value }, i) => ({
        value: 100 * value,
        words: `${letter(i)} ${Number((100 * value).toFixed(1))} %`,
        colour: INK,
        dashes: '6 4',
        width: 1.25,
      })),
    ),
    ...(chart.are === 'periods' ? [joined(chart.points, at, up)] : []),
    group(
      'points',
      chart.points.flatMap((point, i) => pointAt(point, at(i), up, plot)),
    ),
  ];
}

function pointAt(point: RatePoint, x: number, up: Scale, plot: Plot): readonly Markup[] {
  if (point.kind !== 'rate') {
    return [text({ x, y: plot.bottom - 7 }, SIGNS[point.kind], { anchor: 'middle', size: 16 })];
  }
  const { rate, lower, upper } = point;
  invariant(
    0 <= lower && lower <= rate && rate <= upper && upper <= 1,
    'a rate is in its interval',
  );
  const [low, high] = [place(up, 100 * lower), place(up, 100 * upper)];
  const cap = (y: number): Markup =>
    path(
      [
        { x: x - 5, y },
        { x: x + 5, y },
      ],
      { colour: BLUE.colour },
    );
  return [
    path(
      [
        { x, y: low },
        { x, y: high },
      ],
      { colour: BLUE.colour },
    ),
    cap(low),
    cap(high),
    mark({ x, y: place(up, 100 * rate) }, BLUE, sentence(point)),
  ];
}

/** Lines between neighbours that both have a rate. */
function joined(points: readonly RatePoint[], at: (i: number) => number, up: Scale): Markup {
  const places = points.map((point, i): Point | undefined =>
    point.kind === 'rate' ? { x: at(i), y: place(up, 100 * point.rate) } : undefined,
  );
  return group(
    'joined',
    places.flatMap((here, i) => {
      const next = places[i + 1];
      const isGap = here === undefined || next === undefined;
      return isGap ? [] : [path([here, next], { colour: SECOND_INK, width: 1 })];
    }),
  );
}

function notesOn({ points, references }: RateChart): readonly string[] {
  const has = (kind: RatePoint['kind']): boolean => points.some((point) => point.kind === kind);
  return [
    ...references.map(({ says, source }, i) => `${letter(i)}: ${says}. Source: ${source}.`),
    ...(has('hidden') ? [`${SIGNS.hidden} small numbers, not shown.`] : []),
    ...(has('none') ? [`${SIGNS.none} no case to count.`] : []),
  ];
}

/** What stands at the foot of the chart where there is no rate. */
const SIGNS = { hidden: '×', none: '–' } as const;

function legendFor(chart: RateChart): readonly Legend[] {
  return [{ look: BLUE, shows: 'mark', words: `rate, with its ${chart.interval}` }];
}

const namesOf = (point: RatePoint): readonly [string, string] => [
  point.label,
  point.kind === 'rate' ? `n ${point.of}` : point.kind === 'hidden' ? 'not shown' : 'no case',
];

function highest({ axis, points, references }: RateChart): number {
  if (axis === 'to-100') return 100;
  const tops = points.flatMap((point) => (point.kind === 'rate' ? [point.upper] : []));
  return 100 * Math.max(...tops, ...references.map(({ value }) => value));
}

const letter = (i: number): string => String.fromCharCode(65 + i);

function described(chart: RateChart): string {
  const beside = chart.references.map(({ says }) => ` Compared with: ${says}.`).join('');
  const axis = chart.axis === 'to-100' ? 'from 0 to 100 %' : 'from 0 % to just above what it shows';
  return `Rates with ${chart.interval}; the axis runs ${axis}. ${chart.points
    .map((point) => `${sentence(point)}.`)
    .join(' ')}${beside}`;
}

function sentence(point: RatePoint): string {
  if (point.kind === 'hidden') return `${point.label}: small numbers, not shown`;
  if (point.kind === 'none') return `${point.label}: no case to count`;
  const rate = `${percentText(point.rate)} (${rangeText(point)})`;
  return `${point.label}: ${rate}, ${point.events} of ${point.of}`;
}
