import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readLocalCodeRows } from '../../scripts/terminology/read-csv.js';
import { HISTOLOGICAL_TYPES } from '../../src/contract/pathology/histological-types.table.js';
import * as pathology from '../../src/contract/pathology/words.table.js';
import * as contract from '../../src/contract/words.table.js';
import { type CodeRef, WORD_CODES } from '../../src/terminology/index.js';

const localCodes = new Set(readLocalCodeRows().map(({ set, code }) => `${set}#${code}`));

const EXPORTED: Readonly<Record<string, unknown>> = {
  ...contract,
  ...pathology,
  HISTOLOGICAL_TYPES,
};

/** What a unit chooses for itself: no case tells it, and no record holds it. */
const OF_THE_UNIT = ['STRICTURE_PROPHYLAXIS_READINGS', 'ANTITHROMBOTIC_EDITIONS', 'REVIEW_CHECKS'];

/** The status of a DiagnosticReport, which R4 codes itself. */
const OF_THE_REPORT = ['REPORT_STATUSES'];

/** The word lists of the contract; what it holds as objects stands there as lists as well. */
const LISTS = Object.entries(EXPORTED).flatMap(([name, words]) =>
  Array.isArray(words) && ![...OF_THE_UNIT, ...OF_THE_REPORT].includes(name)
    ? [{ name, words: words.map(String) }]
    : [],
);
const TABLES: readonly Readonly<Record<string, CodeRef>>[] = Object.values(WORD_CODES);

/** The tables that have a code for every word of a list. */
const tablesFor = (words: readonly string[]) =>
  TABLES.filter((table) => words.every((word) => Object.hasOwn(table, word)));

describe('codes of the words of the contract', () => {
  it('finds the lists of the contract', () => {
    expect(LISTS.length).toBeGreaterThan(50);
  });

  it.each(LISTS)('has a table with a code for every word of $name', ({ words }) => {
    expect(tablesFor(words)).not.toHaveLength(0);
  });

  it('leaves out only lists that a unit has in its settings', () => {
    const settings = readFileSync('src/contract/unit-settings.ts', 'utf8');
    for (const name of OF_THE_UNIT) {
      expect(EXPORTED).toHaveProperty(name);
      expect(settings).toContain(name);
    }
  });

  it('would notice a word without a code', () => {
    expect(tablesFor([...contract.PARIS_TYPES, '0-IV'])).toHaveLength(0);
  });

  it.each(Object.entries(WORD_CODES))('sends codes that are in their set for %s', (name, table) => {
    const refs: readonly CodeRef[] = Object.values(table);
    for (const { local, text } of refs) {
      expect(text).not.toBe('');
      if (name === 'sex') continue;
      expect(localCodes).toContain(`${local?.set}#${local?.code}`);
    }
  });

  it('tells the words of a list apart, by code or at least by text', () => {
    for (const { words } of LISTS) {
      for (const table of tablesFor(words)) {
        expect(new Set(words.map((word) => table[word]?.text)).size).toBe(words.length);
      }
    }
  });
});
