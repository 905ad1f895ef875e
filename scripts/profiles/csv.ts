/** @returns the rows of a CSV text (RFC 4180) as records by the names of its first row */
export function parseCsv(text: string): readonly Readonly<Record<string, string>>[] {
  const [header = [], ...rows] = rowsOf(text);
  return rows.map((row) => Object.fromEntries(header.map((name, i) => [name, row[i] ?? ''])));
}

function rowsOf(text: string): readonly (readonly string[])[] {
  const fields = text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g);
  const rows: string[][] = [[]];
  for (const [all, quoted, bare, end] of fields) {
    if (all === '') break;
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? bare ?? '');
    if (end !== ',') rows.push([]);
  }
  return rows.filter((row) => row.length > 1);
}
