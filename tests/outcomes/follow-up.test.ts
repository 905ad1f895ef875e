import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  countFollowUps,
  type FirstCheckCount,
  type FollowUpCounts,
  LOST_AFTER_DAYS,
  type SmallCellPolicy,
  toReport,
  type WatchedFor,
} from '../../src/outcomes/index.js';
import published from '../published/remission-6mp.json' with { type: 'json' };
import { counted, QUERY } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };
const HIDE: SmallCellPolicy = { smallCells: 'hide', threshold: 5 };
const DAYS_PER_WEEK = 7;

const curveOf = (watched: readonly WatchedFor[], policy: SmallCellPolicy) =>
  toReport(QUERY, policy, counted([], QUERY, { watched })).recurrence;

const REMISSION: readonly WatchedFor[] = [
  ...published.events.map((weeks) => ({ days: weeks * DAYS_PER_WEEK, recurred: true, lesions: 1 })),
  ...published.censored.map((weeks) => ({
    days: weeks * DAYS_PER_WEEK,
    recurred: false,
    lesions: 1,
  })),
];

describe(`the curve of recurrence, against ${published.place}`, () => {
  it('has the published shares, in months from the resection on', () => {
    const curve = curveOf(REMISSION, SHOW);
    const steps = curve?.points.filter(({ events }) => events > 0) ?? [];
    expect(steps.map(({ survival }) => survival.toFixed(3))).toEqual(
      published.steps.map(({ survival }) => survival.toFixed(3)),
    );
    // 23 weeks are 161 days, 5.29 months of 30.4375 days.
    expect(steps.at(-1)?.months.toFixed(2)).toBe('5.29');
    expect(curve?.points[0]).toMatchObject({ months: 0, atRisk: 21, survival: 1, events: 0 });
    expect(curve).toMatchObject({ lesions: 21, events: 9, isCoarsened: false, isByMonth: false });
  });

  it('is none where no lesion was checked', () => {
    expect(curveOf([], SHOW)).toBeUndefined();
  });
});

