import { describe, expect, it } from 'vitest';
import { STRICTURE_BANDS } from '../../../src/assessment/stricture-risk.table.js';
import { answer } from '../../../src/rules/index.js';
import { disagreements, everyQuestion, shortAnswer } from '../scores/ask.js';

const SHARES = [0, 49.9, 50, 50.1, 51, 74, 74.9, 75, 75.1, 76, 99, 99.9, 100];

// Source: Kim GH et al. Clin Endosc 2014;47:516, abstract: more than 3/4 of the circumference;
// full and moderate from memory.
describe('stricture flag of bare fields, oesophagus', () => {
  const rule = STRICTURE_BANDS.oesophagus;
  interface Question {
    readonly defectCircumferencePercent: number;
  }
  const flag = ({ defectCircumferencePercent: share }: Question): string => {
    if (share >= 100) return 'full';
    if (share > 75) return 'high';
    return share > 50 ? 'moderate' : 'low';
  };
  const every = everyQuestion<Question>({ defectCircumferencePercent: SHARES });

  it('agrees with a second writing on both sides of every border', () => {
    expect(disagreements(rule, every, flag)).toEqual([]);
  });

  it('would be caught with three quarters counted as high', () => {
    const other = (q: Question) => (q.defectCircumferencePercent === 75 ? 'high' : flag(q));
    expect(disagreements(rule, every, other)).toEqual(['{"defectCircumferencePercent":75}']);
  });

  it('asks for the share alone, and shows the other factors beside the flag', () => {
    expect(shortAnswer(rule, {})).toBe('indeterminate;missing=defectCircumferencePercent');
    const document = {
      defectCircumferencePercent: 75,
      defectLengthMm: 30.1,
      upperOesophagus: true,
    };
    expect(answer(rule, document)).toMatchObject({
      value: {
        answer: 'moderate',
        remarks: [
          { remark: 'long-defect' },
          { remark: 'upper-oesophagus' },
          { remark: 'three-quarters-exactly' },
        ],
      },
    });
  });
});

// Source: Kim GH et al. Clin Endosc 2014;47:516: stomach, more than 3/4 and longer than 50 mm.
describe('stricture flag of bare fields, stomach', () => {
  const rule = STRICTURE_BANDS.stomach;
  interface Question {
    readonly defectCircumferencePercent: number;
    readonly defectLengthMm: number;
  }
  const every = everyQuestion<Question>({
    defectCircumferencePercent: SHARES,
    defectLengthMm: [1, 49, 50, 50.1, 51],
  });

  it('agrees with a second writing on both sides of every border', () => {
    const flag = ({ defectCircumferencePercent: share, defectLengthMm: length }: Question) =>
      share > 75 && length > 50 ? 'high' : 'low';
    expect(disagreements(rule, every, flag)).toEqual([]);
  });

  it.each([
    [{ defectCircumferencePercent: 80 }, 'indeterminate;missing=defectLengthMm'],
    [{ defectCircumferencePercent: 75 }, 'low'],
    [{ defectLengthMm: 50 }, 'low'],
    [{ defectLengthMm: 51 }, 'indeterminate;missing=defectCircumferencePercent'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(rule, document)).toBe(expected);
  });
});
