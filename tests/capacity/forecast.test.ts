import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Following,
  forecastLoad,
  type PlannedCheck,
  readFollowing,
} from '../../src/capacity/index.js';
import { InvariantError } from '../../src/kernel/index.js';
import { ROUTES } from './instances.js';

const check = (targetOn: string, follows: readonly Following[], more = {}): PlannedCheck => ({
  route: 'upper',
  targetOn,
  anchorOn: '2026-01-01',
  follows,
  ...more,
});

const monthsOf = (checks: readonly PlannedCheck[], fromOn: string, months?: number) =>
  forecastLoad(checks, fromOn, months).months.flatMap(({ month, upper, lower, both }) =>
    upper + lower + both > 0 ? [`${month} ${upper}/${lower}/${both}`] : [],
  );

describe('the load to come', () => {
  it('covers 36 months from the first, with those that have none', () => {
    const { months } = forecastLoad([], '2026-11-15');
    expect(months).toHaveLength(36);
    expect(months[0]).toEqual({ month: '2026-11', upper: 0, lower: 0, both: 0 });
    expect(months.at(-1)?.month).toBe('2029-10');
  });

  // By hand from a calendar: 6 months after a check in April, then every 12.
  it('counts what follows, each from the one before', () => {
    expect(monthsOf([check('2026-04-10', readFollowing('6,12*'))], '2026-01-01')).toEqual(
      ['2026-04', '2026-10', '2027-10', '2028-10'].map((month) => `${month} 1/0/0`),
    );
  });

  // By hand: every 6 months up to 24 months after 1 January 2026, then every 12.
  it('goes on to the next interval when the first has an end', () => {
    const then = readFollowing('6*until-24,12*');
    expect(monthsOf([check('2026-07-01', then)], '2026-01-01', 48)).toEqual(
      ['2026-07', '2027-01', '2027-07', '2028-01', '2029-01'].map((month) => `${month} 1/0/0`),
    );
    const later = check('2026-07-02', then);
    expect(monthsOf([later], '2026-01-01', 48)).toEqual(
      ['2026-07', '2027-01', '2027-07', '2028-07', '2029-07'].map((month) => `${month} 1/0/0`),
    );
  });

  it('counts the days of a fixed calendar, but for those that have passed', () => {
    const then = readFollowing('2026-06-30,2027-02-28,2028-01-01');
    expect(monthsOf([check('2026-07-01', then)], '2026-01-01', 24)).toEqual([
      '2026-07 1/0/0',
      '2027-02 1/0/0',
    ]);
  });

  it('keeps the routes apart and adds up what falls together', () => {
    const checks = ROUTES.flatMap((route) => [
      check('2026-05-31', [], { route }),
      check('2026-05-01', [], { route }),
    ]);
    expect(monthsOf(checks, '2026-01-01')).toEqual(['2026-05 2/2/2']);
  });

  // The plan logic of the follow-up table: one visit covers all lesions of the same route (derived).
  it('counts what one visit of a person answers once, and nothing else', () => {
    const of = (person: string, more = {}) =>
      check('2026-05-20', [{ every: 12 }], { person, ...more });
    const checks = [
      ...[of('a'), of('a', { targetOn: '2026-05-02', follows: [{ every: 6 }] })],
      ...[of('b'), of('a', { route: 'lower' }), check('2026-05-20', [])],
    ];
    expect(monthsOf(checks, '2026-05-01', 13)).toEqual([
      ...['2026-05 3/1/0', '2026-11 1/0/0', '2027-05 2/1/0'],
    ]);
  });

  it('counts what is overdue on the first day, and what follows from there', () => {
    expect(monthsOf([check('2025-08-20', [{ after: 12 }])], '2026-03-15')).toEqual([
      '2026-03 1/0/0',
      '2027-03 1/0/0',
    ]);
  });

  it('says how many plans come to a check without a date, if that lies in the period', () => {
    const undated = (targetOn: string, then: string) =>
      forecastLoad([check(targetOn, readFollowing(then))], '2026-01-01', 24).undated;
    expect(undated('2026-06-01', 'by-findings')).toBe(1);
    expect(undated('2026-06-01', '12,screening')).toBe(1);
    expect(undated('2027-06-01', '12,screening')).toBe(0);
    expect(undated('2028-01-01', 'by-findings')).toBe(0);
    expect(undated('2026-06-01', '12*')).toBe(0);
  });

  const START = { year: 2026, month: 1 };
  const at = (month: number, day: number): string =>
    `${START.year + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

  /** How many of the months from 0 a plan falls on month m, by division alone. */
  const byDivision = (first: number, once: number | undefined, every: number, m: number): number =>
    once === undefined
      ? Number(m >= first && (m - first) % every === 0)
      : Number(m === first) + Number(m >= first + once && (m - first - once) % every === 0);

  it('is what division of months says, for days that every month has', () => {
    const plan = fc.record({
      first: fc.nat(50),
      day: fc.integer({ min: 1, max: 28 }),
      once: fc.option(fc.integer({ min: 1, max: 30 }), { nil: undefined }),
      every: fc.integer({ min: 1, max: 30 }),
    });
    const counted = (loads: ReturnType<typeof forecastLoad>) =>
      loads.months.map(({ upper }) => upper);
    fc.assert(
      fc.property(fc.array(plan, { maxLength: 8 }), fc.integer({ min: 1, max: 48 }), (plans, n) => {
        const checks = plans.map(({ first, day, once, every }) =>
          check(at(first, day), once === undefined ? [{ every }] : [{ after: once }, { every }]),
        );
        const expected = Array.from({ length: n }, (_, m) =>
          plans.reduce((sum, { first, once, every }) => sum + byDivision(first, once, every, m), 0),
        );
        const found = forecastLoad(checks, '2026-01-01', n);
        expect(counted(found)).toEqual(expected);
        expect(found.undated).toBe(0);
      }),
      { seed: 105, numRuns: 500 },
    );
    expect(byDivision(0, undefined, 12, 13)).not.toBe(1);
    expect(
      counted(forecastLoad([check('2026-01-05', [{ every: 12 }])], '2026-01-01', 14)),
    ).not.toEqual(Array.from({ length: 14 }, (_, m) => byDivision(0, undefined, 13, m)));
  });

  it.each([
    ['a period begins on a date', [], '2026-02-30', 12],
    ['a period has whole months, 1 or more', [], '2026-02-01', 0],
    ['a check has its dates', [check('soon', [])], '2026-02-01', 12],
    [
      'an interval is whole months, 1 or more',
      [check('2026-02-01', [{ after: 0 }])],
      '2026-02-01',
      12,
    ],
    [
      'an interval is whole months, 1 or more',
      [check('2026-02-01', [{ every: 0.5 }])],
      '2026-02-01',
      12,
    ],
  ])('refuses: %s', (message, checks, fromOn, months) => {
    expect(() => forecastLoad(checks, fromOn, months)).toThrow(new InvariantError(message));
  });
});

// The notation of the follow-up rules: `src/surveillance/schedule.ts`.
describe('what follows is read as plans write it', () => {
  it.each<[string, readonly Following[]]>([
    ['', []],
    ['12', [{ after: 12 }]],
    ['6,12*', [{ after: 6 }, { every: 12 }]],
    ['6*until-36,12*', [{ every: 6, until: 36 }, { every: 12 }]],
    ['2028-02-29,2030-01-01', [{ on: '2028-02-29' }, { on: '2030-01-01' }]],
    ['12,by-findings', [{ after: 12 }, { word: 'by-findings' }]],
    ['COL-1', [{ word: 'COL-1' }]],
  ])('%s', (text, following) => {
    expect(readFollowing(text)).toEqual(following);
  });

  it.each([
    ['what follows in digits is months or a date', '2027-02-29'],
    ['what follows in digits is months or a date', '6*to-24'],
    ['what follows comes after a month or more', '6,0*'],
  ])('refuses: %s', (message, text) => {
    expect(() => readFollowing(text)).toThrow(new InvariantError(message));
  });
});
