import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import {
  type CusumAims,
  cusumParameters,
  exactFunnelLimits,
  normalFunnelLimits,
} from '../../src/statistics/index.js';

const aims = (acceptable: number, unacceptable: number, alpha = 0.1, beta = 0.1): CusumAims => ({
  acceptable,
  unacceptable,
  alpha,
  beta,
});

describe('a cumulative sum of a learning curve', () => {
  // Aims: PMC6470078 figure 3 and PMC4188705; results by the formula of two public programs.
  it.each([
    [aims(0.1, 0.2), 0.1452, 2.7095, 19],
    [aims(0.04, 0.08), 0.0578, 2.9865, 52],
    [aims(0.05, 0.15), 0.0919, 1.8161, 20],
  ])('has the published parameters for %o', (of, step, limit, successes) => {
    const found = cusumParameters(of);
    expect(found.step).toBeCloseTo(step, 4);
    expect(found.lowerLimit).toBeCloseTo(-limit, 4);
    expect(found.upperLimit).toBeCloseTo(limit, 4);
    expect(found.successesToLower).toBe(successes);
  });

  const MANY = [0.01, 0.05, 0.1, 0.3].flatMap((p0) =>
    [0.02, 0.1, 0.25, 0.5].flatMap((gap) =>
      [0.01, 0.05, 0.1, 0.2].flatMap((alpha) =>
        [0.05, 0.1, 0.3].map((beta) => aims(p0, p0 + gap, alpha, beta)),
      ),
    ),
  );

  /** Steps down from 0 until the lower limit is reached. */
  function walked({ step, lowerLimit }: ReturnType<typeof cusumParameters>): number {
    let successes = 0;
    for (let curve = 0; curve > lowerLimit + 1e-9; curve -= step) successes += 1;
    return successes;
  }

  it('reaches its lower limit after as many successes in a row as it says', () => {
    for (const each of MANY) {
      const found = cusumParameters(each);
      expect(found.successesToLower).toBe(walked(found));
    }
    expect(walked({ ...cusumParameters(aims(0.1, 0.2)), step: 0.14 })).not.toBe(19);
  });

  /** Successes until the likelihood ratio of the two rates falls to beta / (1 - alpha). */
  function byLikelihood({ acceptable, unacceptable, alpha, beta }: CusumAims): number {
    let successes = 0;
    let ratio = 1;
    while (ratio > (beta / (1 - alpha)) * (1 + 1e-9)) {
      ratio *= (1 - unacceptable) / (1 - acceptable);
      successes += 1;
    }
    return successes;
  }

  // Wald, Ann Math Stat 1945;16:117 (from memory): limits of the sequential likelihood ratio.
  it('is the sequential test of the two rates, in other units', () => {
    for (const each of MANY) {
      const { step, upperLimit, lowerLimit, successesToLower } = cusumParameters(each);
      const failure = Math.log(each.unacceptable / each.acceptable);
      const success = Math.log((1 - each.unacceptable) / (1 - each.acceptable));
      const unit = failure - success;
      expect(-step * unit).toBeCloseTo(success, 9);
      expect((1 - step) * unit).toBeCloseTo(failure, 9);
      expect(upperLimit * unit).toBeCloseTo(Math.log((1 - each.beta) / each.alpha), 9);
      expect(lowerLimit * unit).toBeCloseTo(Math.log(each.beta / (1 - each.alpha)), 9);
      expect(successesToLower).toBe(byLikelihood(each));
    }
    expect(byLikelihood(aims(0.1, 0.2, 0.1, 0.05))).not.toBe(19);
  });

  it('counts no success too many where the limit is reached exactly', () => {
    // By hand: odds of success 0.9 : 0.3 = 3, and (1 - 0.1) / 0.1 = 9 = 3 x 3.
    expect(cusumParameters(aims(0.1, 0.7)).successesToLower).toBe(2);
  });

  it.each([
    ['equal rates', aims(0.1, 0.1)],
    ['rates in the wrong order', aims(0.2, 0.1)],
    ['no failure accepted', aims(0, 0.1)],
    ['failure always', aims(0.1, 1)],
    ['no risk', aims(0.1, 0.2, 0, 0.1)],
    ['certain risk', aims(0.1, 0.2, 0.1, 1)],
    ['risks of 1 together', aims(0.1, 0.2, 0.5, 0.5)],
    ['no number', aims(Number.NaN, 0.2)],
  ])('is refused for %s', (_, of) => {
    expect(() => cusumParameters(of)).toThrow(InvariantError);
  });
});

