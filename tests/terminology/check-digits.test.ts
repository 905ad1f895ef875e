import { describe, expect, it } from 'vitest';
import { readConceptRows } from '../../scripts/terminology/read-csv.js';

const codesOf = (uri: string): readonly string[] =>
  readConceptRows().flatMap(({ system, code }) => (system === uri ? [code] : []));

/** Multiplication in the dihedral group of order ten, as five rotations and five reflections. */
function product(a: number, b: number): number {
  if (a < 5) return b < 5 ? (a + b) % 5 : 5 + ((a + b - 5) % 5);
  return b < 5 ? 5 + ((a - 5 - b + 5) % 5) : (a - b + 5) % 5;
}

const PERMUTATION = [1, 5, 7, 6, 2, 8, 3, 0, 9, 4];

function permuted(digit: number, times: number): number {
  return times === 0 ? digit : permuted(PERMUTATION[digit] ?? Number.NaN, times - 1);
}

/** Source: SNOMED CT Technical Implementation Guide, appendix on the check-digit (Verhoeff). */
function hasVerhoeffDigit(digits: string): boolean {
  const sum = [...digits]
    .reverse()
    .reduce((total, digit, place) => product(total, permuted(Number(digit), place % 8)), 0);
  return sum === 0;
}

/**
 * Source: LOINC Users' Guide, appendix on the mod 10 check digit: the digits at odd places from
 * the right, read as a number, times two; put the other digits before it; add up all digits; what
 * is missing to the next ten is the check digit.
 */
function loincDigit(number: string): number {
  const fromRight = [...number].reverse();
  const odd = fromRight.filter((_digit, i) => i % 2 === 0).join('');
  const even = fromRight.filter((_digit, i) => i % 2 === 1).join('');
  const sum = [...`${even}${2 * Number(odd)}`].reduce((total, digit) => total + Number(digit), 0);
  return (10 - (sum % 10)) % 10;
}

function isLoinc(code: string): boolean {
  const [, number, digit] = code.match(/^(\d{1,7})-(\d)$/) ?? [];
  return number !== undefined && loincDigit(number) === Number(digit);
}

/** A SNOMED CT identifier of a concept: 6 to 18 digits, partition 00 or 10, check digit. */
const isConceptId = (code: string): boolean =>
  /^[1-9]\d{2,14}[01]0\d$/.test(code) && hasVerhoeffDigit(code);

describe('check digits of SNOMED CT', () => {
  it('follow the worked example of Verhoeff, 236 with check digit 3', () => {
    expect(hasVerhoeffDigit('2363')).toBe(true);
  });

  it('hold for every SNOMED CT code of the table', () => {
    const codes = codesOf('http://snomed.info/sct');
    expect(codes.length).toBeGreaterThan(200);
    expect(codes.filter((code) => !isConceptId(code))).toEqual([]);
  });

  it.each(['69695004', '69690503', '69695003000', 'abc'])('reject %s', (code) => {
    expect(isConceptId(code)).toBe(false);
  });
});

describe('check digits of LOINC', () => {
  it("follow the worked example of the Users' Guide, 12345-5 (recalled)", () => {
    expect(loincDigit('12345')).toBe(5);
  });

  it('hold for every LOINC code of the table', () => {
    const codes = codesOf('http://loinc.org');
    expect(codes.length).toBeGreaterThan(70);
    expect(codes.filter((code) => !isLoinc(code))).toEqual([]);
  });

  it.each(['28014-1', '11529-6', '18751', 'LP7839-6'])('reject %s', (code) => {
    expect(isLoinc(code)).toBe(false);
  });
});
