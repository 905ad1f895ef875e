import { fixedText } from '../kernel/index.js';
import type { CusumPoint, CusumSeries } from '../outcomes/index.js';
import { acrossAxis, axisText, levels, upAxis } from './axes.js';
import { group, mark, type Point, path } from './drawing.js';
import { type ChartText, emptyFigure, figure, type Plot } from './figure.js';
import type { Legend } from './legend.js';
import type { Markup } from './markup.js';
import { BLUE, INK, type Look, VERMILLION } from './palette.table.js';
import { place, scaleOver } from './scale.js';
import { counted, overText, percentText } from './words.js';

/** The two forms in which a curve of failures is summed up. */
export type CusumForm = 'simple' | 'sequential';

/** What the chart needs of a curve. */
export type CusumCurve = Pick<
  CusumSeries,
  'aims' | 'step' | 'lowerLimit' | 'upperLimit' | 'points' | 'missing' | 'over' | 'ofOtherOrgans'
>;

export interface CusumChart extends ChartText {
  readonly form: CusumForm;
  readonly curve: CusumCurve;
}

const FAILURE: Look = { colour: VERMILLION.colour, shape: 'triangle', filled: true };
const REACHED: Look = { colour: INK, shape: 'diamond', filled: false };

/** The curve of a learner, case by case: rising is worse. */
export function cusumChart(chart: CusumChart): Markup {
  const { points } = chart.curve;
  if (points.length === 0) return emptyFigure(chart, 'No curve to draw: no case has an answer.');
  return figure(chart, {
    description: described(chart),
    upTitle: 'Cumulative sum (rising is worse)',
    acrossTitle: 'Case in the order of resection',
    body: (plot) => body(chart, plot),
    legend: legendFor(chart),
    notes: notesOn(chart),
  });
}

function body({ form, curve }: CusumChart, plot: Plot): readonly Markup[] {
  const values = curve.points.map((point) => point[form]);
  const bounds = form === 'sequential' ? [curve.lowerLimit, curve.upperLimit] : [];
  const all = [0, ...values, ...bounds];
  const up = scaleOver({ from: Math.min(...all), to: Math.max(...all) }, [plot.bottom, plot.top]);
  const last = curve.points.at(-1)?.number ?? 1;
  const along = scaleOver({ from: 0, to: last, whole: true }, [plot.left, plot.right]);
  const at = (point: CusumPoint): Point => ({
    x: place(along, point.number),
    y: place(up, point[form]),
  });
  return [
    upAxis(plot, up),
    acrossAxis(plot, along),
    levels(plot, up, levelsOf(form, curve)),
    group('curve', curvesThrough(curve.points, at, { x: plot.left, y: place(up, 0) }, form)),
    group(
      'points',
      curve.points.flatMap((point) => marksOf(point, form, at(point))),
    ),
  ];
}

/** One line from zero to the end, or to each limit, after which the next begins at zero. */
function curvesThrough(
  points: readonly CusumPoint[],
  at: (point: CusumPoint) => Point,
  start: Point,
  form: CusumForm,
): readonly Markup[] {
  const runs: Point[][] = [[start]];
  for (const point of points) {
    runs.at(-1)?.push(at(point));
    const isReached = form === 'sequential' && point.reached !== undefined;
    if (isReached) runs.push([{ x: at(point).x, y: start.y }]);
  }
  return runs
    .filter(({ length }) => length > 1)
    .map((run) => path(run, { colour: BLUE.colour, width: 2 }));
}

function marksOf(point: CusumPoint, form: CusumForm, at: Point): readonly Markup[] {
  const named = `Case ${point.number}: ${point.failed ? 'failure' : 'success'}`;
  return [
    ...(point.failed ? [mark(at, FAILURE, named)] : []),
    ...(form === 'sequential' && point.reached !== undefined
      ? [mark(at, REACHED, `Case ${point.number}: limit reached, ${point.reached}`)]
      : []),
  ];
}

function levelsOf(form: CusumForm, { lowerLimit, upperLimit }: CusumCurve) {
  const zero = { value: 0, words: form === 'simple' ? 'on target' : '', colour: INK, width: 1 };
  if (form === 'simple') return [zero];
  return [
    zero,
    { value: upperLimit, words: `h1 ${axisText(upperLimit, 2)}`, colour: INK, dashes: '9 4' },
    { value: lowerLimit, words: `h0 ${axisText(lowerLimit, 2)}`, colour: INK, dashes: '3 3' },
  ];
}

function legendFor({ form, curve }: CusumChart): readonly Legend[] {
  const reached = form === 'sequential' && curve.points.some((point) => point.reached);
  return [
    { look: { ...BLUE, filled: false }, shows: 'line', words: 'cumulative sum' },
    { look: FAILURE, shows: 'mark', words: 'failure' },
    ...(reached
      ? [{ look: REACHED, shows: 'mark', words: 'limit reached, begins anew' } satisfies Legend]
      : []),
  ];
}

function notesOn({ form, curve }: CusumChart): readonly string[] {
  const { acceptable, unacceptable, alpha, beta } = curve.aims;
  const rates = `acceptable failure rate ${percentText(acceptable)}`;
  const cases = [
    `Cases: ${overText(curve.over)}.`,
    ...(curve.missing === 0
      ? []
      : [`Left out: ${counted(curve.missing, 'case')} without an answer.`]),
    ...(curve.ofOtherOrgans === 0
      ? []
      : [
          `Left out: ${counted(curve.ofOtherOrgans, 'case')} of other organs; the aims are not of them.`,
        ]),
  ];
  if (form === 'simple') {
    return [
      `Each failure adds 1 and every case takes off the ${rates}. This form has no limits.`,
      ...cases,
    ];
  }
  return [
    `Each success takes off ${fixedText(curve.step, 3)}, each failure adds ${fixedText(1 - curve.step, 3)}: ` +
      `${rates}, unacceptable ${percentText(unacceptable)}, risks of error ${percentText(alpha)} and ${percentText(beta)}.`,
    'At or above h1 the failure rate is unacceptable, at or below h0 acceptable; between them is no verdict.',
    ...cases,
  ];
}

function described({ form, curve }: CusumChart): string {
  const failures = curve.points.filter(({ failed }) => failed).length;
  const last = curve.points.at(-1);
  const end = last === undefined ? '' : ` It ends at ${axisText(last[form], 2)}.`;
  const reached = curve.points
    .filter(() => form === 'sequential')
    .flatMap(({ number, reached }) =>
      reached === undefined ? [] : [` The ${reached} limit was reached at case ${number}.`],
    );
  const cases = counted(curve.points.length, 'case');
  return `Cumulative sum over ${cases} (${overText(curve.over)}) with ${counted(failures, 'failure')}.${end}${reached.join('')}`;
}
