import { describe, expect, it } from 'vitest';
import { ECURA } from '../../../src/assessment/scores/ecura.table.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from './ask.js';
import { ECURA_SECOND, type EcuraQuestion } from './second-bleeding.js';

const EVERY = everyQuestion(ECURA_SECOND.choices);

describe('eCura score', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY).toHaveLength(3 * 3 * 3 * 7 * 6);
    expect(disagreements(ECURA, EVERY, ECURA_SECOND.says)).toEqual([]);
  });

  it('would be caught with lymphatic and venous invasion exchanged', () => {
    const exchanged = (q: EcuraQuestion) => ECURA_SECOND.says({ ...q, ly: q.v, v: q.ly });
    expect(disagreements(ECURA, EVERY, exchanged).length).toBeGreaterThan(0);
  });

  it.each([
    [{}, 'indeterminate;missing=ly,v,vm,sizeMm,smDepthUm;range=0-7'],
    [{ ly: '1', v: '0', vm: '0', sizeMm: 20 }, 'indeterminate;missing=smDepthUm;range=3-4'],
    [
      { ly: '0', v: '0', vm: null, sizeMm: 31, smDepthUm: null },
      'indeterminate;missing=vm,smDepthUm;range=1-3',
    ],
  ])('names what is missing in %j and the range that is left', (document, expected) => {
    expect(shortAnswer(ECURA, document)).toBe(expected);
  });

  it.each([
    [{ ly: '2' }, '(not-in-list /ly)'],
    [{ smDepthUm: 0.5 }, '(wrong-type /smDepthUm)'],
    [{ smDepthUm: -1, sizeMm: 1001 }, '(out-of-range /smDepthUm, out-of-range /sizeMm)'],
    [{ lvi: '0' }, '(unknown-field /lvi)'],
  ])('refuses %j with %s', (document, expected) => {
    expect(shortAnswer(ECURA, document)).toBe(expected);
  });

  // Source: Hatta 2017, abstract.
  it('says the survival of each group, which falls as metastasis rises', () => {
    expect(ECURA.bands.map(({ figures }) => figures?.map(({ value }) => value))).toEqual([
      [99.6],
      [96.0],
      [90.1],
    ]);
  });
});
