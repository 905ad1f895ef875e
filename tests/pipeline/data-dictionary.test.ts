import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { INDICATOR_IDS } from '../../src/outcomes/index.js';
import { toExportRow } from '../../src/pipeline/export-rows.js';
import { exportColumnNames } from '../../src/pipeline/index.js';
import { state } from '../store/samples.js';

const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const { facts } = state('case-1');
const dictionary: {
  readonly columns: readonly {
    readonly name: string;
    readonly says: string;
    readonly type: string;
    readonly parquet: string;
    readonly unit?: string;
    readonly whole?: true;
  }[];
} = JSON.parse(readFileSync('shared/data-dictionary.json', 'utf8'));

describe('the data dictionary that is shared', () => {
  it('names each column of an export, in its order, and no other', () => {
    const names = dictionary.columns.map(({ name }) => name);
    expect(names).toEqual(exportColumnNames());
    expect(Object.keys(toExportRow(facts, SECRET))).toEqual(names);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(INDICATOR_IDS.length + 30);
  });

  it('says something of each, and the unit of every number', () => {
    for (const { name, says, type, unit } of dictionary.columns) {
      expect(says.length, name).toBeGreaterThan(8);
      expect(unit !== undefined, name).toBe(type === 'number');
    }
  });

  it('names a type of Parquet for each column, by what it holds', () => {
    // Types: Apache Parquet, Types and LogicalTypes.
    const types = { pseudonym: 'STRING', word: 'STRING', day: 'DATE', boolean: 'BOOLEAN' };
    const expected = dictionary.columns.map(({ type, whole }) =>
      Object.hasOwn(types, type) ? Reflect.get(types, type) : whole ? 'INT32' : 'DOUBLE',
    );
    expect(dictionary.columns.map(({ parquet }) => parquet)).toEqual(expected);
    const whole = dictionary.columns.filter((each) => each.whole).map(({ name }) => name);
    expect(whole).toEqual(['pieces', 'pathology_days']);
    expect(new Set(expected).size).toBe(5);
  });

  it('has no column of an instant, a sender or a record', () => {
    const names = dictionary.columns.map(({ name }) => name);
    for (const name of names)
      expect(name).not.toMatch(/_at$|source|case_id|state$(?<!check_state)/);
  });
});

describe('a row that leaves', () => {
  it('has pseudonyms of its own, the same each time and others at another site', () => {
    const row = toExportRow(facts, SECRET);
    expect(toExportRow(facts, SECRET)).toEqual(row);
    expect(JSON.stringify(row)).not.toMatch(/case-1|op-1/);
    const elsewhere = toExportRow(facts, `${SECRET}!`);
    expect([elsewhere['row'], elsewhere['operator']]).not.toContain(row['row']);
    expect(elsewhere['operator']).not.toBe(row['operator']);
  });

  it('keeps the facts as they are, and says null where nothing was told', () => {
    expect(toExportRow(facts, SECRET)).toMatchObject({
      ...{ organ: facts.organ, lesion_long_axis_mm: facts.lesionLongAxisMm, fibrosis: null },
      ...{ en_bloc: facts.enBloc, bleeding6h30d: facts.bleeding6h30d },
    });
  });
});