describe('the curve of recurrence where small counts are hidden', () => {
  const watched = fc.array(
    fc.record({
      days: fc.nat(1500),
      recurred: fc.integer({ min: 0, max: 5 }).map((n) => n === 0),
      lesions: fc.constant(1),
    }),
    { minLength: 5, maxLength: 150, size: 'max' },
  );

  it('has no point with a few events, and ends where a few are left', () => {
    fc.assert(
      fc.property(watched, (lesions) => {
        const curve = curveOf(lesions, HIDE);
        for (const { events, censored, atRisk } of curve?.points ?? []) {
          expect(events === 0 || events >= 5).toBe(true);
          expect(atRisk - events - censored).toBeGreaterThanOrEqual(5);
        }
        const shown = curve?.points.reduce((sum, { events }) => sum + events, 0);
        expect(curve?.events).toBe(shown);
      }),
    );
  });

  it('leaves none or not a few events after its end, for the number of all is told too', () => {
    let cut = 0;
    fc.assert(
      fc.property(watched, (lesions) => {
        const all = lesions.filter(({ recurred }) => recurred).length;
        const rest = all - (curveOf(lesions, HIDE)?.events ?? 0);
        // Fewer than 5 in all are not told elsewhere, and none of them is shown.
        expect(rest === 0 || rest >= 5 || rest === all).toBe(true);
        if (rest >= 5 && rest < all) cut += 1;
      }),
    );
    expect(cut).toBeGreaterThan(0);
  });

  const at = (days: number, recurred: boolean, lesions: number) => ({ days, recurred, lesions });
  const stepsOf = (lesions: readonly WatchedFor[]) =>
    curveOf(lesions, HIDE)?.points.map(({ events }) => events);

  it('joins to a step of 5 events the 3 that would be left, and falls as far', () => {
    const steps = [at(100, true, 5), at(200, true, 5), at(300, true, 3), at(400, false, 50)];
    expect(stepsOf(steps)).toEqual([0, 5, 8]);
    // 50 of 63 lesions are without neoplasia in the end, by division.
    expect(curveOf(steps, HIDE)?.points.at(-1)).toMatchObject({ months: 9.9, survival: 0.79 });
    const even = steps.map((step) => (step.days === 300 ? at(300, true, 5) : step));
    expect(stepsOf(even)).toEqual([0, 5, 5, 5]);
  });

  it('gives up a step of 5 events where 3 would be left and few lesions are after them', () => {
    const steps = [at(100, true, 5), at(200, true, 5), at(300, true, 3), at(400, false, 4)];
    expect(stepsOf(steps)).toEqual([0, 5]);
  });

  it('has one point a month where days are very many, as exact after each month', () => {
    const many = Array.from({ length: 1500 }, (_, i) => ({
      ...{ days: 30 + ((i * 7919) % 1400), recurred: i % 9 === 0, lesions: 1 + (i % 3) },
    }));
    const curve = curveOf(many, SHOW);
    const points = curve?.points ?? [];
    expect(curve?.isByMonth).toBe(true);
    const months = points.map((point) => Math.ceil(point.months));
    expect(months).toEqual([...new Set(months)]);
    expect(months.length).toBeGreaterThan(40);
    const watchedFor = (days: number) =>
      many.filter((each) => each.days >= days).reduce((sum, { lesions }) => sum + lesions, 0);
    for (const { months: at, atRisk, survival } of points.slice(1)) {
      // Kaplan and Meier: the product, over the days with events, of the share that goes on.
      const share = [...new Set(many.filter(({ recurred }) => recurred).map(({ days }) => days))]
        .filter((days) => days / 30.4375 <= at + 1e-9)
        .map((days) => {
          const events = many.filter((each) => each.recurred && each.days === days);
          return 1 - events.reduce((sum, { lesions }) => sum + lesions, 0) / watchedFor(days);
        })
        .reduce((product, each) => product * each, 1);
      expect(survival).toBeCloseTo(share, 9);
      expect(atRisk).toBe(watchedFor((Math.ceil(at) - 1) * 30.4375 + 1e-6));
    }
  });

  it('has a point a day where they are not', () => {
    const some = Array.from({ length: 200 }, (_, i) => ({
      ...{ days: 30 + i, recurred: i % 9 === 0, lesions: 1 },
    }));
    expect(curveOf(some, SHOW)?.points.length).toBe(201);
  });

  it('would show single events otherwise', () => {
    const events = curveOf(REMISSION, SHOW)?.points.map((point) => point.events) ?? [];
    expect(events).toContain(1);
  });

  it('is none for a part of the cases, whose difference from all could be small', () => {
    const query = { ...QUERY, filters: { organ: 'colon' } };
    const report = toReport(query, HIDE, counted([], query, { watched: REMISSION }));
    expect(report).not.toHaveProperty('recurrence');
    expect(report).not.toHaveProperty('followUp');
  });
});

// Derived: the windows of the plan; lost after half a year: common practice, no source.
describe('the first check', () => {
  const last = { check: 'open', openUntil: '2026-06-30' } as const;
  const at = <C>(check: C) => ({ check, openUntil: null });

  it.each<[string, Omit<FirstCheckCount, 'cases'>, string, keyof FollowUpCounts]>([
    ['done by its last day', at('done'), '2026-12-31', 'onTime'],
    ['after it', at('late'), '2026-12-31', 'late'],
    ['on the last day', last, '2026-06-30', 'notYetDue'],
    ['a day later', last, '2026-07-01', 'overdue'],
    ['183 days later', last, '2026-12-30', 'overdue'],
    ['184 days later', last, '2026-12-31', 'lost'],
    ['without a last day', at('open'), '2026-12-31', 'notPlanned'],
    ['not to be reached', at('lost'), '2026-07-01', 'lost'],
    ['not wanted', at('ended'), '2026-07-01', 'ended'],
    ['before pathology', at('provisional'), '2026-07-01', 'notPlanned'],
    ['without a plan', at('not-planned'), '2026-07-01', 'notPlanned'],
    ['without a plan, and looked at', at('unplanned'), '2026-07-01', 'unplanned'],
  ])('%s', (_name, first, asOf, state) => {
    expect(LOST_AFTER_DAYS).toBe(183);
    const counts = countFollowUps([{ ...first, cases: 3 }], asOf);
    expect(Object.entries(counts).filter(([, cases]) => cases !== 0)).toEqual([[state, 3]]);
  });
});
