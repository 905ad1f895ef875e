import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { SIZE_BAND_ROWS } from '../../src/outcomes/bands.js';
import { SIZE_BANDS, sizeBandOf, TRAINEE_BANDS, traineeBandOf } from '../../src/outcomes/index.js';

describe('bands of size', () => {
  // 30 mm: border of the first lesions of a trainee, Endoscopy 2019;51:980-992, abstract.
  it.each([
    [19.9, 'under-20-mm'],
    [20, '20-to-29-mm'],
    [29.9, '20-to-29-mm'],
    [30, '30-to-49-mm'],
    [50, '50-mm-and-more'],
  ])('%f mm: %s', (longAxisMm, band) => {
    expect(sizeBandOf(longAxisMm)).toBe(band);
  });

  it('begin at 0, rise, and are those of the list', () => {
    expect(SIZE_BAND_ROWS.map(({ name }) => name)).toEqual(SIZE_BANDS);
    expect(SIZE_BAND_ROWS[0]?.from).toBe(0);
    const borders = SIZE_BAND_ROWS.map(({ from }) => from);
    expect(borders).toEqual([...new Set(borders)].sort((a, b) => a - b));
    expect(() => sizeBandOf(-1)).toThrow(InvariantError);
  });
});

describe('bands of what a trainee did', () => {
  // Common practice, no source.
  it.each([
    [undefined, 'not-told'],
    [0, 'none'],
    [1, 'less-than-half'],
    [50, 'half-and-more'],
    [99, 'half-and-more'],
    [100, 'all'],
  ])('%s percent: %s', (percent, band) => {
    expect(traineeBandOf(percent)).toBe(band);
    expect(TRAINEE_BANDS).toContain(band);
  });
});
