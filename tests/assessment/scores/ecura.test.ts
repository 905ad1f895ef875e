import { describe, expect, it } from 'vitest';
import { ECURA } from '../../../src/assessment/scores/ecura.table.js';
import { disagreements, everyQuestion, shortAnswer } from './ask.js';

interface Question {
  readonly ly: string;
  readonly v: string;
  readonly vm: string;
  readonly sizeMm: number;
  readonly smDepthUm: number;
}

// Source: Hatta W et al. Am J Gastroenterol 2017;112:874-881, abstract, in plain words: lymphatic
// invasion 3 points; size above 30 mm, positive vertical margin, venous invasion and submucosal
// invasion of 500 um or more 1 point each. 0-1 low, 2-4 intermediate, 5-7 high. A vertical margin
// that cannot be judged counts as positive, a vessel that cannot be judged is missing (derived).
function secondWriting({ ly, v, vm, sizeMm, smDepthUm }: Question): string {
  let sure = 0;
  if (ly === '1') sure += 3;
  if (v === '1') sure += 1;
  if (vm !== '0') sure += 1;
  if (sizeMm > 30) sure += 1;
  if (smDepthUm >= 500) sure += 1;
  const missing = [...(ly === 'X' ? ['ly'] : []), ...(v === 'X' ? ['v'] : [])];
  if (missing.length > 0) {
    const most = sure + (ly === 'X' ? 3 : 0) + (v === 'X' ? 1 : 0);
    return `indeterminate;missing=${missing.join(',')};range=${sure}-${most}`;
  }
  if (sure <= 1) return `${sure};low;2.5`;
  if (sure <= 4) return `${sure};intermediate;6.7`;
  return `${sure};high;22.7`;
}

const EVERY = everyQuestion<Question>({
  ly: ['0', '1', 'X'],
  v: ['0', '1', 'X'],
  vm: ['0', '1', 'X'],
  sizeMm: [1, 29, 29.9, 30, 30.1, 31, 200],
  smDepthUm: [0, 1, 499, 500, 501, 5000],
});

describe('eCura score', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY).toHaveLength(3 * 3 * 3 * 7 * 6);
    expect(disagreements(ECURA, EVERY, secondWriting)).toEqual([]);
  });

  it('would be caught with lymphatic and venous invasion exchanged', () => {
    const exchanged = (q: Question) => secondWriting({ ...q, ly: q.v, v: q.ly });
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
