import { describe, expect, it } from 'vitest';
import { InvariantError, passed } from '../../src/kernel/index.js';
import {
  answer,
  askScore,
  classRule,
  numberTold,
  type Rule,
  scoreRule,
  textTold,
} from '../../src/rules/index.js';
import { addUp } from '../../src/rules/points.js';
import { SAMPLE_QUANTITY, SAMPLE_SCORE, SAMPLE_SET } from './sample-rules.js';

const answerOf = (rule: Rule, document: unknown) => {
  const answered = answer(rule, document);
  return answered.ok ? answered.value : answered.problems;
};
const CITES = SAMPLE_SET.cites;

// The rules are invented; each answer is what a reader of their rows would write down.
describe('an answer in full', () => {
  it('of a class has its rows, with a reason only where a row gives one', () => {
    expect(answerOf(SAMPLE_SET, { sizeMm: 21, flat: true })).toStrictEqual({
      rule: 'sample-set',
      version: 1,
      population: 'Nobody.',
      answer: 'high',
      reasons: [{ row: 'large', says: 'Large.', cites: CITES }],
      missing: [],
      remarks: SAMPLE_SET.remarks,
    });
    const reasoned = classRule({
      ...SAMPLE_SET,
      reasonsShown: ['high'],
      table: SAMPLE_SET.table.map((step) =>
        step.map((row) => (row.row === 'large' ? { ...row, reason: 'size' } : row)),
      ),
    });
    expect(answerOf(reasoned, { sizeMm: 21 })).toStrictEqual({
      rule: 'sample-set',
      version: 1,
      population: 'Nobody.',
      answer: 'high;size',
      reasons: [{ row: 'large', reason: 'size', says: 'Large.', cites: CITES }],
      missing: [],
      remarks: [],
    });
  });

  it('of a class that is open has no reason, and names each missing field', () => {
    expect(answerOf(SAMPLE_SET, { flat: null })).toStrictEqual({
      rule: 'sample-set',
      version: 1,
      population: 'Nobody.',
      answer: 'indeterminate;missing=sizeMm,flat',
      reasons: [],
      missing: ['sizeMm', 'flat'],
      remarks: [],
    });
  });

  it('of a score has the items that counted with their points, and the rate of its group', () => {
    expect(answerOf(SAMPLE_SCORE, { sizeMm: 21 })).toStrictEqual({
      rule: 'sample-score',
      version: 1,
      population: 'Nobody.',
      answer: '2;high',
      reasons: [{ row: 'large', points: 2, says: 'L', cites: CITES }],
      missing: [],
      remarks: [],
    });
    expect(answerOf(SAMPLE_SCORE, { sizeMm: 20 })).toStrictEqual({
      rule: 'sample-score',
      version: 1,
      population: 'Nobody.',
      answer: '0;low;2',
      reasons: [],
      missing: [],
      rate: { says: 'bled', percent: 2 },
      remarks: [],
    });
  });

  it('of a score shows further figures of its group', () => {
    const figures = [{ says: 'lived', value: 99, unit: '%' }] as const;
    const rule = scoreRule({
      ...SAMPLE_SCORE,
      bands: SAMPLE_SCORE.bands.map((band) => ({ ...band, figures })),
    });
    expect(answerOf(rule, { sizeMm: 21 })).toStrictEqual({
      rule: 'sample-score',
      version: 1,
      population: 'Nobody.',
      answer: '2;high',
      reasons: [{ row: 'large', points: 2, says: 'L', cites: CITES }],
      missing: [],
      figures,
      remarks: [],
    });
  });

  it('of a quantity has its formula, or what it lacks', () => {
    const head = {
      rule: 'sample-quantity',
      version: 1,
      population: 'Nobody.',
      remarks: [],
    };
    expect(answerOf(SAMPLE_QUANTITY, { sizeMm: 2 })).toStrictEqual({
      ...head,
      answer: '4',
      reasons: [{ row: 'sample-quantity', says: 'size x 2', cites: CITES }],
      missing: [],
    });
    expect(answerOf(SAMPLE_QUANTITY, {})).toStrictEqual({
      ...head,
      answer: 'indeterminate;missing=sizeMm',
      reasons: [],
      missing: ['sizeMm'],
    });
  });

  it('names a missing part of a document once, by the name that people know', () => {
    const rule = { ...SAMPLE_SET, nameOf: () => 'lesion' };
    expect(answerOf(rule, { flat: null })).toMatchObject({
      answer: 'indeterminate;missing=lesion',
      missing: ['lesion'],
    });
  });

  it('is given in words where the rule has them, or names what these need', () => {
    const worded = (inWords: NonNullable<(typeof SAMPLE_SET)['inWords']>) =>
      answerOf({ ...SAMPLE_SET, inWords }, { sizeMm: 21 });
    expect(worded((found) => `it is ${found}`)).toMatchObject({ answer: 'it is high' });
    expect(worded(() => ({ missing: ['flat'] }))).toMatchObject({
      answer: 'indeterminate;missing=flat',
      reasons: [],
    });
  });

  it('refuses what the document itself cannot say', () => {
    const rule = { ...SAMPLE_QUANTITY, unfold: () => passed({ sizeMm: 'large' }) };
    expect(answerOf(rule, {})).toMatchObject([{ rule: 'wrong-type', pointer: '/sizeMm' }]);
  });
});

describe('a broken rule', () => {
  const from1 = SAMPLE_SCORE.bands.map((band) => ({ ...band, from: Math.max(1, band.from) }));

  it('has a total without a group, which is our own fault', () => {
    expect(() => askScore({ ...SAMPLE_SCORE, bands: from1 }, { sizeMm: 1 })).toThrow(
      InvariantError,
    );
    expect(askScore({ ...SAMPLE_SCORE, bands: [] }, { sizeMm: 1 })).not.toHaveProperty('band');
  });

  it('has a number with nothing to try out, which is our own fault', () => {
    const { items, fields } = SAMPLE_SCORE;
    expect(() => addUp(items, { fields, told: {}, samples: {} })).toThrow(InvariantError);
  });
});

describe('a value that was told', () => {
  const told = { sizeMm: 3, name: 'lpm', flat: null };

  it('is given as a number or a text', () => {
    expect(numberTold(told, 'sizeMm')).toBe(3);
    expect(textTold(told, 'name')).toBe('lpm');
  });

  it.each(['name', 'flat', 'depth'])('is no number in %s', (field) => {
    expect(() => numberTold(told, field)).toThrow(InvariantError);
  });

  it.each(['sizeMm', 'flat', 'depth'])('is no text in %s', (field) => {
    expect(() => textTold(told, field)).toThrow(InvariantError);
  });
});
