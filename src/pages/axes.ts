import { fixedText } from '../kernel/index.js';
import { group, LETTERS, path, text } from './drawing.js';
import { BESIDE, type Plot } from './figure.js';
import { shorten, spread } from './lettering.js';
import type { Markup } from './markup.js';
import { GRID, INK } from './palette.table.js';
import { place, type Scale } from './scale.js';

/** A value as an axis writes it, with the minus sign of print. */
export const axisText = (value: number, decimals: number): string =>
  fixedText(value, decimals).replace('-', '−');

/** The axis at the left, with a line of the grid at each tick. */
export function upAxis(plot: Plot, scale: Scale, unit = ''): Markup {
  return group(
    'up-axis',
    scale.ticks.flatMap((tick) => {
      const y = place(scale, tick);
      const isFoot = y === plot.bottom;
      return [
        across(plot, y, isFoot ? INK : GRID, isFoot ? 1.25 : 1),
        text({ x: plot.left - 9, y: y + 4.5 }, `${axisText(tick, scale.decimals)}${unit}`, {
          anchor: 'end',
        }),
      ];
    }),
  );
}

/** The axis at the foot, with numbers. */
export function acrossAxis(plot: Plot, scale: Scale): Markup {
  return group(
    'across-axis',
    scale.ticks.flatMap((tick) => {
      const x = place(scale, tick);
      return [
        path(
          [
            { x, y: plot.bottom },
            { x, y: plot.bottom + 5 },
          ],
          { colour: INK, width: 1.25 },
        ),
        text({ x, y: plot.bottom + 20 }, axisText(tick, scale.decimals), { anchor: 'middle' }),
      ];
    }),
  );
}

/** A line over the whole width, with a few words beside it. */
export interface Level {
  readonly value: number;
  readonly words: string;
  readonly colour: string;
  readonly dashes?: string | undefined;
  readonly width?: number;
}

/** Levels to compare with; their words keep clear of each other. */
export function levels(plot: Plot, scale: Scale, shown: readonly Level[]): Markup {
  const heights = shown.map(({ value }) => place(scale, value));
  const beside = spread(heights, LETTERS + 3, [plot.top, plot.bottom]);
  return group(
    'levels',
    shown.flatMap((level, i) => {
      const y = heights[i] ?? plot.bottom;
      return [
        across(plot, y, level.colour, level.width ?? 1.5, level.dashes),
        text(
          { x: BESIDE.left, y: (beside[i] ?? y) + 4.5 },
          shorten(level.words, BESIDE.width, LETTERS),
        ),
      ];
    }),
  );
}

const across = (plot: Plot, y: number, colour: string, width: number, dashes?: string): Markup =>
  path(
    [
      { x: plot.left, y },
      { x: plot.right, y },
    ],
    { colour, width, dashes },
  );
