import { describe, expect, it } from 'vitest';
import { KR_COLORECTAL_BLEEDING } from '../../../src/assessment/scores/kr-colorectal-bleeding.table.js';
import { LIMOGES } from '../../../src/assessment/scores/limoges.table.js';
import { answer } from '../../../src/rules/index.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from './ask.js';
import {
  KR_SECOND,
  type KrQuestion,
  LIMOGES_SECOND,
  type LimogesQuestion,
} from './second-bleeding.js';

const EVERY_LIMOGES = everyQuestion(LIMOGES_SECOND.choices);
const EVERY_KR = everyQuestion(KR_SECOND.choices);

describe('Limoges score', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_LIMOGES).toHaveLength(5 * 2 * 11 * 5 * 5);
    expect(disagreements(LIMOGES, EVERY_LIMOGES, LIMOGES_SECOND.says)).toEqual([]);
  });

  it('would be caught with a border of 50 mm or more', () => {
    const other = (q: LimogesQuestion) =>
      LIMOGES_SECOND.says({ ...q, sizeMm: q.sizeMm === 50 ? 51 : q.sizeMm });
    expect(disagreements(LIMOGES, EVERY_LIMOGES, other).length).toBeGreaterThan(0);
  });

  it.each([
    [{}, 'indeterminate;missing=age,antithrombotic,location,sizeMm,asa;range=0-8'],
    [
      { age: 80, antithrombotic: true, location: null, sizeMm: 60, asa: 'III' },
      'indeterminate;missing=location;range=7-8',
    ],
    [{ age: 75.5 }, '(wrong-type /age)'],
    [{ location: 'cecum', asa: 'VI' }, '(not-in-list /location, not-in-list /asa)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(LIMOGES, document)).toBe(expected);
  });

  it('says that the rectosigmoid junction is not counted, and of no other place', () => {
    const remarksAt = (location: string) => {
      const answered = answer(LIMOGES, { location });
      return answered.ok ? answered.value.remarks.map(({ remark }) => remark) : [];
    };
    expect(remarksAt('rectosigmoid')).toEqual(['rectosigmoid-not-rectal']);
    expect(remarksAt('rectum')).toEqual([]);
  });
});

describe('Korean score of bleeding after colorectal dissection', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_KR).toHaveLength(11 * 5 * 3);
    expect(disagreements(KR_COLORECTAL_BLEEDING, EVERY_KR, KR_SECOND.says)).toEqual([]);
  });

  it('would be caught with points for aspirin alone', () => {
    const other = (q: KrQuestion) =>
      KR_SECOND.says({
        ...q,
        antiplatelet: q.antiplatelet === 'none' ? 'none' : 'other-or-combined',
      });
    expect(disagreements(KR_COLORECTAL_BLEEDING, EVERY_KR, other).length).toBeGreaterThan(0);
  });

  it.each([
    [{}, 'indeterminate;missing=location,sizeMm,antiplatelet;range=0-4'],
    [{ location: 'flexure', sizeMm: 30, antiplatelet: 'none' }, '1'],
    [
      { location: 'colon', sizeMm: 30, antiplatelet: 'none' },
      'indeterminate;missing=location;range=1-3',
    ],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(KR_COLORECTAL_BLEEDING, document)).toBe(expected);
  });
});
