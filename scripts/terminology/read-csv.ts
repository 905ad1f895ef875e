import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

const FOLDER = new URL('../../shared/terminology/', import.meta.url);

/** One code of an open or national code system, as `shared/terminology/concepts.csv` has it. */
export interface ConceptRow {
  readonly key: string;
  readonly group: string;
  readonly system: string;
  readonly version_note: string;
  readonly code: string;
  readonly display: string;
  readonly use: string;
  readonly evidence: string;
  readonly status: string;
}

/** One code of our own, as `shared/terminology/local-codes.csv` has it. */
export interface LocalCodeRow {
  readonly set: string;
  readonly code: string;
  readonly display: string;
  readonly definition: string;
  readonly source: string;
}

export const readConceptRows = (): readonly ConceptRow[] => parseCsv<ConceptRow>('concepts.csv');

export const readLocalCodeRows = (): readonly LocalCodeRow[] =>
  parseCsv<LocalCodeRow>('local-codes.csv');

/** @throws Error when a row has more or fewer fields than the first line has names */
function parseCsv<Row>(file: string): readonly Row[] {
  return parse<Row>(readFileSync(new URL(file, FOLDER), 'utf8'), { columns: true });
}
