import { describe, expect, it } from 'vitest';
import { STRICTURE_BANDS } from '../../../src/assessment/stricture-risk.table.js';
import { answer } from '../../../src/rules/index.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from '../scores/ask.js';
import { type Defect, STRICTURE_OESOPHAGUS, STRICTURE_STOMACH } from './second-findings.js';

describe('stricture flag of bare fields, oesophagus', () => {
  const rule = STRICTURE_BANDS.oesophagus;
  const flag = STRICTURE_OESOPHAGUS.says;
  const every = everyQuestion(STRICTURE_OESOPHAGUS.choices);

  it('agrees with a second writing on both sides of every border', () => {
    expect(disagreements(rule, every, flag)).toEqual([]);
  });

  it('would be caught with three quarters counted as high', () => {
    const other = (q: Defect) => (q.defectCircumferencePercent === 75 ? 'high' : flag(q));
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

describe('stricture flag of bare fields, stomach', () => {
  const rule = STRICTURE_BANDS.stomach;

  it('agrees with a second writing on both sides of every border', () => {
    const every = everyQuestion(STRICTURE_STOMACH.choices);
    expect(disagreements(rule, every, STRICTURE_STOMACH.says)).toEqual([]);
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
