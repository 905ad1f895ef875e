/** A cell of a table; `paint` colours what was padded before. */
export interface PaintedCell {
  readonly text: string;
  readonly paint: (text: string) => string;
}

export type TableCell = string | PaintedCell;

/**
 * A table for people: each column as wide as its widest cell, two blanks between, none at the end
 * of a line.
 *
 * @param right columns that stand on the right, by index
 */
export function tableOf(
  header: readonly string[],
  rows: readonly (readonly TableCell[])[],
  right: readonly number[] = [],
): string {
  const widths = header.map((name, i) =>
    Math.max(name.length, ...rows.map((row) => textOf(row[i]).length)),
  );
  const line = (row: readonly TableCell[]): string =>
    row
      .map((cell, i) => {
        const isLast = i === row.length - 1;
        const width = widths[i] ?? 0;
        if (right.includes(i)) return painted(cell, textOf(cell).padStart(width));
        return painted(cell, isLast ? textOf(cell) : textOf(cell).padEnd(width));
      })
      .join('  ')
      .trimEnd();
  return [header, ...rows].map(line).join('\n');
}

const textOf = (cell: TableCell | undefined): string =>
  typeof cell === 'object' ? cell.text : (cell ?? '');

const painted = (cell: TableCell, text: string): string =>
  typeof cell === 'object' ? cell.paint(text) : text;
