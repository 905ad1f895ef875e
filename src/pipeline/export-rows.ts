import type { ParquetType } from '../parquet/index.js';
import type { CaseFacts } from '../record/index.js';
import { type ColumnText, EXPORT_COLUMNS, type ExportedFacts } from './export-columns.table.js';
import { keyed } from './naming.js';

export type ExportValue = string | number | boolean | null;

/** One case as it leaves, by the names of the columns; null: not told. */
export type ExportRow = Readonly<Record<string, ExportValue>>;

/** What every column of an export holds. */
export interface DataDictionary {
  readonly title: string;
  readonly description: string;
  readonly columns: readonly DictionaryColumn[];
}

interface DictionaryColumn extends ColumnText {
  readonly name: string;
  /** Type of the column in Parquet. */
  readonly parquet: ParquetType;
}

const ROW = 'row';

/** `lesionLongAxisMm` as `lesion_long_axis_mm`. */
const columnName = (fact: keyof ExportedFacts): string =>
  fact.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/** Names of the columns in their order. */
export const exportColumnNames = (): readonly string[] => [
  ROW,
  ...EXPORT_COLUMNS.map(([fact]) => columnName(fact)),
];

export const dataDictionary = (): DataDictionary => ({
  title: 'One row a case, for analysis',
  description:
    'Withdrawn cases are not among the rows. An empty cell, in NDJSON and Parquet null, was not ' +
    'told and never means "no". Before text that a spreadsheet would run CSV has an apostrophe; ' +
    'NDJSON and Parquet hold text as it is. No date is finer than a day. Pseudonyms are keyed for ' +
    'exports alone: they are the same in every export of a site and in no other answer.',
  columns: [
    column(ROW, { says: 'pseudonym of the case, made for exports alone', type: 'pseudonym' }),
    ...EXPORT_COLUMNS.map(([fact, text]) => column(columnName(fact), text)),
  ],
});

function column(name: string, { says, type, ...more }: ColumnText): DictionaryColumn {
  return { name, says, type, parquet: parquetTypeOf(type, more.whole), ...more };
}

function parquetTypeOf(type: ColumnText['type'], whole = false): ParquetType {
  switch (type) {
    case 'pseudonym':
    case 'word':
      return 'STRING';
    case 'day':
      return 'DATE';
    case 'number':
      return whole ? 'INT32' : 'DOUBLE';
    case 'boolean':
      return 'BOOLEAN';
  }
}

/** The facts of a case as they leave, under pseudonyms that nothing else has. */
export function toExportRow(facts: CaseFacts, secret: string): ExportRow {
  const { caseId, operator, unit } = facts;
  const renamed: CaseFacts = {
    ...facts,
    operator: keyed(secret, 'export-operator', { system: '', value: operator }),
    unit: unit === null ? null : keyed(secret, 'export-unit', { system: '', value: unit }),
  };
  return Object.fromEntries([
    [ROW, keyed(secret, 'export-row', { system: '', value: caseId })],
    ...EXPORT_COLUMNS.map(([fact]): [string, ExportValue] => [columnName(fact), renamed[fact]]),
  ]);
}
