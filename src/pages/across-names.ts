import { group, LETTERS, path, text } from './drawing.js';
import { type Plot, ROW } from './figure.js';
import { approximateWidth, shorten } from './lettering.js';
import type { Markup } from './markup.js';
import { INK, SECOND_INK } from './palette.table.js';

const WIDEST = 118;
const GAP = 8;

/** Names of places at equal distances, with a second line each; as many as there is room for. */
export function acrossNames(plot: Plot, names: readonly (readonly [string, string])[]): Markup {
  const slot = (plot.right - plot.left) / names.length;
  const widths = names.flat().map((name) => approximateWidth(name, LETTERS));
  const width = Math.min(WIDEST, Math.max(...widths));
  const every = Math.ceil((width + GAP) / slot);
  return group(
    'across-axis',
    names.flatMap(([name, below], i) => {
      const x = plot.left + (i + 0.5) * slot;
      const ticks = path(
        [
          { x, y: plot.bottom },
          { x, y: plot.bottom + 5 },
        ],
        { colour: INK, width: 1.25 },
      );
      if (i % every !== 0) return [ticks];
      const room = Math.max(width, every * slot - GAP);
      return [
        ticks,
        text({ x, y: plot.bottom + 20 }, shorten(name, room, LETTERS), { anchor: 'middle' }),
        text({ x, y: plot.bottom + 20 + ROW }, shorten(below, room, LETTERS), {
          anchor: 'middle',
          colour: SECOND_INK,
        }),
      ];
    }),
  );
}
