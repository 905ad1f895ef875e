import type { ParquetWriter } from 'hyparquet-writer';
import { InvariantError } from '../kernel/index.js';

/** Types of columns by the names that the format gives them; each may hold nulls. */
export type ParquetType = 'STRING' | 'DATE' | 'INT32' | 'DOUBLE' | 'BOOLEAN';

export interface ParquetColumn {
  readonly name: string;
  readonly parquet: ParquetType;
}

export type Cell = string | number | boolean | null;
export type ParquetRow = Readonly<Record<string, Cell>>;

type Schema = ConstructorParameters<typeof ParquetWriter>[0]['schema'];
type Element = Omit<Schema[number], 'name'>;

/** The older `converted_type` stands beside the logical type for readers that know it alone. */
const ELEMENTS: { readonly [T in ParquetType]: Element } = {
  STRING: { type: 'BYTE_ARRAY', converted_type: 'UTF8', logical_type: { type: 'STRING' } },
  DATE: { type: 'INT32', converted_type: 'DATE', logical_type: { type: 'DATE' } },
  INT32: { type: 'INT32' },
  DOUBLE: { type: 'DOUBLE' },
  BOOLEAN: { type: 'BOOLEAN' },
};

const MS_PER_DAY = 86_400_000;

/** What is kept of a cell; undefined where the column cannot hold it. */
const KEPT: { readonly [T in ParquetType]: (cell: Exclude<Cell, null>) => Cell | undefined } = {
  STRING: (cell) => (typeof cell === 'string' ? cell : undefined),
  DATE: daysSince1970,
  INT32: (cell) => (typeof cell === 'number' && (cell | 0) === cell ? cell : undefined),
  DOUBLE: (cell) => (Number.isFinite(cell) ? cell : undefined),
  BOOLEAN: (cell) => (typeof cell === 'boolean' ? cell : undefined),
};

/**
 * A calendar day as the format keeps it: no zone, no time.
 *
 * Source: Apache Parquet, LogicalTypes, DATE (days from the Unix epoch); ECMA-262, Date Time
 * String Format (a day alone is read in UTC).
 */
function daysSince1970(cell: Exclude<Cell, null>): number | undefined {
  if (typeof cell !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(cell)) return undefined;
  const days = Date.parse(cell) / MS_PER_DAY;
  return Number.isInteger(days) ? days : undefined;
}

/** Root and columns in their order. Source: Apache Parquet, parquet.thrift, SchemaElement. */
export const schemaOf = (columns: readonly ParquetColumn[]): Schema => [
  { name: 'rows', num_children: columns.length },
  ...columns.map(({ name, parquet }) => ({
    ...ELEMENTS[parquet],
    name,
    repetition_type: 'OPTIONAL' as const,
  })),
];

/**
 * One column of some rows; a cell that a row does not have is null.
 *
 * @throws InvariantError which names the column, never the value, if the column cannot hold one
 */
export function valuesOf({ name, parquet }: ParquetColumn, rows: readonly ParquetRow[]): Cell[] {
  const keep = KEPT[parquet];
  return rows.map((row) => {
    const cell = row[name] ?? null;
    if (cell === null) return null;
    const kept = keep(cell);
    if (kept === undefined) throw new InvariantError(`${name} holds values of type ${parquet}`);
    return kept;
  });
}
