import { trimmedText } from '../kernel/index.js';
import type { LearningBlock, LearningCurve } from '../outcomes/index.js';
import { acrossAxis, levels, upAxis } from './axes.js';
import { group, mark, type Point, path } from './drawing.js';
import { type ChartText, emptyFigure, figure, type Plot } from './figure.js';
import type { Legend } from './legend.js';
import type { Markup } from './markup.js';
import { INK, LOOKS, type Look } from './palette.table.js';
import { citationText } from './report/sources.js';
import { percentScale, place, type Scale, scaleOver } from './scale.js';
import { counted, overText, percentText } from './words.js';

/** Which numbers of the blocks are drawn: shares and speeds have no axis in common. */
export type LearningForm = 'rates' | 'speed';

export interface LearningChart extends ChartText {
  readonly form: LearningForm;
  readonly curve: LearningCurve;
}

type Told = Exclude<keyof LearningBlock, 'fromCase' | 'toCase' | 'counts'>;

interface Line {
  readonly of: Told;
  readonly words: string;
  readonly look: Look | undefined;
}

const LINES: { readonly [F in LearningForm]: readonly Line[] } = {
  rates: [
    { of: 'enBlocRate', words: 'en bloc', look: LOOKS[0] },
    { of: 'r0Rate', words: 'R0', look: LOOKS[1] },
    { of: 'curativeRate', words: 'curative', look: LOOKS[2] },
  ],
  speed: [{ of: 'medianSpeedCm2PerH', words: 'median speed', look: LOOKS[0] }],
};

/** Block by block, each at its middle, beside the published levels of the same organs. */
export function learningChart(chart: LearningChart): Markup {
  const { form, curve } = chart;
  const isTold = curve.blocks.some((block) =>
    LINES[form].some(({ of }) => block[of] !== undefined),
  );
  if (!isTold) return emptyFigure(chart, 'No curve to draw: no case tells it.');
  return figure(chart, {
    description: described(chart),
    upTitle: form === 'rates' ? 'Percentage of cases' : 'Median speed, cm²/h',
    acrossTitle: `Case in the order of resection, in blocks of ${curve.blockSize}`,
    body: (plot) => body(chart, plot),
    legend: legendFor(form),
    notes: notesOn(chart),
  });
}

function body({ form, curve }: LearningChart, plot: Plot): readonly Markup[] {
  const up = upScale(form, curve, plot);
  const along = scaleOver({ from: 0, to: curve.cases, whole: true }, [plot.left, plot.right]);
  const height = (value: number): number => place(up, form === 'rates' ? 100 * value : value);
  const at = (block: LearningBlock, value: number): Point => ({
    x: place(along, (block.fromCase - 1 + block.toCase) / 2),
    y: height(value),
  });
  return [
    upAxis(plot, up, form === 'rates' ? ' %' : ''),
    acrossAxis(plot, along),
    levels(
      plot,
      up,
      drawnLevels(form, curve).map(({ atLeast }, i) => ({
        value: form === 'rates' ? 100 * atLeast : atLeast,
        words: `${letter(i)} ${valueText(form, atLeast)}`,
        colour: INK,
        dashes: '6 4',
        width: 1.25,
      })),
    ),
    ...LINES[form].map((line) => lineOf(line, form, curve.blocks, at)),
  ];
}

function upScale(form: LearningForm, curve: LearningCurve, plot: Plot): Scale {
  const pixels = [plot.bottom, plot.top] as const;
  if (form === 'rates') return percentScale(100, pixels);
  const speeds = curve.blocks.flatMap(({ medianSpeedCm2PerH: speed }) => speed ?? []);
  const shown = drawnLevels(form, curve).map(({ atLeast }) => atLeast);
  return scaleOver({ from: 0, to: Math.max(...speeds, ...shown) }, pixels);
}

/** Marks, joined where neighbours both tell the number. */
function lineOf(
  { of, words, look = LAST }: Line,
  form: LearningForm,
  blocks: readonly LearningBlock[],
  at: (block: LearningBlock, value: number) => Point,
): Markup {
  const places = blocks.map((block) => {
    const value = block[of];
    return value === undefined ? undefined : { block, value, at: at(block, value) };
  });
  const joins = places.flatMap((here, i) => {
    const next = places[i + 1];
    if (here === undefined || next === undefined) return [];
    return [path([here.at, next.at], { colour: look.colour, width: 2, dashes: look.dashes })];
  });
  const marks = places.flatMap((here) =>
    here === undefined
      ? []
      : [mark(here.at, look, `${casesText(here.block)}: ${words} ${toldOf(form, here.block, of)}`)],
  );
  return group('curve', [...joins, ...marks]);
}

const LAST: Look = { colour: INK, shape: 'cross', filled: false };

/** Levels of the same organs that this form can show. */
const drawnLevels = (form: LearningForm, { thresholds }: LearningCurve) =>
  thresholds.filter(({ of, isOfThese }) => isOfThese && LINES[form].some((line) => line.of === of));

const legendFor = (form: LearningForm): readonly Legend[] =>
  LINES[form].map(({ words, look = LAST }) => ({ look, shows: 'both', words }));

function notesOn({ form, curve }: LearningChart): readonly string[] {
  const last = curve.blocks.at(-1);
  const inLast = last === undefined ? 0 : last.toCase - last.fromCase + 1;
  return [
    `Cases: ${overText(curve.over)}. Each mark is one block; what nobody told is in none.`,
    ...(inLast === curve.blockSize ? [] : [`The last block has ${counted(inLast, 'case')}.`]),
    ...drawnLevels(form, curve).map(
      ({ says, cites }, i) =>
        `${letter(i)}: ${says}.${cites.map((cite) => ` Source: ${citationText(cite)}.`).join('')}`,
    ),
  ];
}

function described({ form, curve }: LearningChart): string {
  const blocks = curve.blocks.map((block) => {
    const told = LINES[form].flatMap(({ of, words }) => {
      const value = block[of];
      return value === undefined ? [] : [`${words} ${toldOf(form, block, of)}`];
    });
    return `${casesText(block)}: ${told.length === 0 ? 'not told' : told.join(', ')}.`;
  });
  const beside = drawnLevels(form, curve).map(({ says }) => `Compared with: ${says}.`);
  return [
    `Learning curve over ${counted(curve.cases, 'case')}: ${overText(curve.over)}.`,
    ...blocks,
    ...beside,
  ].join(' ');
}

/** A value with what it counts and its interval, where it is a rate. */
function toldOf(form: LearningForm, block: LearningBlock, of: Told): string {
  const value = valueText(form, block[of] ?? 0);
  const count = of === 'medianSpeedCm2PerH' ? undefined : block.counts[of];
  if (count === undefined) return value;
  const interval = `${percentText(count.lower)} to ${percentText(count.upper)}`;
  return `${value} (${count.events} of ${count.of}, 95 % interval ${interval})`;
}

const casesText = ({ fromCase, toCase }: LearningBlock): string => `Cases ${fromCase} to ${toCase}`;

const valueText = (form: LearningForm, value: number): string =>
  form === 'rates' ? percentText(value) : `${trimmedText(value, 1)} cm²/h`;

const letter = (i: number): string => String.fromCharCode(65 + i);
