import { invariant } from '../kernel/index.js';
import type { Funnel, FunnelLimits, FunnelPoint } from '../outcomes/index.js';
import { acrossAxis, levels, upAxis } from './axes.js';
import { group, mark, type Point, path } from './drawing.js';
import { type ChartText, emptyFigure, figure, type Plot } from './figure.js';
import { labelsBeside } from './labels-beside.js';
import type { Legend } from './legend.js';
import type { Markup } from './markup.js';
import { BLUE, INK, type Look, SECOND_INK, VERMILLION } from './palette.table.js';
import { percentScale, place, type Scale, scaleOver } from './scale.js';
import { shortText, stratumText } from './stratum-text.js';
import { counted, organsText, percentText, rangeText } from './words.js';

/** What the chart needs of a funnel. */
export type FunnelShape = Pick<
  Funnel,
  'target' | 'targetIs' | 'points' | 'limits' | 'leftOut' | 'over'
>;

export interface FunnelChart extends ChartText {
  readonly funnel: FunnelShape;
}

/** Fewer observations than this are never drawn. Common practice, no source. */
const FEWEST_IN_FUNNEL = 10;

const LOOKS: { readonly [P in FunnelPoint['position']]: Look } = {
  within: { ...BLUE, filled: false },
  'beyond-95': { colour: VERMILLION.colour, shape: 'triangle', filled: true },
  'beyond-998': { colour: INK, shape: 'diamond', filled: true },
};
const LIMIT_95 = { colour: SECOND_INK, dashes: '5 4', width: 1.25 };
const LIMIT_998 = { colour: SECOND_INK, width: 1.25 };

/**
 * Rates by their number of cases between control limits. Only what lies beyond a limit is named,
 * and nothing is put in an order of merit.
 *
 * @throws InvariantError when a point has fewer than ten cases: the caller leaves them out
 */
export function funnelChart(chart: FunnelChart): Markup {
  const { points } = chart.funnel;
  const isTold = points.every(isDrawn);
  invariant(isTold, `a funnel has no point of fewer than ${FEWEST_IN_FUNNEL} cases`);
  if (points.length === 0) {
    return emptyFigure(chart, `No point to draw: none has ${FEWEST_IN_FUNNEL} cases to show.`);
  }
  return figure(chart, {
    description: described(chart.funnel),
    upTitle: 'Percentage of cases',
    acrossTitle: 'Number of cases',
    body: (plot) => body(chart.funnel, plot),
    legend: LEGEND,
    notes: notesOn(chart.funnel),
  });
}

function body(funnel: FunnelShape, plot: Plot): readonly Markup[] {
  const { points, limits, target } = funnel;
  const most = Math.max(...points.map(({ of }) => of), ...limits.map(({ of }) => of));
  const along = scaleOver({ from: 0, to: most + 1, whole: true }, [plot.left, plot.right]);
  const up = percentScale(highest(funnel), [plot.bottom, plot.top]);
  const at = ({ of, rate }: FunnelPoint): Point => ({
    x: place(along, of),
    y: place(up, 100 * rate),
  });
  const beyond = points.filter(({ position }) => position !== 'within');
  return [
    upAxis(plot, up, ' %'),
    acrossAxis(plot, along),
    group('limits', limitLines(limits.filter(isDrawn), along, up)),
    levels(plot, up, [
      { value: 100 * target, words: `target ${percentText(target)}`, colour: INK, width: 1 },
    ]),
    group(
      'points',
      points.map((point) => mark(at(point), LOOKS[point.position], sentence(point))),
    ),
    labelsBeside(
      plot,
      beyond.map((point) => ({ at: at(point), words: shortText(point.stratum) })),
      points.map(at),
    ),
  ];
}

const isDrawn = ({ of }: { readonly of: number }): boolean => of >= FEWEST_IN_FUNNEL;

function limitLines(limits: readonly FunnelLimits[], along: Scale, up: Scale): readonly Markup[] {
  const line = (key: Exclude<keyof FunnelLimits, 'of'>): readonly Point[] =>
    limits.map((at) => ({
      x: place(along, at.of),
      y: place(up, Math.min(up.to, 100 * at[key])),
    }));
  return [
    path(line('lower95'), LIMIT_95),
    path(line('upper95'), LIMIT_95),
    path(line('lower998'), LIMIT_998),
    path(line('upper998'), LIMIT_998),
  ];
}

/** Where the axis has to end: at the points and the limits from ten cases on. */
function highest({ points, limits, target }: FunnelShape): number {
  const drawn = limits.filter(isDrawn);
  const shares = [...points.map(({ rate }) => rate), ...drawn.map(({ upper998 }) => upper998)];
  return 100 * Math.max(target, ...shares);
}

const LEGEND: readonly Legend[] = [
  {
    look: { ...BLUE, dashes: LIMIT_95.dashes, colour: SECOND_INK },
    shows: 'line',
    words: '95 % limits',
  },
  { look: { ...BLUE, colour: SECOND_INK }, shows: 'line', words: '99.8 % limits' },
  { look: LOOKS.within, shows: 'mark', words: 'within the limits' },
  { look: LOOKS['beyond-95'], shows: 'mark', words: 'beyond the 95 % limits' },
  { look: LOOKS['beyond-998'], shows: 'mark', words: 'beyond the 99.8 % limits' },
];

function notesOn({ target, targetIs, leftOut, over }: FunnelShape): readonly string[] {
  const origin = targetIs === 'own-rate' ? 'the rate of all shown points together' : 'as given';
  return [
    `Target ${percentText(target)}, ${origin}. Exact binomial limits. The chart is no ranking: ` +
      'case mix is not taken into account.',
    `Cases: ${organsText(over.organs)}.`,
    ...(leftOut === 0
      ? []
      : [
          `Left out: ${counted(leftOut, 'group')} of fewer than ${FEWEST_IN_FUNNEL} cases or small numbers.`,
        ]),
  ];
}

const sentence = ({ stratum, rate, events, of }: FunnelPoint): string =>
  `${stratumText(stratum)}: ${percentText(rate)}, ${events} of ${of}`;

function described({ points, target, limits }: FunnelShape): string {
  const beyond = points.filter(({ position }) => position !== 'within');
  const last = limits.at(-1);
  const at =
    last === undefined
      ? ''
      : ` At ${last.of} cases the 95 % limits are ${rangeText({ lower: last.lower95, upper: last.upper95 })}.`;
  const named = beyond.map((point) => ` ${sentence(point)}, ${WORDS[point.position]}.`).join('');
  const lie = `${points.length - beyond.length} of ${counted(points.length, 'point')} within the limits`;
  return `Rates by number of cases around a target of ${percentText(target)}: ${lie}.${named}${at}`;
}

const WORDS: { readonly [P in FunnelPoint['position']]: string } = {
  within: 'within the limits',
  'beyond-95': 'beyond the 95 % limits',
  'beyond-998': 'beyond the 99.8 % limits',
};
