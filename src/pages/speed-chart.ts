import { fixedText } from '../kernel/index.js';
import { acrossAxis, levels, upAxis } from './axes.js';
import { group, mark, type Point } from './drawing.js';
import { type ChartText, emptyFigure, figure, type Plot } from './figure.js';
import type { Markup } from './markup.js';
import { INK, LOOKS, type Look } from './palette.table.js';
import { place, scaleOver } from './scale.js';
import { counted } from './words.js';

/** One dissection. */
export interface SpeedPoint {
  readonly areaCm2: number;
  readonly speedCm2PerH: number;
  /** What its mark tells apart, as the organ. */
  readonly group: string;
}

/** A published speed to compare with. */
export interface SpeedThreshold {
  readonly speedCm2PerH: number;
  readonly says: string;
  readonly source: string;
}

export interface SpeedChart extends ChartText {
  readonly points: readonly SpeedPoint[];
  /** Cases with both, of which the points are some; absent: the points are all. */
  readonly told?: number;
  readonly threshold?: SpeedThreshold;
  /** Cases without an area or a time: not on the chart. */
  readonly missing: number;
}

const OTHERS = 'other groups';

/** Speed of the dissection by the area of its specimen; the time is first incision to free. */
export function speedChart(chart: SpeedChart): Markup {
  if (chart.points.length === 0) {
    return emptyFigure(chart, 'No point to draw: no case has an area and a time.');
  }
  const looks = looksOf(chart.points);
  return figure(chart, {
    description: described(chart),
    upTitle: 'Speed, cm²/h',
    acrossTitle: 'Area of the specimen, cm²',
    body: (plot) => body(chart, plot, looks),
    legend: [...looks].map(([words, look]) => ({ look, shows: 'mark', words })),
    notes: notesOn(chart),
  });
}

function body(
  { points, threshold }: SpeedChart,
  plot: Plot,
  looks: ReadonlyMap<string, Look>,
): readonly Markup[] {
  const speeds = [...points, ...(threshold ? [threshold] : [])].map((at) => at.speedCm2PerH);
  const up = scaleOver({ from: 0, to: Math.max(...speeds) }, [plot.bottom, plot.top]);
  const widest = Math.max(...points.map(({ areaCm2 }) => areaCm2));
  const along = scaleOver({ from: 0, to: widest }, [plot.left, plot.right]);
  const at = (point: SpeedPoint): Point => ({
    x: place(along, point.areaCm2),
    y: place(up, point.speedCm2PerH),
  });
  return [
    upAxis(plot, up),
    acrossAxis(plot, along),
    levels(plot, up, threshold === undefined ? [] : [levelOf(threshold)]),
    group(
      'points',
      points.map((point) => mark(at(point), lookOf(looks, point.group))),
    ),
  ];
}

const levelOf = ({ speedCm2PerH }: SpeedThreshold) => ({
  value: speedCm2PerH,
  words: `A ${speedCm2PerH} cm²/h`,
  colour: INK,
  dashes: '6 4',
});

/** A look a group in the order of appearance; groups beyond the looks share the last. */
function looksOf(points: readonly SpeedPoint[]): ReadonlyMap<string, Look> {
  const groups = [...new Set(points.map((point) => point.group))];
  const isTooMany = groups.length > LOOKS.length;
  const named = isTooMany ? [...groups.slice(0, LOOKS.length - 1), OTHERS] : groups;
  return new Map(
    named.flatMap((name, i) => {
      const look = LOOKS[i];
      // Outlines, so that marks which lie on each other are still seen.
      return look === undefined ? [] : [[name, { ...look, filled: false }] as const];
    }),
  );
}

const lookOf = (looks: ReadonlyMap<string, Look>, name: string): Look =>
  looks.get(name) ?? looks.get(OTHERS) ?? LAST;

const LAST: Look = { colour: INK, shape: 'cross', filled: false };

function notesOn({ points, told = points.length, threshold, missing }: SpeedChart) {
  return [
    'One mark is one dissection; its time is from the first incision to the specimen free.',
    ...(told === points.length
      ? []
      : [`Drawn: ${points.length} of ${told}, evenly chosen in the order of resection.`]),
    ...(threshold === undefined ? [] : [`A: ${threshold.says}. Source: ${threshold.source}.`]),
    ...(missing === 0 ? [] : [`Left out: ${counted(missing, 'case')} without an area or a time.`]),
  ];
}

function described({ points, told = points.length, threshold }: SpeedChart): string {
  const ends = (values: readonly number[]): string =>
    `${fixedText(Math.min(...values), 1)} to ${fixedText(Math.max(...values), 1)}`;
  const speeds = points.map((point) => point.speedCm2PerH);
  const areas = points.map(({ areaCm2 }) => areaCm2);
  const reaching = speeds.filter((speed) => threshold && speed >= threshold.speedCm2PerH).length;
  const level =
    threshold === undefined
      ? ''
      : ` ${reaching} of them reach ${threshold.speedCm2PerH} cm²/h (${threshold.says}).`;
  const drawn =
    told === points.length
      ? counted(points.length, 'dissection')
      : `${points.length} of ${counted(told, 'dissection')} are drawn,`;
  return (
    `${drawn} with areas of ${ends(areas)} cm² ` + `and speeds of ${ends(speeds)} cm²/h.${level}`
  );
}
