import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { type Finding, InvariantError } from '../../src/kernel/index.js';
import {
  type Counts,
  clopperPearsonInterval,
  type Interval,
  ratePercent,
  wilsonInterval,
} from '../../src/statistics/index.js';

/** Quantiles of the normal distribution, as printed in any table of it. */
const Z = { 0.9: 1.644854, 0.95: 1.959964, 0.99: 2.575829, 0.998: 3.090232 } as const;
const LEVELS = [0.9, 0.95, 0.99, 0.998] as const;
const SIZES = [1, 2, 3, 7, 20, 96, 263, 1059, 6267, 100_000, 1_000_000];
const SHARES = [0, 0.000_01, 0.002, 0.03, 0.25, 0.5, 0.8, 0.97, 0.999, 1];

const GRID: readonly Counts[] = SIZES.flatMap((of) =>
  [...new Set(SHARES.map((share) => Math.round(share * of)))].map((events) => ({ events, of })),
);

function known<T>(finding: Finding<T>): T {
  if (finding.kind === 'indeterminate') throw new Error('there should be an answer');
  return finding.value;
}

/** Both ends in percent, as a work prints them. */
const printed = ({ lower, upper }: Interval, decimals: number) =>
  [lower, upper].map((end) => (100 * end).toFixed(decimals));

describe('Wilson intervals', () => {
  it.each([
    // Newcombe, Stat Med 1998;17:857: from memory, calculated again and equal.
    [81, 263, 2, ['25.53', '36.62']],
    [15, 148, 2, ['6.24', '16.05']],
    [0, 20, 2, ['0.00', '16.11']],
    [1, 29, 2, ['0.61', '17.18']],
    // A worked example in R on a public page: 0.08889545 to 0.35309155.
    [6, 32, 6, ['8.889545', '35.309155']],
    // Recurrence after a positive margin, Endoscopy 2023, doi 10.1055/a-1960-3552: 0.57-7.3 %
    // and 7.2-59.1 %, that is 7.148 rounded twice, by way of 7.15.
    [2, 96, 2, ['0.57', '7.28']],
    [2, 8, 2, ['7.15', '59.07']],
  ] as const)('are as published for %i of %i', (events, of, decimals, ends) => {
    expect(printed(known(wilsonInterval({ events, of }, 0.95)), decimals)).toEqual(ends);
  });

  it('are not the modified ones that some works print for a single event', () => {
    // The same work prints 1/212 as 0.02-2.6 %: its lower end is -ln(0.95)/212.
    const [lower, upper] = printed(known(wilsonInterval({ events: 1, of: 212 }, 0.95)), 2);
    expect([lower, upper]).toEqual(['0.08', '2.62']);
    expect(lower).not.toBe(((100 * -Math.log(0.95)) / 212).toFixed(2));
  });

  /** How far a rate is from what was seen, in standard errors under that rate. */
  const score = (rate: number, { events, of }: Counts) =>
    Math.abs(events / of - rate) / Math.sqrt((rate * (1 - rate)) / of);

  it('end where the score test has its quantile, for every level and size', () => {
    for (const counts of GRID) {
      for (const level of LEVELS) {
        const { lower, upper } = known(wilsonInterval(counts, level));
        if (counts.events > 0) expect(score(lower, counts)).toBeCloseTo(Z[level], 5);
        if (counts.events < counts.of) expect(score(upper, counts)).toBeCloseTo(Z[level], 5);
      }
    }
  });

  it('are not those of the exact method, which the score test rejects', () => {
    const counts = { events: 6, of: 32 };
    const { lower } = known(clopperPearsonInterval(counts, 0.95));
    expect(Math.abs(score(lower, counts) - Z[0.95])).toBeGreaterThan(0.1);
  });
});

