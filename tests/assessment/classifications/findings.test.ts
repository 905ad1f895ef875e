import { describe, expect, it } from 'vitest';
import { BBPS } from '../../../src/assessment/classifications/bbps.table.js';
import { BUDDING_ITBCC } from '../../../src/assessment/classifications/budding-itbcc.table.js';
import { DIFFICULT_ESD } from '../../../src/assessment/classifications/difficult-esd.table.js';
import { FIBROSIS } from '../../../src/assessment/classifications/fibrosis.table.js';
import { SYDNEY_DMI } from '../../../src/assessment/classifications/sydney-dmi.table.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from '../scores/ask.js';
import {
  BBPS_SECOND,
  BUDDING_SECOND,
  DIFFICULT_SECOND,
  type Ended,
  FIBROSIS_SECOND,
  type Segments,
  SYDNEY_SECOND,
} from './second-findings.js';

describe('Boston bowel preparation scale', () => {
  const every = everyQuestion(BBPS_SECOND.choices);

  it('agrees with a second writing on every preparation', () => {
    expect(every).toHaveLength(64);
    expect(disagreements(BBPS, every, BBPS_SECOND.says)).toEqual([]);
  });

  it('would be caught with a total of 6 as the only condition', () => {
    const byTotal = ({ right, transverse, left }: Segments) => {
      const total = right + transverse + left;
      return `${total};${total >= 6 ? 'adequate' : 'not-adequate'}`;
    };
    expect(disagreements(BBPS, every, byTotal)).toContain('{"right":0,"transverse":3,"left":3}');
  });

  it.each([
    [{}, 'indeterminate;missing=right,transverse,left;range=0-9'],
    [{ right: 0, transverse: 3 }, 'indeterminate;missing=left;range=3-6'],
    [{ right: 4 }, '(out-of-range /right)'],
    [{ right: 1.5 }, '(wrong-type /right)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(BBPS, document)).toBe(expected);
  });
});

// Source: ITBCC 2016 as quoted in J Clin Oncol 2019;37:1886: BD1 0-4, BD2 5-9, BD3 10 and more
// buds per 0.785 mm2; other fields by proportion, rounded down.
describe('tumour budding', () => {
  it('agrees with a second writing in the standard field and in one of twice its size', () => {
    const every = everyQuestion(BUDDING_SECOND.choices);
    expect(disagreements(BUDDING_ITBCC, every, BUDDING_SECOND.says)).toEqual([]);
  });

  it.each([0, 1, 4, 5, 6, 9, 10, 11, 200])('grades %s buds in the standard field', (buds) => {
    const expected = buds <= 4 ? 'BD1' : buds <= 9 ? 'BD2' : 'BD3';
    expect(shortAnswer(BUDDING_ITBCC, { buds, fieldMm2: 0.785 })).toBe(expected);
  });

  // Products by hand: 10 x 0.785 / 1.57 = 5; 9 x 0.785 / 1.57 = 4.5; 12 x 0.785 / 0.95 = 9.916;
  // 13 x 0.785 / 0.95 = 10.742; 1 x 0.785 / 0.157 = 5; 3 x 0.785 / 0.471 = 5; 2 / 0.157 is 10.
  it.each([
    [10, 1.57, 'BD2'],
    [9, 1.57, 'BD1'],
    [12, 0.95, 'BD2'],
    [13, 0.95, 'BD3'],
    [1, 0.157, 'BD2'],
    [3, 0.471, 'BD2'],
    [2, 0.157, 'BD3'],
    [19, 1.57, 'BD2'],
    [20, 1.57, 'BD3'],
  ])('rounds %s buds in %s mm2 down in the standard field: %s', (buds, fieldMm2, expected) => {
    expect(shortAnswer(BUDDING_ITBCC, { buds, fieldMm2 })).toBe(expected);
  });

  it.each([
    [{}, 'indeterminate;missing=buds,fieldMm2'],
    [{ buds: 12 }, 'indeterminate;missing=fieldMm2'],
    [{ buds: null, fieldMm2: 0.785 }, 'indeterminate;missing=buds'],
    [{ buds: 0, fieldMm2: null }, 'BD1'],
    [{ buds: 0 }, 'BD1'],
    [{ buds: -1, fieldMm2: 0 }, '(out-of-range /buds, out-of-range /fieldMm2)'],
    [{ buds: 4.5 }, '(wrong-type /buds)'],
    [{ budsInStandardField: 4 }, '(unknown-field /budsInStandardField)'],
    [null, '(wrong-type )'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(BUDDING_ITBCC, document)).toBe(expected);
  });
});

// Source: Burgess NG et al. Gut 2017;66:1779-1789, abstract; grade 0 from a second source.
describe('Sydney classification of deep mural injury', () => {
  it('agrees with a second writing on every sign', () => {
    const every = everyQuestion(SYDNEY_SECOND.choices);
    expect(disagreements(SYDNEY_DMI, every, SYDNEY_SECOND.says)).toEqual([]);
  });

  it.each([
    [{ sign: 'normal' }, '0'],
    [{ sign: 'muscle-visible' }, 'I'],
    [{ sign: 'plane-lost' }, 'II'],
    [{ sign: 'target' }, 'III'],
    [{ sign: 'hole', contamination: false }, 'IV'],
    [{ sign: 'hole', contamination: true }, 'V'],
    [{ sign: 'target', contamination: true }, 'III'],
    [{ sign: 'hole' }, 'indeterminate;missing=contamination'],
    [{ sign: 'target', contamination: null }, 'III'],
    [{}, 'indeterminate;missing=sign,contamination'],
    [{ sign: 'IV' }, '(not-in-list /sign)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(SYDNEY_DMI, document)).toBe(expected);
  });
});

// Source: Matsumoto A et al. Scand J Gastroenterol 2010;45:1329, as quoted; looks from a second
// source.
describe('submucosal fibrosis', () => {
  it('agrees with a second writing on every look', () => {
    const every = everyQuestion(FIBROSIS_SECOND.choices);
    expect(disagreements(FIBROSIS, every, FIBROSIS_SECOND.says)).toEqual([]);
  });

  it.each([
    [{ layer: 'transparent-blue' }, 'F0'],
    [{ layer: 'white-web-in-blue' }, 'F1'],
    [{ layer: 'white-without-blue' }, 'F2'],
    [{}, 'indeterminate;missing=layer'],
    [{ layer: 'blue' }, '(not-in-list /layer)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(FIBROSIS, document)).toBe(expected);
  });
});

describe('difficult dissection', () => {
  const own = DIFFICULT_SECOND.says;
  const every = everyQuestion(DIFFICULT_SECOND.choices);

  it('agrees with a second writing of the definition on every dissection', () => {
    expect(disagreements(DIFFICULT_ESD, every, own)).toEqual([]);
  });

  it('would be caught with 0.07 cm2/min as slow', () => {
    const other = (q: Ended) =>
      q.speedCm2PerMin === 0.07 ? own({ ...q, speedCm2PerMin: 0 }) : own(q);
    expect(disagreements(DIFFICULT_ESD, every, other)).toHaveLength(1);
  });

  it.each([
    [{}, 'indeterminate;missing=outcome,speedCm2PerMin'],
    [{ outcome: 'en-bloc' }, 'indeterminate;missing=speedCm2PerMin'],
    [{ outcome: 'abandoned' }, 'difficult'],
    [{ outcome: null, speedCm2PerMin: 0.05 }, 'indeterminate;missing=outcome'],
    [{ outcome: 'not-started' }, '(not-in-list /outcome)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(DIFFICULT_ESD, document)).toBe(expected);
  });
});
