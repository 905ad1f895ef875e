import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { kaplanMeier, quartiles, type Watched } from '../../src/statistics/index.js';
import published from '../published/remission-6mp.json' with { type: 'json' };

const one = (time: number, event: boolean): Watched => ({ time, event, count: 1 });
const REMISSION = [
  ...published.events.map((time) => one(time, true)),
  ...published.censored.map((time) => one(time, false)),
];

describe('share without an event, against the published remissions under 6-MP', () => {
  // Inside of the tests, so that a fault of the computation is one of theirs.
  const steps = () => kaplanMeier(REMISSION, 0.95).filter(({ events }) => events > 0);

  it('has the published steps, with who was at risk', () => {
    expect(steps().map(({ time, atRisk, events }) => ({ time, atRisk, events }))).toEqual(
      published.steps.map(({ time, atRisk, events }) => ({ time, atRisk, events })),
    );
  });

  it.each(published.steps)('at $time weeks', (printed) => {
    const found = steps().find(({ time }) => time === printed.time);
    expect(found?.survival).toBeCloseTo(printed.survival, 3);
    expect(found?.standardError).toBeCloseTo(printed.standardError, 4);
    expect(found?.interval?.lower).toBeCloseTo(printed.lower, 3);
    expect(found?.interval?.upper).toBeCloseTo(printed.upper, 3);
  });

  it('would be another one, did watching end before the event of the same week', () => {
    const first = REMISSION.map((each) => (each.event ? { ...each, time: each.time + 0.5 } : each));
    expect(kaplanMeier(first, 0.95).find(({ events }) => events > 0)?.survival).not.toBeCloseTo(
      0.857,
      3,
    );
  });
});

/** Efron 1967: whoever is lost gives their weight to all who are watched longer. */
function redistributed(watched: readonly Watched[], until: number): number {
  const order = [...watched].sort((a, b) => a.time - b.time || Number(b.event) - Number(a.event));
  const weights = order.map(() => 1 / order.length);
  order.forEach(({ event }, i) => {
    const left = order.length - i - 1;
    if (event || left === 0) return;
    const share = (weights[i] ?? 0) / left;
    weights[i] = 0;
    for (let j = i + 1; j < order.length; j += 1) weights[j] = (weights[j] ?? 0) + share;
  });
  const happened = order.map(({ time, event }, i) =>
    event && time <= until ? (weights[i] ?? 0) : 0,
  );
  return 1 - happened.reduce((sum, weight) => sum + weight, 0);
}

describe('share without an event, by laws', () => {
  const watched = fc.array(
    fc.record({ time: fc.nat(9), event: fc.boolean(), count: fc.constant(1) }),
    { minLength: 1, maxLength: 30 },
  );

  it('is that of a way of its own to count: weights that move to the right', () => {
    fc.assert(
      fc.property(watched, (group) => {
        for (const { time, survival } of kaplanMeier(group, 0.95)) {
          expect(survival).toBeCloseTo(redistributed(group, time), 9);
        }
      }),
    );
  });

  it('only falls, within its interval, and everybody is counted once', () => {
    fc.assert(
      fc.property(watched, (group) => {
        const steps = kaplanMeier(group, 0.95);
        expect(steps.reduce((n, step) => n + step.events + step.censored, 0)).toBe(group.length);
        for (const [i, { survival, interval }] of steps.entries()) {
          expect(survival).toBeLessThanOrEqual(steps[i - 1]?.survival ?? 1);
          if (interval === undefined) continue;
          expect(interval.lower).toBeLessThanOrEqual(survival);
          expect(interval.upper).toBeGreaterThanOrEqual(survival);
        }
      }),
    );
  });

  it('has no interval where the scale has no point, and no step for nobody', () => {
    expect(
      kaplanMeier([one(3, false), one(4, true)], 0.95).map(({ interval }) => interval),
    ).toEqual([undefined, undefined]);
    expect(kaplanMeier([], 0.95)).toEqual([]);
  });

  it.each([
    [[one(-1, true)], 0.95],
    [[{ time: 1, event: true, count: 0 }], 0.95],
    [[one(1, true)], 1],
  ])('refuses what is no observation or level', (group, level) => {
    expect(() => kaplanMeier(group, level)).toThrow(InvariantError);
  });
});

describe('quartiles', () => {
  // Hyndman RJ, Fan Y. Am Stat 1996;50:361-365, definition 7: rank 1 + (n - 1) p.
  it.each([
    [[10, 1, 9, 2, 8, 3, 7, 4, 6, 5], { q1: 3.25, median: 5.5, q3: 7.75 }],
    [[5], { q1: 5, median: 5, q3: 5 }],
    [[1, 2, 3, 4, 5], { q1: 2, median: 3, q3: 4 }],
  ])('of %o', (values, expected) => {
    expect(quartiles(values)).toEqual(expected);
  });

  it('are none without a value, and refuse what is no number', () => {
    expect(quartiles([])).toBeUndefined();
    expect(() => quartiles([1, Number.NaN])).toThrow(InvariantError);
  });
});
