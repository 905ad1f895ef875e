import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessEvents } from '../../../src/assessment/index.js';
import { parseExamination } from '../../../src/contract/index.js';
import { caseOf } from './sample-events.js';

const EXAMPLE = JSON.parse(readFileSync('examples/examinations/stomach-first.json', 'utf8'));

function found(scar: object | undefined) {
  const bytes = new TextEncoder().encode(JSON.stringify({ ...EXAMPLE, scar }));
  const read = parseExamination(bytes);
  if (!read.ok) throw new Error(`the sample is sound: ${JSON.stringify(read.problems)}`);
  const { recurrences } = assessEvents(caseOf('stomach-differentiated'), [], [read.value.fields]);
  return recurrences[0];
}
const answer = (finding?: string, biopsy?: string): unknown => {
  const result = found({ seen: true, finding, biopsy })?.answer;
  return result?.kind === 'determined' ? result.value : result?.missing;
};

// Source: common practice, no source: tissue decides before the look of the scar.
describe('neoplasia at the scar', () => {
  const NEOPLASTIC = 'residual-or-recurrent-neoplasia';

  it.each([
    ['none', 'not-taken', 'no'],
    ['none', 'low-grade-dysplasia', 'yes'],
    ['inflammation', 'no-neoplasia', 'no'],
    ['inflammation', 'carcinoma', 'yes'],
    ['uncertain', 'not-taken', 'uncertain'],
    ['uncertain', 'no-neoplasia', 'no'],
    ['uncertain', 'indefinite', 'uncertain'],
    ['uncertain', 'high-grade-dysplasia', 'yes'],
    [NEOPLASTIC, 'pending', 'yes'],
    [NEOPLASTIC, 'not-assessable', 'yes'],
    [NEOPLASTIC, 'no-neoplasia', 'uncertain'],
    [NEOPLASTIC, 'serrated-without-dysplasia', 'uncertain'],
  ])('%s to the eye, tissue %s: %s', (finding, biopsy, expected) => {
    expect(answer(finding, biopsy)).toBe(expected);
  });

  it('is open without the fact that decides, and never read as absent', () => {
    expect(answer('none')).toEqual(['scar.biopsy']);
    expect(answer(undefined, 'no-neoplasia')).toEqual(['scar.finding']);
    expect(answer()).toEqual(['scar.finding', 'scar.biopsy']);
    expect(answer(undefined, 'carcinoma')).toBe('yes');
  });

  it('is open where the scar was not seen or is not told of', () => {
    for (const scar of [{ seen: false }, undefined]) {
      expect(found(scar)?.answer).toEqual({ kind: 'indeterminate', missing: ['scar.seen'] });
    }
  });

  it('may change while tissue waits', () => {
    expect(found({ seen: true, finding: 'none', biopsy: 'pending' })?.isPending).toBe(true);
    expect(found({ seen: true, finding: 'none', biopsy: 'not-taken' })?.isPending).toBe(false);
  });
});
