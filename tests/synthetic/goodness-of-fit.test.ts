import { describe, expect, it } from 'vitest';
import { binomialP, chiSquareP, chiSquareTail } from './goodness-of-fit.js';

describe('the statistics of these tests', () => {
  // Upper critical values of chi-square: NIST/SEMATECH e-Handbook, 1.3.6.7.4 (from memory).
  it.each([
    [3.841, 1, 0.05],
    [6.635, 1, 0.01],
    [9.488, 4, 0.05],
    [18.307, 10, 0.05],
    [23.209, 10, 0.01],
    [43.773, 30, 0.05],
  ])('%s with %s degrees of freedom is exceeded with chance %s', (square, degrees, chance) => {
    expect(chiSquareTail(square, degrees)).toBeCloseTo(chance, 4);
  });

  // Arithmetic: of 10 fair coins 0, 1, 9 and 10 heads are 22 of 1024 ways.
  it('counts the ways of coins', () => {
    expect(binomialP(1, 10, 0.5)).toBeCloseTo(22 / 1024, 10);
    expect(binomialP(5, 10, 0.5)).toBeCloseTo(1, 10);
  });

  // Mendel's peas, round-yellow to wrinkled-green: 315, 108, 101, 32 of 9:3:3:1 (from memory).
  it('finds the peas of Mendel as he expected them', () => {
    expect(chiSquareP([315, 108, 101, 32], [9, 3, 3, 1])).toBeCloseTo(0.925, 3);
  });

  it('rejects what does not fit', () => {
    expect(chiSquareP([101, 108, 315, 32], [9, 3, 3, 1])).toBeLessThan(1e-9);
    expect(binomialP(90, 100, 0.5)).toBeLessThan(1e-9);
  });
});
