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
  readonly columns: readonly (ColumnText & { readonly name: string })[];
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
    'Withdrawn cases are not among the rows. An empty cell, in NDJSON null, was not told and never ' +
    'means "no". No date is finer than a day. Pseudonyms are keyed for exports alone: they are the ' +
    'same in every export of a site and in no other answer.',
  columns: [
    { name: ROW, says: 'pseudonym of the case, made for exports alone', type: 'pseudonym' },
    ...EXPORT_COLUMNS.map(([fact, text]) => ({ name: columnName(fact), ...text })),
  ],
});

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
