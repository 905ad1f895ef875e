type Cell = string | number | boolean | null | undefined;

/**
 * Rows as CSV with a header, for programs and spreadsheets. What a spreadsheet would run as a
 * formula gets an apostrophe before it; a number that begins with its sign is none.
 *
 * Source: RFC 4180 section 2 (CRLF, quoting); formula injection: common practice, no source.
 */
export const toCsv = (columns: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  csvRows([columns, ...rows]);

/** The same without a header, for what comes a page at a time. */
export const csvRows = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

function cellText(cell: Cell): string {
  if (typeof cell !== 'string') return cell === undefined || cell === null ? '' : String(cell);
  const harmless = /^[=+\-@\t\r\n\uff0b\uff0d\uff1d\uff20]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
