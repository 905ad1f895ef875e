import { DataType, type Field, tableFromIPC } from 'apache-arrow';
import { ParquetFile, readParquet } from 'parquet-wasm';

type Value = string | number | boolean | null;

export interface ReadParquet {
  /** Columns in their order, with their types as the reader sees them. */
  readonly columns: readonly (readonly [name: string, type: string])[];
  readonly rows: readonly Readonly<Record<string, Value>>[];
  /** Rows in each group. */
  readonly groups: readonly number[];
  readonly codecs: ReadonlySet<number>;
  /** Keys of what else the file tells of itself. */
  readonly keys: readonly string[];
}

/**
 * Reads a file with the Rust implementation of Apache Arrow and Parquet (in WebAssembly), which
 * shares nothing with the writer; days are given as YYYY-MM-DD.
 *
 * @throws whatever the reader does at a file that is none
 */
export async function readParquetFile(bytes: Uint8Array): Promise<ReadParquet> {
  const table = tableFromIPC(readParquet(bytes).intoIPCStream());
  const { fields } = table.schema;
  const metadata = (await ParquetFile.fromFile(new Blob([Buffer.from(bytes)]))).metadata();
  const groups = metadata.rowGroups();
  return {
    columns: fields.map(({ name, type }) => [name, String(type)]),
    rows: Array.from({ length: table.numRows }, (_, i) => {
      const row: Readonly<Record<string, unknown>> = table.get(i)?.toJSON() ?? {};
      return Object.fromEntries(fields.map((field) => [field.name, toValue(field, row)]));
    }),
    groups: groups.map((group) => group.numRows()),
    codecs: new Set(groups.flatMap((group) => group.columns().map((each) => each.compression()))),
    keys: [...metadata.fileMetadata().keyValueMetadata().keys()],
  };
}

/** How the reader names the types of the format. */
export const READ_AS = {
  STRING: 'Utf8',
  DATE: 'Date32<DAY>',
  INT32: 'Int32',
  DOUBLE: 'Float64',
  BOOLEAN: 'Bool',
} as const;

function toValue({ name, type }: Field, row: Readonly<Record<string, unknown>>): Value {
  const value = row[name];
  if (value === null) return null;
  if (typeof value === 'number' && DataType.isDate(type)) {
    return new Date(value).toISOString().slice(0, 10);
  }
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
    return value;
  }
  throw new TypeError(`${name} was read as ${typeof value}`);
}
