import { buffer } from 'node:stream/consumers';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { type ParquetColumn, toParquet } from '../../src/parquet/index.js';
import { READ_AS, readParquetFile } from '../support/read-parquet.js';

type Row = Readonly<Record<string, string | number | boolean | null>>;

const COLUMNS: readonly ParquetColumn[] = [
  { name: 'words', parquet: 'STRING' },
  { name: 'on_day', parquet: 'DATE' },
  { name: 'pieces', parquet: 'INT32' },
  { name: 'axis_mm', parquet: 'DOUBLE' },
  { name: 'seen', parquet: 'BOOLEAN' },
];
const NULLS: Row = { words: null, on_day: null, pieces: null, axis_mm: null, seen: null };

async function* inPages(rows: readonly Row[], size = 500) {
  for (let at = 0; at < rows.length; at += size) yield rows.slice(at, at + size);
}
const fileOf = (rows: readonly Row[], columns = COLUMNS, size = 500) =>
  buffer(toParquet(columns, inPages(rows, size)));

/** 4,500 rows in which each column has values, repetitions and nulls of its own rhythm. */
const MANY: readonly Row[] = Array.from({ length: 4500 }, (_, i) => ({
  words: i % 7 === 0 ? null : i % 2 === 0 ? `case ${i}` : 'süß',
  on_day: i % 5 === 0 ? null : `20${10 + (i % 17)}-0${1 + (i % 9)}-1${i % 10}`,
  pieces: i % 3 === 0 ? null : i % 11,
  axis_mm: i % 4 === 0 ? null : i / 8,
  seen: i % 6 === 0 ? null : i % 2 === 0,
}));

/**
 * Oracle: the Rust implementation of Apache Parquet, which has nothing in common with the writer.
 * The types and what they keep: Apache Parquet, LogicalTypes.
 */
describe('rows as a Parquet file, read by another implementation', () => {
  it('are the same, value by value', async () => {
    const rows: readonly Row[] = [
      {
        words: 'Ösophagus, Größe ≥ 20 mm',
        on_day: '1970-01-01',
        pieces: 0,
        axis_mm: 0,
        seen: true,
      },
      { words: '胃 🙂 "a",\r\nb', on_day: '1969-12-31', pieces: -1, axis_mm: 0.1, seen: false },
      NULLS,
      { words: '', on_day: '2024-02-29', pieces: 2147483647, axis_mm: 5e-324, seen: true },
      { words: '=1+1', on_day: '9999-12-31', pieces: -2147483648, axis_mm: -0, seen: null },
      { words: 'null', on_day: '1582-10-04', pieces: 7, axis_mm: Number.MAX_VALUE, seen: false },
    ];
    const read = await readParquetFile(await fileOf(rows));
    expect(read.rows).toEqual(rows);
    expect(read.rows).not.toEqual(rows.with(2, { ...NULLS, words: '' }));
  });

  it('have the columns in their order, with their types', async () => {
    const { columns, keys } = await readParquetFile(await fileOf(MANY.slice(0, 3)));
    expect(columns).toEqual(COLUMNS.map(({ name, parquet }) => [name, READ_AS[parquet]]));
    expect(new Set(columns.map(([, type]) => type)).size).toBe(COLUMNS.length);
    expect(keys).toEqual([]);
  });

  it('can be none; their columns stand', async () => {
    const { rows, columns } = await readParquetFile(await fileOf([]));
    expect(rows).toEqual([]);
    expect(columns).toEqual(COLUMNS.map(({ name, parquet }) => [name, READ_AS[parquet]]));
  });

  it('keep what looks like the footer of an empty file', async () => {
    const looks = Uint8Array.of(0x16, 0x00, 0x19, 0x00, 0, 0, 0x40, 0x40);
    const axis = new DataView(looks.buffer).getFloat64(0, true);
    const file = await fileOf([{ ...NULLS, axis_mm: axis }]);
    expect((await readParquetFile(file)).rows).toEqual([{ ...NULLS, axis_mm: axis }]);
    // Once as the value, and as the least and the greatest of it.
    expect(
      Buffer.from(file).toString('latin1').split(Buffer.from(looks).toString('latin1')),
    ).toHaveLength(4);
  });

  it('can be nulls alone, also where a row has no such cell', async () => {
    const { rows } = await readParquetFile(await fileOf([NULLS, {}]));
    expect(rows).toEqual([NULLS, NULLS]);
  });

  it.each([1, 700, 2000, 4500])('stand in groups, in their order, of pages of %i', async (size) => {
    const { rows, groups } = await readParquetFile(await fileOf(MANY, COLUMNS, size));
    expect(groups).toEqual([2000, 2000, 500]);
    expect(rows).toEqual(MANY);
  });

  it('are the same whatever they hold', async () => {
    const day = fc
      .date({ min: new Date('1800-01-01'), max: new Date('2200-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    const row = fc.record({
      words: fc.option(fc.string({ unit: 'binary' })),
      on_day: fc.option(day),
      pieces: fc.option(fc.integer()),
      axis_mm: fc.option(fc.double({ noNaN: true, noDefaultInfinity: true })),
      seen: fc.option(fc.boolean()),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(row, { maxLength: 40 }), async (rows) => {
        expect((await readParquetFile(await fileOf(rows))).rows).toEqual(rows);
      }),
      { numRuns: 100 },
    );
  });

  it('are no file without the footer, or with another one', async () => {
    const file = await fileOf(MANY);
    const last: Uint8Array[] = [];
    for await (const piece of toParquet(COLUMNS, inPages(MANY))) last.push(piece);
    expect(last).toHaveLength(4);
    const groups = Buffer.concat(last.slice(0, 3));
    await expect(readParquetFile(groups)).rejects.toThrow();
    const footer = last[3] ?? new Uint8Array();
    await expect(readParquetFile(Buffer.concat([groups.subarray(1), footer]))).rejects.toThrow();
    expect(Buffer.concat(last)).toEqual(file);
  });
});

describe('writing a Parquet file', () => {
  it('reads no more of its rows than the group needs that is taken', async () => {
    let pages = 0;
    async function* source() {
      for (; pages < 9; pages += 1) yield MANY.slice(pages * 500, pages * 500 + 500);
    }
    const file = toParquet(COLUMNS, source());
    expect((await file.next()).value?.length).toBeGreaterThan(1000);
    expect(pages).toBe(3);
  });

  it('ends the reading of its rows where nobody takes more', async () => {
    let isOver = false;
    async function* source() {
      try {
        for (;;) yield MANY;
      } finally {
        isOver = true;
      }
    }
    const file = toParquet(COLUMNS, source());
    await file.next();
    await file.return(undefined);
    expect(isOver).toBe(true);
  });

  it.each([
    ['words', 4711.5],
    ['on_day', 'yesterday 4711.5'],
    ['on_day', '2026-13-01'],
    ['on_day', '2026-03-01T4711.5'],
    ['on_day', 20000],
    ['pieces', 4711.5],
    ['pieces', 2147483648],
    ['pieces', '4711.5'],
    ['axis_mm', Number.NaN],
    ['axis_mm', Number.POSITIVE_INFINITY],
    ['axis_mm', '4711.5'],
    ['seen', 'yes 4711.5'],
  ] as const)('refuses what %s cannot hold: %s; it names the column alone', async (name, value) => {
    const written = fileOf([{ ...NULLS, [name]: value }]);
    await expect(written).rejects.toThrow(InvariantError);
    await expect(written).rejects.toThrow(name);
    await expect(written).rejects.not.toThrow(/4711|2026|20000|2147|yes/);
  });
});
