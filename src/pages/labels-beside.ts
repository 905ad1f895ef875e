import { group, LETTERS, type Point, text } from './drawing.js';
import type { Plot } from './figure.js';
import { approximateWidth, shorten } from './lettering.js';
import type { Markup } from './markup.js';

/** Words that belong to a mark. */
export interface PointLabel {
  readonly at: Point;
  readonly words: string;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const WIDEST = 150;
const MARK = 7;

/**
 * Labels at the side of their marks where they cover neither another mark nor another label.
 * One that finds no such place is left out: the description of the chart has them all.
 */
export function labelsBeside(
  plot: Plot,
  labels: readonly PointLabel[],
  marks: readonly Point[],
): Markup {
  const taken: Box[] = marks.map(({ x, y }) => boxAround(x - MARK, x + MARK, y - MARK, y + MARK));
  return group(
    'labels',
    labels.flatMap(({ at, words }) => {
      const shown = shorten(words, WIDEST, LETTERS);
      const width = approximateWidth(shown, LETTERS);
      const box = placesAround(at, width).find(
        (place) => isInside(place, plot) && !taken.some((other) => isOver(place, other)),
      );
      if (box === undefined) return [];
      taken.push(box);
      // The width is an estimate: words at the left of a mark end there, the others begin.
      const anchor = box.right <= at.x ? 'end' : 'start';
      const x = anchor === 'end' ? box.right : box.left;
      return [text({ x, y: box.bottom - 3 }, shown, { anchor, halo: true })];
    }),
  );
}

const boxAround = (left: number, right: number, top: number, bottom: number): Box => ({
  left,
  right,
  top,
  bottom,
});

function placesAround({ x, y }: Point, width: number): readonly Box[] {
  const half = (LETTERS + 3) / 2;
  const right = (middle: number) =>
    boxAround(x + MARK + 1, x + MARK + 1 + width, middle - half, middle + half);
  const left = (middle: number) =>
    boxAround(x - MARK - 1 - width, x - MARK - 1, middle - half, middle + half);
  return [0, 9, -9, 16, -16].flatMap((shift) => [right(y + shift), left(y + shift)]);
}

const isInside = (box: Box, plot: Plot): boolean =>
  box.left >= plot.left + 2 &&
  box.right <= plot.right &&
  box.top >= plot.top - 8 &&
  box.bottom <= plot.bottom - 1;

const isOver = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
