import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseCase, parsePathology } from '../../../src/contract/index.js';
import { problemsOf } from './sound-report.js';

const text = readFileSync('examples/pathology/colon-caecum.json', 'utf8');
const bytesOf = (sent: string): Uint8Array => new TextEncoder().encode(sent);

// Oracle: what was broken is known, because the test broke it.
describe('reading a report', () => {
  it('keeps every field as it was sent, and the decimals of 39.0', () => {
    const sent = text.replace('"longAxisMm": 39', '"longAxisMm": 39.0');
    expect(parsePathology(bytesOf(sent))).toEqual({
      ok: true,
      value: { fields: JSON.parse(text), decimals: { '/specimen/longAxisMm': 1 } },
    });
  });

  it('joins faults of the JSON, of shape, and contradictions of the sound fields', () => {
    const broken = text
      .replace('"revision": 1', '"revision": 1e400')
      .replace('"sizeMm": 31', '"sizeMm": 31, "sizeMm": 13')
      .replace('"EX-D-21"', '"EX-D-\\u0000"')
      .replace('"ly": "0"', '"ly": 0')
      .replace('"count": 3', '"count": 12')
      .replace('"pT1"', '"pTis"');
    expect(
      problemsOf(broken)
        .map(({ rule, pointer }) => `${rule} ${pointer}`)
        .sort(),
    ).toEqual(
      [
        'number-out-of-range /revision',
        'repeated-key /findings/sizeMm',
        'ill-formed-text /pathologist/value',
        'wrong-type /findings/ly',
        'budding-grade /findings/budding/grade',
        'CC-05 /findings/pT',
      ].sort(),
    );
  });

  it.each([
    ['"smDepthUm": 820', '"smDepthUm": 0.82', 'a whole number from 0 to 50000 (um)'],
    ['"sizeMm": 31', '"sizeMm": 0', 'a number above 0 and at most 1000 (mm)'],
    ['"status": "final"', '"status": "corrected"', 'one of: interim, final'],
    ['"depth": "sm"', '"depth": "sm1"', 'one of: ep, lpm, mm, m, sm, mp, X'],
    ['"tnmEdition": "8"', '"tnmEdition": 8', 'one of: 8, 9'],
  ])('says what would have been accepted instead of %s', (sent, by, expected) => {
    const problems = problemsOf(text.replace(sent, by));
    expect(problems.map((problem) => problem.expected)).toEqual([expected]);
  });

  it('takes no message of another kind, nor does a case take a report', () => {
    const esd = readFileSync('examples/cases/colon-caecum.json', 'utf8');
    expect(problemsOf(esd)).toContainEqual(
      expect.objectContaining({ rule: 'not-in-list', pointer: '/schema', expected: 'pathology/1' }),
    );
    const asCase = parseCase(bytesOf(text));
    expect(asCase.ok ? [] : asCase.problems).toContainEqual(
      expect.objectContaining({ rule: 'not-in-list', pointer: '/schema', expected: 'case/1' }),
    );
  });
});
