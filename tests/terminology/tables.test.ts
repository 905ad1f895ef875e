import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  conceptsTable,
  generateTerminology,
} from '../../scripts/terminology/generate-terminology.js';
import {
  type ConceptRow,
  type LocalCodeRow,
  readConceptRows,
  readLocalCodeRows,
} from '../../scripts/terminology/read-csv.js';

const root = new URL('../../', import.meta.url);

/** Rows that share a name within their set, letter case aside. */
function shared(rows: readonly LocalCodeRow[], column: 'code' | 'display'): readonly string[] {
  const names = rows.map((row) => `${row.set}#${row[column].toLowerCase()}`);
  return names.filter((name, i) => names.indexOf(name) !== i);
}

describe('local-codes.csv', () => {
  const rows = readLocalCodeRows();
  const twin: LocalCodeRow = {
    set: 'paris',
    code: '0-IS',
    display: 'PARIS 0-Is',
    definition: 'A second one.',
    source: 'planted',
  };

  it.each(['code', 'display'] as const)('gives no two codes of a set the same %s', (column) => {
    expect(shared(rows, column)).toEqual([]);
    expect(shared([...rows, twin], column)).toHaveLength(1);
  });

  it('fills every column, with trimmed text', () => {
    const faulty = rows.filter((row) =>
      Object.values(row).some((text) => text === '' || text !== text.trim()),
    );
    expect(faulty).toEqual([]);
  });

  it('writes sets as FHIR ids and codes as FHIR codes (R4 data types id and code)', () => {
    expect(rows.filter(({ set }) => !/^[A-Za-z0-9.-]{1,64}$/.test(set))).toEqual([]);
    expect(rows.filter(({ code }) => !/^\S+( \S+)*$/.test(code))).toEqual([]);
  });

  it('says of each code where it comes from, and only works that others can read', () => {
    expect(rows.filter(({ source }) => source.includes('shared/'))).toEqual([]);
  });
});

describe('concepts.csv', () => {
  const rows = readConceptRows();

  it('has known statuses only, and a code wherever one may be sent', () => {
    const known = ['verified-1', 'verified-2', 'none', 'memory-only'];
    expect(rows.filter(({ status }) => !known.includes(status))).toEqual([]);
    expect(rows.filter(({ status, code }) => (code === '') !== (status === 'none'))).toEqual([]);
  });

  it('names a local code that exists wherever no open code was found', () => {
    const local = readLocalCodeRows();
    const sets = new Set(local.map(({ set }) => set));
    const codes = new Set(local.map(({ set, code }) => `${set}#${code}`));
    const exists = (name: string): boolean =>
      name.startsWith('set ') ? sets.has(name.slice(4)) : codes.has(name);
    const named = rows
      .filter(({ status }) => status === 'none')
      .map(({ evidence }) => evidence.match(/local code: ([^;(]+)/)?.[1]?.trim() ?? evidence)
      .flatMap((names) => names.split(', '));
    expect(named.length).toBeGreaterThan(80);
    expect(named.filter((name) => !exists(name))).toEqual([]);
    expect(exists('paris#0-IV')).toBe(false);
  });

  it('still marks what was only remembered', () => {
    const remembered = rows.filter(({ status }) => status === 'memory-only');
    expect(remembered.map(({ code }) => code).sort()).toEqual(
      ['5-422.24', '5-433.24', '5-452.63', 'C9779', 'Z86.0'].sort(),
    );
  });
});

describe('the generated tables', () => {
  it('are those of the CSV files of today', async () => {
    for (const [path, content] of await generateTerminology()) {
      expect(readFileSync(new URL(path, root), 'utf8')).toBe(content);
    }
  });

  it('leave out what must not be sent', () => {
    const planted = (status: string): ConceptRow => ({
      key: `planted-${status}`,
      group: 'lesion',
      system: 'http://snomed.info/sct',
      version_note: '',
      code: '69695003',
      display: 'Planted',
      use: '',
      evidence: '',
      status,
    });
    const table = conceptsTable(['verified-1', 'none', 'memory-only', 'draft'].map(planted));
    expect(table.match(/planted-[\w-]+/g)).toEqual(['planted-verified-1']);
  });
});
