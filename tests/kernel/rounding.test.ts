import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTo } from '../../src/kernel/index.js';

/** Half away from zero on the digits as written, in whole numbers without binary fractions. */
function onPaper(digits: bigint, decimals: number, keep: number): number {
  const factor = 10n ** BigInt(decimals - keep);
  const size = digits < 0n ? -digits : digits;
  const whole = (size * 2n + factor) / (factor * 2n);
  return Number(`${digits < 0n ? '-' : ''}${whole}e-${keep}`);
}

describe('rounding, against arithmetic on paper', () => {
  it.each([
    [1.005, 2, 1.01],
    [2.675, 2, 2.68],
    [-1.5, 0, -2],
    [0.285, 2, 0.29],
    [9.25, 1, 9.3],
    [0.04999, 1, 0],
  ])('%f to %i decimals', (value, decimals, expected) => {
    expect(roundTo(value, decimals)).toBe(expected);
    expect(Math.abs(expected - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12);
  });

  it('rounds every decimal number of up to six decimals as one does by hand', () => {
    const digits = fc.integer({ min: -999_999_999, max: 999_999_999 });
    fc.assert(
      fc.property(digits, fc.integer({ min: 0, max: 6 }), (n, keep) => {
        const value = Number(`${n}e-6`);
        expect(roundTo(value, keep) + 0).toBe(onPaper(BigInt(n), 6, keep) + 0);
      }),
      { seed: 5, numRuns: 2000 },
    );
  });

  it('is not the rounding of the binary fraction, which the oracle rejects', () => {
    expect(Number((1.005).toFixed(2))).not.toBe(onPaper(1005n, 3, 2));
  });
});
