import { roundTo } from '../kernel/index.js';
import { type Content, element, type Markup } from './markup.js';
import { INK, type Look, PAPER, type Shape } from './palette.table.js';

/** A place in the view box. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Lettering {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly colour?: string;
  readonly bold?: boolean;
  /** Letters keep clear of lines that run behind them. */
  readonly halo?: boolean;
}

/** Height of letters that say values and names. */
export const LETTERS = 14;

/** One line of text; `at` is the foot of its letters. */
export function text(at: Point, words: string, lettering: Lettering = {}): Markup {
  const { size = LETTERS, anchor = 'start', colour = INK, bold, halo } = lettering;
  return element(
    'text',
    {
      x: at.x,
      y: at.y,
      'font-size': size,
      'font-weight': bold === true ? 'bold' : undefined,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      fill: colour,
      ...(halo === true ? HALO : {}),
    },
    words,
  );
}

const HALO = { stroke: PAPER, 'stroke-width': 4, 'paint-order': 'stroke' };

export interface Stroke {
  readonly colour: string;
  readonly width?: number;
  readonly dashes?: string | undefined;
}

/** A line through all points, in their order. */
export const path = (points: readonly Point[], stroke: Stroke): Markup =>
  element('path', {
    d: points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join(' '),
    fill: 'none',
    stroke: stroke.colour,
    'stroke-width': stroke.width ?? 1.5,
    'stroke-dasharray': stroke.dashes,
  });

/** The points of a staircase that holds each height until the next point. */
export const stairs = (points: readonly Point[]): readonly Point[] =>
  points.flatMap((point, i) => {
    const before = points[i - 1];
    return before === undefined ? [point] : [{ x: point.x, y: before.y }, point];
  });

/**
 * The mark of one observation, its centre at the place.
 *
 * @param named what a reader with a pointer is told; absent: nothing
 */
export function mark(at: Point, look: Look, named?: string): Markup {
  const title: readonly Content[] = named === undefined ? [] : [element('title', {}, named)];
  return element(
    'path',
    {
      d: OUTLINES[look.shape],
      transform: `translate(${short(at.x)} ${short(at.y)})`,
      fill: look.filled ? look.colour : PAPER,
      stroke: look.colour,
      'stroke-width': 1.75,
    },
    ...title,
  );
}

/** Pieces of one kind, which the name tells apart. */
export const group = (part: string, content: readonly Content[]): Markup =>
  element('g', { 'data-part': part }, ...content);

const OUTLINES: Readonly<Record<Shape, string>> = {
  circle: 'M-4.5 0A4.5 4.5 0 1 0 4.5 0A4.5 4.5 0 1 0 -4.5 0Z',
  square: 'M-4 -4H4V4H-4Z',
  triangle: 'M0 -5.5L5.5 4H-5.5Z',
  diamond: 'M0 -6L6 0L0 6L-6 0Z',
  cross: 'M-4.5 -4.5L4.5 4.5M-4.5 4.5L4.5 -4.5',
};

const short = (value: number): string => String(roundTo(value, 2));