describe('Clopper-Pearson intervals', () => {
  // Hatta 2021, Gut 70:476, risk table: to 0.1 %.
  it.each([
    [60, 202, ['23.5', '36.5']],
    [87, 760, ['9.3', '13.9']],
  ] as const)('are as published for %i of %i', (events, of, ends) => {
    const interval = known(clopperPearsonInterval({ events, of }, 0.95));
    expect(printed(interval, 1)).toEqual(ends);
    expect(printed(known(wilsonInterval({ events, of }, 0.95)), 1)).not.toEqual(ends);
  });

  it('are what another library gives, up to a million observations', () => {
    for (const { events, of } of GRID) {
      for (const level of LEVELS) {
        const { lower, upper } = known(clopperPearsonInterval({ events, of }, level));
        const tail = (1 - level) / 2;
        const low = events === 0 ? 0 : betaQuantile(tail, events, of - events + 1);
        const high = events === of ? 1 : betaQuantile(1 - tail, events + 1, of - events);
        expect(Math.abs(lower - low), `lower end of ${events}/${of}`).toBeLessThan(1e-8);
        expect(Math.abs(upper - high), `upper end of ${events}/${of}`).toBeLessThan(1e-8);
      }
    }
  });

  it('would not pass there with one event more or less', () => {
    const { lower } = known(clopperPearsonInterval({ events: 500_000, of: 1_000_000 }, 0.95));
    expect(Math.abs(lower - betaQuantile(0.025, 500_001, 500_001))).toBeGreaterThan(1e-7);
  });

  /** Chance of this many events or more, summed over the binomial distribution. */
  function orMore(events: number, of: number, rate: number): number {
    let sum = 0;
    let lnChance = of * Math.log(1 - rate);
    for (let k = 0; k <= of; k += 1) {
      if (k >= events) sum += Math.exp(lnChance);
      lnChance += Math.log(((of - k) / (k + 1)) * (rate / (1 - rate)));
    }
    return sum;
  }

  it('leave half of what the level leaves on each side', () => {
    for (const { events, of } of GRID.filter((counts) => counts.of <= 263)) {
      const { lower, upper } = known(clopperPearsonInterval({ events, of }, 0.95));
      if (events > 0) expect(orMore(events, of, lower)).toBeCloseTo(0.025, 6);
      if (events < of) expect(1 - orMore(events + 1, of, upper)).toBeCloseTo(0.025, 6);
    }
  });
});

describe.each([
  ['Wilson', wilsonInterval],
  ['Clopper-Pearson', clopperPearsonInterval],
])('an interval of %s', (_, interval) => {
  it('is the mirror of the interval of the others', () => {
    for (const { events, of } of GRID) {
      const one = known(interval({ events, of }, 0.95));
      const other = known(interval({ events: of - events, of }, 0.95));
      expect(one.lower + other.upper).toBeCloseTo(1, 7);
      expect(one.upper + other.lower).toBeCloseTo(1, 7);
    }
  });

  it('holds the rate, and touches 0 and 1 only where nothing or all happened', () => {
    for (const { events, of } of GRID) {
      const { lower, upper } = known(interval({ events, of }, 0.95));
      expect(lower).toBeLessThanOrEqual(events / of);
      expect(upper).toBeGreaterThanOrEqual(events / of);
      expect([lower === 0, upper === 1]).toEqual([events === 0, events === of]);
      expect(Object.is(lower, -0)).toBe(false);
    }
  });

  it('is wider for a higher level and narrower with more observations', () => {
    const width = (counts: Counts, level: number) => {
      const { lower, upper } = known(interval(counts, level));
      return upper - lower;
    };
    expect(width({ events: 6, of: 32 }, 0.99)).toBeGreaterThan(width({ events: 6, of: 32 }, 0.95));
    expect(width({ events: 60, of: 320 }, 0.95)).toBeLessThan(width({ events: 6, of: 32 }, 0.95));
  });

  it('does not exist without an observation', () => {
    const none = { kind: 'indeterminate', missing: ['of'] };
    expect(interval({ events: 0, of: 0 }, 0.95)).toEqual(none);
  });

  it.each([
    [-1, 5, 0.95],
    [6, 5, 0.95],
    [1, 0, 0.95],
    [1.5, 5, 0.95],
    [1, 5.5, 0.95],
    [Number.NaN, 5, 0.95],
    [1, Number.POSITIVE_INFINITY, 0.95],
    [1, 5, 0],
    [1, 5, 1],
    [1, 5, 95],
    [1, 5, Number.NaN],
  ])('is refused for %d of %d at the level %d', (events, of, level) => {
    expect(() => interval({ events, of }, level)).toThrow(InvariantError);
  });
});

describe('a rate', () => {
  // Hatta 2021, Gut 70:476, risk table.
  it.each([
    [175, 6267, 2.8],
    [65, 1059, 6.1],
    [87, 760, 11.4],
  ])('of %i of %i is %d percent', (events, of, percent) => {
    expect(known(ratePercent({ events, of }))).toBeCloseTo(percent, 1);
    expect(known(ratePercent({ events: events + 9, of }))).not.toBeCloseTo(percent, 1);
  });

  it('does not exist without an observation, and is no 0 percent', () => {
    expect(ratePercent({ events: 0, of: 0 })).toEqual({ kind: 'indeterminate', missing: ['of'] });
    expect(ratePercent({ events: 0, of: 1 })).toMatchObject({ kind: 'determined', value: 0 });
    expect(() => ratePercent({ events: 2, of: 1 })).toThrow(InvariantError);
  });
});
