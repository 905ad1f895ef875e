import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { type MappingSettings, toBundle } from '../../src/mapping/index.js';
import type { Draft } from '../support/consistent-case.js';
import { explain, inputLeaves, type Tables } from './explain.js';
import { FIXED_SOURCES } from './fixed-sources.js';
import { EXAMPLES, find, generated, SETTINGS, versionOf } from './records.js';
import { FIELD_SOURCES, JOURNAL_ONLY } from './value-sources.js';

const HOW_MANY = 500;
const CASES = generated(HOW_MANY);
const TABLES: Tables = {
  fields: FIELD_SOURCES,
  fixed: FIXED_SOURCES,
  journalOnly: JOURNAL_ONLY,
};
const ALL_WELL = { lost: [], stray: [] };
const COMPLETE = EXAMPLES.find(({ name }) => name === 'complete.json')?.text ?? '';

function unexplained(
  text: string,
  change: (bundle: Bundle) => void = () => {},
  settings: MappingSettings = SETTINGS,
) {
  const version = versionOf(text);
  const bundle: Bundle = structuredClone(toBundle(version, settings));
  change(bundle);
  return explain(version, settings, bundle, TABLES);
}

describe('every value of a record comes from the case, and every field of the case is in it', () => {
  it.each(EXAMPLES)('$name', ({ text }) => {
    expect(unexplained(text)).toEqual(ALL_WELL);
  });

  it.each(EXAMPLES)('$name, for a site with a licence for all codes', ({ text }) => {
    const licensed = { ...SETTINGS, licences: { snomedCt: true } };
    expect(unexplained(text, () => {}, licensed)).toEqual(ALL_WELL);
    expect(checkBundle(toBundle(versionOf(text), licensed))).toMatchObject({ ok: true });
  });

  it(`${HOW_MANY} generated cases`, () => {
    const faults = CASES.flatMap(({ name, text }) => {
      const { lost, stray } = unexplained(text);
      return [...lost, ...stray].map((fault) => `${name}: ${fault}`);
    });
    expect(faults).toEqual([]);
  }, 120_000);

  it('is asked of every field that the contract has', () => {
    const told = new Set(
      CASES.flatMap(({ text }) => inputLeaves(JSON.parse(text)).map(({ pattern }) => pattern)),
    );
    const known = new Set([...FIELD_SOURCES, ...JOURNAL_ONLY].map(({ at }) => at));
    expect([...told].filter((pattern) => !known.has(pattern))).toEqual([]);
    expect([...known].filter((pattern) => !told.has(pattern))).toEqual([]);
  });
});

describe('the account of values rejects', () => {
  it('a stray value in a resource', () => {
    const { stray } = unexplained(COMPLETE, (bundle) => {
      find(bundle, 'Observation', 'lesion-description').component.push({
        code: find(bundle, 'Observation', 'gas').code,
        valueQuantity: { value: 1 },
      });
    });
    expect(stray.join()).toMatch(/^Observation lesion-description \S+\/valueQuantity\/value$/);
  });

  it.each<[string, (bundle: Bundle) => void]>([
    ['a number', (b) => (find(b, 'Observation', 'trainee-part').valueQuantity.value = 99)],
    ['a unit', (b) => (find(b, 'Observation', 'trainee-part').valueQuantity.code = 'mm')],
    ['a word', (b) => (find(b, 'Observation', 'gas').valueCodeableConcept.text = 'Air')],
    ['a date', (b) => (find(b, 'Condition', 'lesion').recordedDate = '2026-06-09')],
    ['a person', (b) => (find(b, 'Condition', 'lesion').recorder.identifier.value = 'EX-D-99')],
    ['a result', (b) => (find(b, 'Observation', 'specimen-area').valueQuantity.value += 0.001)],
    ['a status', (b) => (find(b, 'Procedure', '').status = 'unknown')],
    [
      'a sentence',
      (b) => {
        const { text } = find(b, 'Procedure', '');
        text.div = text.div.replace('en bloc', 'piecemeal');
      },
    ],
  ])('%s that differs', (_name, change) => {
    expect(unexplained(COMPLETE, change).stray).not.toEqual([]);
  });

  it.each([
    ['Observation', 'fibrosis', '/dissection/fibrosis'],
    ['Device', 'knife-needle', '/equipment/knives/0/kind'],
    ['Media', 'image.2', '/lesion/images/1/url'],
    ['MedicationStatement', 'aspirin', '/before/antithrombotics/1/decision'],
    ['MedicationAdministration', 'steroid-injection', '/safety/stricturePrevention/0/doseMg'],
  ])('the loss of %s %s', (type, key, pointer) => {
    const { lost } = unexplained(COMPLETE, (bundle) => {
      const gone = find(bundle, type, key);
      bundle.entry = (bundle.entry ?? []).filter(({ resource }) => resource !== gone);
    });
    expect(lost).toContain(pointer);
  });

  it('a table without one of its rows', () => {
    const version = versionOf(COMPLETE);
    const fields = FIELD_SOURCES.filter(({ at }) => at !== '/after/diet');
    const found = explain(version, SETTINGS, toBundle(version, SETTINGS), { ...TABLES, fields });
    expect(found.lost).toEqual(['/after/diet']);
    expect(found.stray.every((place: Draft) => place.startsWith('Observation diet '))).toBe(true);
    expect(found.stray).not.toEqual([]);
  });
});
