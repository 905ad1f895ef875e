import { group, LETTERS, path, text } from './drawing.js';
import { PLOT_WIDTH, type Plot, ROW } from './figure.js';
import { approximateWidth, shorten, wrapInto } from './lettering.js';
import type { Markup } from './markup.js';
import { INK, SECOND_INK } from './palette.table.js';

/** Names under an axis, laid out before it is drawn. */
export interface AcrossNames {
  /** Height of all rows. */
  readonly height: number;
  readonly draw: (plot: Plot) => Markup;
}

const WIDEST = 118;
const GAP = 8;
const NAME_ROWS = 2;

/**
 * Names of places at equal distances, in up to two rows, with a remark under each. Where there is
 * no room for all, every second, third and so on is written.
 */
export function acrossNames(names: readonly (readonly [string, string])[]): AcrossNames {
  const slot = PLOT_WIDTH / names.length;
  const widths = names.flat().map((name) => approximateWidth(name, LETTERS));
  const every = Math.ceil((Math.min(WIDEST, Math.max(...widths)) + GAP) / slot);
  const room = every * slot - GAP;
  const written = names.map(([name, remark], i) =>
    i % every === 0
      ? { lines: wrapInto(NAME_ROWS, name, room, LETTERS), remark: shorten(remark, room, LETTERS) }
      : { lines: [], remark: '' },
  );
  const rows = Math.max(...written.map(({ lines }) => lines.length));
  return {
    height: (rows + 1) * ROW,
    draw: (plot) =>
      group(
        'across-axis',
        written.flatMap(({ lines, remark }, i) => {
          const x = plot.left + (i + 0.5) * slot;
          const at = (row: number) => ({ x, y: plot.bottom + 20 + row * ROW });
          return [
            path([at(-20 / ROW), { x, y: plot.bottom + 5 }], { colour: INK, width: 1.25 }),
            ...lines.map((line, row) => text(at(row), line, { anchor: 'middle' })),
            ...(remark === ''
              ? []
              : [text(at(rows), remark, { anchor: 'middle', colour: SECOND_INK })]),
          ];
        }),
      ),
  };
}
