import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { cusumCurve, cusumParameters } from '../../src/statistics/index.js';

const successes = (count: number): readonly boolean[] => Array.from({ length: count }, () => false);
const risks = { alpha: 0.1, beta: 0.1 };

describe('a cumulative sum as a sequential test', () => {
  // Parameters as in PMC6470078 fig. 3 and PMC4188705; the runs follow by arithmetic.
  it.each([
    [0.1, 0.2, 19],
    [0.04, 0.08, 52],
    [0.05, 0.15, 20],
  ])(
    'from %f and %f reaches the lower limit after %i successes',
    (acceptable, unacceptable, run) => {
      const parameters = cusumParameters({ acceptable, unacceptable, ...risks });
      const curve = cusumCurve(successes(run), acceptable, parameters);
      expect(curve.findIndex(({ reached }) => reached === 'acceptable')).toBe(run - 1);
      expect(curve.at(-1)?.sequential).toBeLessThanOrEqual(parameters.lowerLimit);
    },
  );

  it('rises by the rest to 1 with a failure, and starts anew at a limit', () => {
    // s = 0.1452 and h = 2.7095: four failures reach 4 x 0.8548 = 3.42, three do not.
    const parameters = cusumParameters({ acceptable: 0.1, unacceptable: 0.2, ...risks });
    const curve = cusumCurve([true, true, true, true, false], 0.1, parameters);
    expect(curve.map(({ sequential }) => sequential.toFixed(2))).toEqual([
      '0.85',
      '1.71',
      '2.56',
      '3.42',
      '-0.15',
    ]);
    expect(curve.map(({ reached }) => reached)).toEqual([
      undefined,
      undefined,
      undefined,
      'unacceptable',
      undefined,
    ]);
  });
});

describe('a simple cumulative sum', () => {
  const parameters = cusumParameters({ acceptable: 0.1, unacceptable: 0.2, ...risks });

  it('is failures less the target of each observation', () => {
    // C = C + (x - target), target 0.1: 0.9, 0.8, 1.7.
    const curve = cusumCurve([true, false, true], 0.1, parameters);
    expect(curve.map(({ simple }) => simple.toFixed(6))).toEqual([
      '0.900000',
      '0.800000',
      '1.700000',
    ]);
  });

  it('ends at 0 where the target is met, however long it is', () => {
    const met = Array.from({ length: 10_000 }, (_, i) => i % 10 === 0);
    expect(cusumCurve(met, 0.1, parameters).at(-1)?.simple).toBeCloseTo(0, 9);
  });

  it('refuses a target that is none', () => {
    expect(() => cusumCurve([true], 1, parameters)).toThrow(InvariantError);
  });
});
