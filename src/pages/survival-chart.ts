import { invariant } from '../kernel/index.js';
import type { SurvivalCurve, SurvivalPoint } from '../outcomes/index.js';
import { acrossAxis, upAxis } from './axes.js';
import { group, LETTERS, type Point, path, stairs, text } from './drawing.js';
import { BESIDE, type ChartText, emptyFigure, figure, type Plot, ROW } from './figure.js';
import type { Legend } from './legend.js';
import { shorten } from './lettering.js';
import type { Markup } from './markup.js';
import { INK, LOOKS, type Look, SECOND_INK } from './palette.table.js';
import { percentScale, place, type Scale, scaleOver } from './scale.js';
import { counted, percentText, rangeText } from './words.js';

export interface SurvivalChart extends ChartText {
  /** One to five curves that are told apart. */
  readonly curves: readonly { readonly label: string; readonly curve: SurvivalCurve }[];
  /** What stays away, as `Without neoplasia at the scar`. */
  readonly upTitle: string;
}

/** Intervals of more curves than this would hide each other. */
const CURVES_WITH_INTERVAL = 2;
const MONTH_STEPS = [1, 2, 3, 6, 12, 24, 36, 60, 120];

/**
 * Share of lesions without the event over time, as Kaplan-Meier stairs, with the number of lesions
 * that were still watched under the axis.
 *
 * @throws InvariantError when there are more curves than looks
 */
export function survivalChart(chart: SurvivalChart): Markup {
  invariant(chart.curves.length <= LOOKS.length, `at most ${LOOKS.length} curves are told apart`);
  const curves = chart.curves.filter(({ curve }) => curve.points.length > 0);
  if (curves.length === 0) return emptyFigure(chart, 'No curve to draw: no lesion was checked.');
  return figure(chart, {
    description: described(curves),
    upTitle: chart.upTitle,
    acrossTitle: 'Months after the resection',
    body: (plot) => body(curves, plot),
    below: {
      height: 24 + curves.length * ROW,
      draw: (plot, y) => atRiskTable(curves, monthsOf(curves, plot), y),
    },
    legend: legendFor(curves),
    notes: notesOn(curves),
  });
}

type Curves = SurvivalChart['curves'];

function monthsOf(curves: Curves, plot: Plot): Scale {
  const months = curves.flatMap(({ curve }) => curve.points.map((point) => point.months));
  const extent = { from: 0, to: Math.max(1, ...months), steps: MONTH_STEPS };
  return scaleOver(extent, [plot.left, plot.right]);
}

/** Shares that all stay above this have an axis of their own; their steps were a line otherwise. */
const RARE_ABOVE_PERCENT = 80;

/**
 * From 0 to 100 %, or from just below the curves where events are rare; the notes then say so.
 *
 * Source: Pocock SJ, Clayton TC, Altman DG. Lancet 2002;359:1686-1689 (from memory): an axis that
 * suits how rare events are, and a break that shows.
 */
function upScale(curves: Curves, pixels: readonly [number, number]): Scale {
  const shown = curves.length <= CURVES_WITH_INTERVAL ? 'lower' : 'survival';
  const shares = curves.flatMap(({ curve: { points } }) => points.map((point) => point[shown]));
  const lowest = 100 * Math.min(...shares);
  return lowest > RARE_ABOVE_PERCENT && lowest < 100
    ? scaleOver({ from: lowest, to: 100 }, pixels)
    : percentScale(100, pixels);
}

function body(curves: Curves, plot: Plot): readonly Markup[] {
  const along = monthsOf(curves, plot);
  const up = upScale(curves, [plot.bottom, plot.top]);
  const line = (points: readonly SurvivalPoint[], key: 'survival' | 'lower' | 'upper') =>
    stairs([
      { x: place(along, 0), y: place(up, 100) },
      ...points.map((at) => ({ x: place(along, at.months), y: place(up, 100 * at[key]) })),
    ]);
  const hasIntervals = curves.length <= CURVES_WITH_INTERVAL;
  return [
    upAxis(plot, up, ' %'),
    acrossAxis(plot, along),
    ...curves.map(({ curve: { points } }, i) => {
      const look = lookAt(i);
      const thin = { colour: look.colour, width: 1, dashes: '1 3' };
      return group('curve', [
        ...(hasIntervals
          ? [path(line(points, 'lower'), thin), path(line(points, 'upper'), thin)]
          : []),
        path(line(points, 'survival'), { colour: look.colour, width: 2.25, dashes: look.dashes }),
        group(
          'censored',
          points.flatMap((at) => lastChecks(at, along, up)),
        ),
      ]);
    }),
  ];
}

