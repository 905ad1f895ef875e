import { ByteWriter, ParquetWriter } from 'hyparquet-writer';
import { type ParquetColumn, type ParquetRow, schemaOf, valuesOf } from './columns.js';
import { withTypedEmptyList } from './footer.js';

/** Few enough that one group takes some ten milliseconds, in which nothing else runs. */
const ROWS_PER_GROUP = 2000;

/**
 * Rows as a Parquet file, piece by piece: one piece a row group, and the footer as the last. No
 * more than a group and its bytes are held at once. A file without its footer is none, so nobody
 * takes a part for the whole.
 *
 * Source: Apache Parquet, File Format (row groups, footer).
 *
 * @throws InvariantError if a column cannot hold one of its values
 */
export async function* toParquet(
  columns: readonly ParquetColumn[],
  pages: AsyncIterable<readonly ParquetRow[]>,
): AsyncGenerator<Uint8Array> {
  const bytes = new ByteWriter();
  const file = new ParquetWriter({ writer: bytes, schema: schemaOf(columns) });
  for await (const rows of inGroups(pages)) {
    const columnData = columns.map((column) => ({
      name: column.name,
      data: valuesOf(column, rows),
      // Tells where the pages of a chunk lie; a chunk of so few rows has one.
      offsetIndex: false,
    }));
    await file.write({ columnData, rowGroupSize: rows.length });
    yield taken(bytes);
  }
  await file.finish();
  const footer = taken(bytes);
  yield file.num_rows === 0n ? withTypedEmptyList(footer) : footer;
}

async function* inGroups(
  pages: AsyncIterable<readonly ParquetRow[]>,
): AsyncGenerator<readonly ParquetRow[]> {
  let waiting: readonly ParquetRow[] = [];
  for await (const page of pages) {
    waiting = [...waiting, ...page];
    while (waiting.length >= ROWS_PER_GROUP) {
      yield waiting.slice(0, ROWS_PER_GROUP);
      waiting = waiting.slice(ROWS_PER_GROUP);
    }
  }
  if (waiting.length > 0) yield waiting;
}

/** What was written since the last time; `offset`, which places in the file refer to, goes on. */
function taken(bytes: ByteWriter): Uint8Array {
  const piece = bytes.getBytes().slice();
  bytes.index = 0;
  return piece;
}
