import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import { reviewFirstLook } from '../../../src/assessment/review/first-look.js';
import { reviewCase } from '../../../src/assessment/review/review-case.js';
import { DEFAULT_UNIT_SETTINGS, parseCase } from '../../../src/contract/index.js';

const read = parseCase(readFileSync('examples/cases/oesophagus-squamous.json'));
if (!read.ok) throw new Error('the examples are sound');
const { fields } = read.value;

const wound = (percent: number): Pick<Assessment, 'defectCircumference'> => ({
  defectCircumference: { kind: 'determined', value: { percent, from: 'operator' }, cites: [] },
});
const UNKNOWN: Pick<Assessment, 'defectCircumference'> = {
  defectCircumference: { kind: 'indeterminate', missing: ['/defect/circumferencePercent'] },
};

// Oracle: rule PC-46: more than 75 % and no look within 6 weeks; common practice, no source.
describe('the review of the first look at a wide wound of the oesophagus', () => {
  it.each([
    [wound(80), 7, 1],
    [wound(80), 'none', 1],
    [wound(80), 6, 0],
    [wound(75), 7, 0],
    [wound(80), undefined, 0],
    [UNKNOWN, 7, 0],
  ] as const)('of %j in %s weeks has %s remarks', (found, weeks, remarks) => {
    const told = reviewFirstLook(fields, found, weeks, DEFAULT_UNIT_SETTINGS);
    expect(told.map(({ check }) => check)).toEqual(Array(remarks).fill('PC-46'));
  });

  it('says nothing of what else the review finds', () => {
    const context = { firstLookWeeks: 7, defectPercent: 80 };
    const all = reviewCase(fields, context, DEFAULT_UNIT_SETTINGS).map(({ check }) => check);
    expect(all.length).toBeGreaterThan(1);
    expect(all).toContain('PC-46');
  });
});