/** A short stroke where lesions were checked for the last time. */
function lastChecks(point: SurvivalPoint, along: Scale, up: Scale): readonly Markup[] {
  if (point.censored === 0) return [];
  const at: Point = { x: place(along, point.months), y: place(up, 100 * point.survival) };
  return [
    path(
      [
        { ...at, y: at.y - 5 },
        { ...at, y: at.y + 5 },
      ],
      { colour: INK, width: 1.25 },
    ),
  ];
}

function atRiskTable(curves: Curves, along: Scale, top: number): readonly Markup[] {
  const row = (i: number): number => top + 14 + (i + 1) * ROW;
  const named = curves.length > 1;
  return [
    text({ x: 10, y: top + 14 }, 'Lesions still watched', { colour: SECOND_INK }),
    group(
      'at-risk',
      curves.flatMap(({ label, curve }, i) => [
        ...(named
          ? [text({ x: BESIDE.left + 12, y: row(i) }, shorten(label, BESIDE.width - 12, LETTERS))]
          : []),
        ...along.ticks.map((tick) =>
          text({ x: place(along, tick), y: row(i) }, atRiskAt(curve, tick), {
            anchor: 'middle',
          }),
        ),
      ]),
    ),
  ];
}

/** Lesions that were watched up to just before a time; a dash where the curve was cut before. */
function atRiskAt({ points, isCoarsened }: SurvivalCurve, months: number): string {
  const point = points.find((at) => at.months >= months);
  if (point !== undefined) return String(point.atRisk);
  return isCoarsened ? '–' : String(leftAfter(points.at(-1)));
}

const leftAfter = (last: SurvivalPoint | undefined): number =>
  last === undefined ? 0 : last.atRisk - last.events - last.censored;

const lookAt = (i: number): Look => {
  const look = LOOKS[i];
  invariant(look !== undefined, 'each curve has a look');
  return look;
};

const legendFor = (curves: Curves): readonly Legend[] =>
  curves.map(({ label }, i) => ({ look: lookAt(i), shows: 'line', words: label }));

function notesOn(curves: Curves): readonly string[] {
  const level = curves[0]?.curve.level ?? 0;
  const intervals =
    curves.length <= CURVES_WITH_INTERVAL
      ? `Dotted lines: ${Math.round(100 * level)} % interval.`
      : 'Intervals are left out, for they would hide each other.';
  const { from } = upScale(curves, [0, 1]);
  return [
    ...(from > 0 ? [`The axis begins at ${percentText(from / 100)}, not at 0.`] : []),
    `Kaplan-Meier estimate. Short strokes: lesions whose last check was then. ${intervals}`,
    ...(curves.some(({ curve }) => curve.isByMonth) ? ['Steps of one month are joined.'] : []),
    ...(curves.some(({ curve }) => curve.isCoarsened)
      ? ['Steps were joined or cut so that no small number shows.']
      : []),
  ];
}

function described(curves: Curves): string {
  const each = curves.map(({ label, curve }) => {
    const last = curve.points.at(-1);
    const end =
      last === undefined
        ? ''
        : `; at ${Math.round(last.months)} months ${percentText(last.survival)} (${rangeText(last)})`;
    const events = `${counted(curve.events, 'event')}${curve.isCoarsened ? ' shown' : ''}`;
    return `${label}: ${counted(curve.lesions, 'lesion')}, ${events}${end}.`;
  });
  return `Share of lesions without the event over time. ${each.join(' ')}`;
}
