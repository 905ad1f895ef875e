import { invariant } from '../kernel/index.js';
import { group, LETTERS, type Point, text } from './drawing.js';
import { type Legend, legendOf } from './legend.js';
import { wrap, wrapInto } from './lettering.js';
import { element, type Markup, together } from './markup.js';
import { INK, PAPER, SECOND_INK } from './palette.table.js';

/** What every chart is told beside its data. */
export interface ChartText {
  /** Beginning of the ids inside; unlike that of any other chart of the page. */
  readonly id: string;
  readonly title: string;
  /** Sentences under the chart, each on a line of its own. */
  readonly caption?: readonly string[];
}

/** The rectangle between the axes. */
export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What a kind of chart gives to its frame. */
export interface Figure {
  /** The chart in words, for those who do not see it. */
  readonly description: string;
  readonly upTitle: string;
  readonly acrossTitle: string;
  /** Room between the axis and its title, for labels; absent: one row. */
  readonly labelRoom?: number;
  readonly body: (plot: Plot) => readonly Markup[];
  /** A part under the axis, from this height on, with what it takes. */
  readonly below?: {
    readonly height: number;
    readonly draw: (plot: Plot, y: number) => readonly Markup[];
  };
  readonly legend?: readonly Legend[];
  /** Further sentences of the caption. */
  readonly notes?: readonly string[];
}

/** Drawn for less than half the width of an A4 page: on 78 mm the smallest letters have 5.5 pt. */
const WIDTH = 500;
const MARGIN = 10;
const LEFT = 60;
const RIGHT = 388;
/** Width of the rectangle between the axes. */
export const PLOT_WIDTH = RIGHT - LEFT;
const PLOT_HEIGHT = 170;
const TITLE = 15;
const TITLE_ROW = 19;
const SMALL = 12.5;
const SMALL_ROW = 15;
const EMPTY_HEIGHT = 90;

/** Where the labels beside the plot begin, and how wide they may be. */
export const BESIDE = { left: RIGHT + 8, width: WIDTH - RIGHT - 12 } as const;

/**
 * One chart as SVG that stands alone or in a page: title and description for screen readers,
 * system fonts, no style sheet, no script and nothing from elsewhere.
 *
 * @throws InvariantError when the id is none
 */
export function figure(about: ChartText, drawn: Figure): Markup {
  invariant(/^[a-z][a-z0-9-]*$/.test(about.id), 'an id is lower-case letters, digits and hyphens');
  const titles = wrapInto(2, about.title, WIDTH - 2 * MARGIN, TITLE);
  const top = 34 + titles.length * TITLE_ROW;
  const plot = { left: LEFT, right: RIGHT, top, bottom: top + PLOT_HEIGHT };
  const acrossAt = plot.bottom + 22 + (drawn.labelRoom ?? ROW);
  const belowAt = acrossAt + 14;
  const legend = legendOf(drawn.legend ?? [], {
    left: LEFT,
    right: WIDTH - MARGIN,
    top: belowAt + (drawn.below?.height ?? 0),
  });
  const caption = captionOf([...(drawn.notes ?? []), ...(about.caption ?? [])], legend.bottom);
  return framed(about, drawn.description, caption.bottom + MARGIN, [
    titled(titles),
    text({ x: MARGIN, y: top - 13 }, drawn.upTitle, { colour: SECOND_INK }),
    ...drawn.body(plot),
    text({ x: (LEFT + RIGHT) / 2, y: acrossAt }, drawn.acrossTitle, {
      anchor: 'middle',
      colour: SECOND_INK,
    }),
    ...(drawn.below?.draw(plot, belowAt) ?? []),
    legend.drawn,
    caption.drawn,
  ]);
}

/** A chart without data, which says so. */
export function emptyFigure(about: ChartText, words: string): Markup {
  const titles = wrapInto(2, about.title, WIDTH - 2 * MARGIN, TITLE);
  const top = 14 + titles.length * TITLE_ROW;
  const middle = { x: WIDTH / 2, y: top + EMPTY_HEIGHT / 2 + 4 };
  const caption = captionOf(about.caption ?? [], top + EMPTY_HEIGHT + 4);
  return framed(about, words, caption.bottom + MARGIN, [
    titled(titles),
    element('rect', {
      x: MARGIN,
      y: top,
      width: WIDTH - 2 * MARGIN,
      height: EMPTY_HEIGHT,
      fill: 'none',
      stroke: SECOND_INK,
      'stroke-dasharray': '4 4',
    }),
    ...wrap(words, WIDTH - 4 * MARGIN, LETTERS).map((line, i, { length }) =>
      text({ ...middle, y: middle.y + (i - (length - 1) / 2) * ROW }, line, { anchor: 'middle' }),
    ),
    caption.drawn,
  ]);
}

const titled = (lines: readonly string[]): Markup =>
  group(
    'title',
    lines.map((line, i) =>
      text({ x: MARGIN, y: 22 + i * TITLE_ROW }, line, { size: TITLE, bold: true }),
    ),
  );

function framed(
  { id, title }: ChartText,
  description: string,
  height: number,
  content: readonly Markup[],
): Markup {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${Math.ceil(height)}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      lang: 'en',
      'font-family': 'system-ui, sans-serif',
    },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-desc` }, description),
    element('rect', { x: 0, y: 0, width: WIDTH, height: Math.ceil(height), fill: PAPER }),
    together(content),
  );
}

function captionOf(sentences: readonly string[], top: number) {
  const lines = sentences.flatMap((sentence) => wrap(sentence, WIDTH - 2 * MARGIN, SMALL));
  const at = (i: number): Point => ({ x: MARGIN, y: top + 16 + i * SMALL_ROW });
  return {
    bottom: top + 4 + lines.length * SMALL_ROW,
    drawn: group(
      'caption',
      lines.map((line, i) => text(at(i), line, { size: SMALL, colour: INK })),
    ),
  };
}

/** Height of one row of labels at an axis. */
export const ROW = LETTERS + 4;