describe('a funnel plot by the normal approximation', () => {
  // By hand from the formula: 0.9 -/+ z x 0.042426.
  it.each([
    [0.9, 50, 1.96, 0.8168, 0.9832],
    [0.9, 50, 3.09, 0.7689, 1],
    [0.02, 30, 1.96, 0, 0.0701],
    [0.5, 100, 1.96, 0.402, 0.598],
  ])('for a target of %d with %i observations and z = %d', (target, of, z, lower, upper) => {
    const limits = normalFunnelLimits(target, of, z);
    expect(limits.lower).toBeCloseTo(lower, 4);
    expect(limits.upper).toBeCloseTo(upper, 4);
  });

  it('closes with four times the observations to half its width', () => {
    const width = (of: number) => {
      const { lower, upper } = normalFunnelLimits(0.5, of, 1.96);
      return upper - lower;
    };
    expect(width(400) / width(100)).toBeCloseTo(0.5, 9);
  });
});

describe('a funnel plot from the binomial distribution', () => {
  /** Chance of each number of events, by logarithms of factorials that are summed. */
  function chances(of: number, target: number): readonly number[] {
    const factorial = [0];
    for (let k = 1; k <= of; k += 1) factorial.push((factorial[k - 1] ?? 0) + Math.log(k));
    const ln = (k: number) => factorial[k] ?? 0;
    return Array.from({ length: of + 1 }, (_, k) =>
      Math.exp(
        ln(of) - ln(k) - ln(of - k) + k * Math.log(target) + (of - k) * Math.log(1 - target),
      ),
    );
  }

  const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

  it.each([0.01, 0.05, 0.3, 0.5, 0.9, 0.98])(
    'leaves at most half of the rest on each side of a target of %d, and no more room',
    (target) => {
      for (const of of [1, 2, 5, 12, 50, 137, 800]) {
        const chance = chances(of, target);
        for (const tail of [0.025, 0.001]) {
          const { lower, upper } = exactFunnelLimits(target, of, 1 - 2 * tail);
          const [low, high] = [Math.round(lower * of), Math.round(upper * of)];
          expect(sum(chance.slice(0, low))).toBeLessThanOrEqual(tail + 1e-9);
          expect(sum(chance.slice(0, low + 1))).toBeGreaterThan(tail - 1e-9);
          expect(sum(chance.slice(high + 1))).toBeLessThanOrEqual(tail + 1e-9);
          expect(sum(chance.slice(high))).toBeGreaterThan(tail - 1e-9);
        }
      }
    },
  );

  // BMC Med Res Methodol 2012;12:98: the normal limits misjudge at low expected counts.
  it('is another one than the normal one for few expected events', () => {
    const normal = normalFunnelLimits(0.02, 30, 1.96);
    const chance = chances(30, 0.02);
    const beyond = sum(chance.slice(Math.floor(normal.upper * 30) + 1));
    expect(beyond).toBeLessThan(0.025);
    expect(exactFunnelLimits(0.02, 30, 0.95)).toEqual({ lower: 0, upper: 2 / 30 });
    expect(exactFunnelLimits(0.02, 30, 0.998).upper).not.toBeCloseTo(
      normalFunnelLimits(0.02, 30, 3.09).upper,
      2,
    );
  });

  it('meets the normal one for a million observations', () => {
    const exact = exactFunnelLimits(0.9, 1_000_000, 0.95);
    const normal = normalFunnelLimits(0.9, 1_000_000, 1.959964);
    expect(exact.lower).toBeCloseTo(normal.lower, 5);
    expect(exact.upper).toBeCloseTo(normal.upper, 5);
  });

  it('leaves outside what has exactly half of the rest', () => {
    // By hand: none of two at a target of one half has a chance of 1/4, as both have.
    expect(exactFunnelLimits(0.5, 2, 0.5)).toEqual({ lower: 0.5, upper: 0.5 });
    expect(exactFunnelLimits(0.5, 2, 0.51)).toEqual({ lower: 0, upper: 1 });
  });

  it('has no width where the target leaves nothing to chance', () => {
    expect(exactFunnelLimits(0, 20, 0.95)).toEqual({ lower: 0, upper: 0 });
    expect(exactFunnelLimits(1, 20, 0.95)).toEqual({ lower: 1, upper: 1 });
  });
});

describe.each([
  ['normal', normalFunnelLimits],
  ['exact', exactFunnelLimits],
])('limits of the %s form', (_, limits) => {
  it.each([
    [-0.1, 50, 0.95],
    [1.1, 50, 0.95],
    [Number.NaN, 50, 0.95],
    [0.9, 0, 0.95],
    [0.9, 1.5, 0.95],
    [0.9, 50, 0],
    [0.9, 50, -1],
    [0.9, 50, Number.NaN],
    [0.9, 50, Number.POSITIVE_INFINITY],
  ])('are refused for a target of %d, %d observations and %d', (target, of, width) => {
    expect(() => limits(target, of, width)).toThrow(InvariantError);
  });
});
