import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hiddenProblems,
  INDICATORS,
  type IndicatorResult,
  type IndicatorWord,
  type OutcomeQuery,
  type OutcomeReport,
  type SmallCellPolicy,
  toReport,
} from '../../src/outcomes/index.js';
import { counted, isAsked, QUERY, type Row } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };
const HIDE: SmallCellPolicy = { smallCells: 'hide', threshold: 5 };

const rows = (word: IndicatorWord, count: number, more: Partial<Row> = {}): readonly Row[] =>
  Array.from({ length: count }, () => ({
    resectedOn: '2025-05-05',
    place: { organ: 'colon' },
    words: { enBloc: word },
    ...more,
  }));

const enBlocOf = (report: OutcomeReport, cell = 0): IndicatorResult | undefined =>
  report.cells[cell]?.indicators.find(({ id }) => id === 'enBloc');

const ends = (result: IndicatorResult | undefined, decimals: number) =>
  result?.kind === 'rate'
    ? [result.interval.lower, result.interval.upper].map((end) => end.toFixed(decimals))
    : [];

describe('a rate in a report', () => {
  // Newcombe, Stat Med 1998;17:857 (from memory, calculated again and equal); R-ESD study.
  it.each([
    [81, 263, ['0.2553', '0.3662']],
    [15, 148, ['0.0624', '0.1605']],
    [0, 20, ['0.0000', '0.1611']],
    [2, 96, ['0.0057', '0.0728']],
  ] as const)('has the published Wilson interval for %i of %i', (events, of, expected) => {
    const cases = [...rows('yes', events), ...rows('no', of - events)];
    const result = enBlocOf(toReport(QUERY, SHOW, counted(cases, QUERY)));
    expect(result).toMatchObject({ numerator: events, denominator: of, rate: events / of });
    expect(ends(result, 4)).toEqual(expected);
  });

  // Hatta W et al. Gut 2021;70:476-484: Clopper-Pearson, four decimals derived.
  it.each([
    [60, 202, ['0.2349', '0.3652']],
    [87, 760, ['0.0927', '0.1393']],
  ] as const)('has the exact interval for %i of %i where that is asked', (events, of, expected) => {
    const query: OutcomeQuery = { ...QUERY, interval: 'clopper-pearson' };
    const cases = [...rows('yes', events), ...rows('no', of - events)];
    expect(ends(enBlocOf(toReport(query, SHOW, counted(cases, query))), 4)).toEqual(expected);
  });

  it('counts neither what nobody told nor what is not over, and says how many', () => {
    const cases = [
      ...rows('yes', 9),
      ...rows('no', 1),
      ...rows('missing', 4),
      ...rows('window-open', 3),
      ...rows('not-applicable', 2),
    ];
    expect(enBlocOf(toReport(QUERY, SHOW, counted(cases, QUERY)))).toMatchObject({
      rate: 0.9,
      denominator: 10,
      missing: 4,
      windowOpen: 3,
      isSmall: true,
    });
  });

  it('is none without an observation', () => {
    expect(enBlocOf(toReport(QUERY, SHOW, counted(rows('missing', 3), QUERY)))).toEqual({
      id: 'enBloc',
      kind: 'no-rate',
      missing: 3,
      windowOpen: 0,
    });
  });

  it('is not to be ranked below 10 cases', () => {
    const ranked = (count: number) =>
      toReport(QUERY, SHOW, counted(rows('yes', count), QUERY)).cells[0]?.isRankable;
    expect([ranked(9), ranked(10)]).toEqual([false, true]);
  });

  it('stands beside a definition with its sources', () => {
    for (const { numerator, denominator, cites } of INDICATORS) {
      expect([numerator, denominator].every((text) => text.length > 0)).toBe(true);
      expect(cites.length).toBeGreaterThan(0);
    }
  });

  it('stands beside published values that are told as numbers', () => {
    const tells = (says: string, value: number): boolean =>
      says.includes(`${Number((100 * value).toFixed(2))} %`);
    for (const { benchmarks } of INDICATORS) {
      for (const { says, atLeast, atMost } of benchmarks) {
        for (const value of [atLeast, atMost]) {
          expect([says, value === undefined || tells(says, value)]).toEqual([says, true]);
        }
      }
    }
    expect(tells('expert level', 0.9)).toBe(false);
    expect(tells('above 80 %', 0.9)).toBe(false);
  });
});

describe('questions where small counts are hidden', () => {
  it.each([
    [{ from: '2025-01-02' }, 'period-too-fine'],
    [{ to: '2025-06-30' }, 'period-too-fine'],
    [
      { filters: { organ: 'colon', fibrosis: 'F1' }, by: ['technique', 'sizeBand'] },
      'question-too-fine',
    ],
  ] as const)('are refused: %o', (change, rule) => {
    const query: OutcomeQuery = { ...QUERY, ...change };
    expect(hiddenProblems(query, HIDE).map((problem) => problem.rule)).toEqual([rule]);
    expect(hiddenProblems(query, SHOW)).toEqual([]);
  });

  it('are answered for whole years', () => {
    const query = { ...QUERY, from: '2024-01-01', to: '2025-12-31' };
    expect(hiddenProblems(query, HIDE)).toEqual([]);
  });
});

const ORGANS = ['colon', 'rectum', 'stomach'];
const FIBROSES = ['F0', 'F1'];
const PERIODS = [
  {},
  { from: '2024-01-01', to: '2024-12-31' },
  { from: '2025-01-01', to: '2025-12-31' },
  { from: '2024-01-01', to: '2025-12-31' },
  { from: '2025-01-01' },
  { to: '2024-12-31' },
  { from: '2024-01-01', to: '2026-12-31' },
];

const QUERIES: readonly OutcomeQuery[] = PERIODS.flatMap((period) =>
  [undefined, ...ORGANS].flatMap((organ) =>
    [undefined, ...FIBROSES].map((fibrosis) => ({
      ...QUERY,
      ...period,
      filters: {
        ...(organ === undefined ? {} : { organ }),
        ...(fibrosis === undefined ? {} : { fibrosis }),
      },
    })),
  ),
);

const casesOf = fc.array(
  fc.record({
    resectedOn: fc.constantFrom('2024-03-01', '2025-03-01', '2026-03-01'),
    place: fc.record({ organ: fc.constantFrom(...ORGANS), fibrosis: fc.constantFrom(...FIBROSES) }),
    words: fc.record({
      enBloc: fc.constantFrom<IndicatorWord>('yes', 'yes', 'yes', 'no', 'missing'),
    }),
  }),
  { minLength: 60, maxLength: 300, size: 'max' },
);

type Answer = (query: OutcomeQuery, cases: readonly Row[]) => IndicatorResult | undefined;
const hiding: Answer = (query, cases) => enBlocOf(toReport(query, HIDE, counted(cases, query)));
/** What a simple program does: it hides small counts of the answer alone. */
const simple: Answer = (query, cases) => {
  const result = enBlocOf(toReport(query, SHOW, counted(cases, query)));
  return result?.kind === 'rate' && result.isSmall ? { id: 'enBloc', kind: 'suppressed' } : result;
};

/** All pairs of filters and periods of which one holds the cases of the other, and a few more. */
function differences(cases: readonly Row[], answer: Answer): number {
  const answered = QUERIES.flatMap((query) => {
    const result = answer(query, cases);
    const who = new Set(cases.filter((row) => isAsked(query, row)));
    return result?.kind === 'rate' ? [{ result, who }] : [];
  });
  const isSmall = (count: number): boolean => count > 0 && count < HIDE.threshold;
  const pairs = answered.flatMap((outer) =>
    answered
      .filter(({ who }) => [...who].every((row) => outer.who.has(row)))
      .map((inner) => ({ outer, inner })),
  );
  return pairs.filter(({ outer, inner }) => {
    const yes = outer.result.numerator - inner.result.numerator;
    const all = outer.result.denominator - inner.result.denominator;
    return isSmall(yes) || isSmall(all - yes);
  }).length;
}

// Source of the demand: brute-force differencing over all filter pairs, the project's must-have
// list; the attack is subtraction.
describe('all answers together, where small counts are hidden', () => {
  it('give no small count away by any pair of filters and periods', () => {
    fc.assert(
      fc.property(casesOf, (cases) => {
        expect(differences(cases, hiding)).toBe(0);
      }),
      { numRuns: 4 },
    );
  });

  it('would, were only the small counts of each answer hidden', () => {
    const [cases = []] = fc.sample(casesOf, { numRuns: 1, seed: 7 });
    expect(differences(cases, simple)).toBeGreaterThan(0);
  });

  it('are there for most questions once there are enough cases', () => {
    const [cases = []] = fc.sample(casesOf, { numRuns: 1, seed: 7 });
    const many = Array.from({ length: 8 }, () => cases).flat();
    const shown = QUERIES.filter((query) => hiding(query, many)?.kind === 'rate');
    expect(shown.length).toBeGreaterThan(QUERIES.length / 2);
  });

  it('show the same for all years and for a period that holds them all, and hide some years', () => {
    const failed = { '2024': 10, '2025': 2, '2026': 10 };
    const cases = Object.entries(failed).flatMap(([year, no]) =>
      Array.from({ length: 50 }, (_, i) => ({
        resectedOn: `${year}-03-01`,
        place: {},
        words: { enBloc: i < no ? ('no' as const) : ('yes' as const) },
      })),
    );
    const during = (period: Pick<OutcomeQuery, 'from' | 'to'>) =>
      hiding({ ...QUERY, ...period }, cases);
    expect(during({})).toMatchObject({ kind: 'rate', numerator: 128, denominator: 150 });
    for (const period of [
      { from: '2024-01-01', to: '2026-12-31' },
      { from: '2018-01-01' },
      { to: '2026-12-31' },
    ]) {
      expect(during(period)).toEqual(during({}));
    }
    expect(during({ from: '2025-01-01' })?.kind).toBe('suppressed');
    expect(during({ to: '2025-12-31' })?.kind).toBe('suppressed');
  });

  it('show the same for a filter and for a stratum', () => {
    const [cases = []] = fc.sample(casesOf, { numRuns: 1, seed: 8 });
    const strata = { ...QUERY, by: ['organ'] } as const satisfies OutcomeQuery;
    const report = toReport(strata, HIDE, counted(cases, strata));
    for (const [i, { stratum }] of report.cells.entries()) {
      const query = { ...QUERY, filters: stratum };
      expect(hiding(query, cases)).toEqual(enBlocOf(report, i));
    }
  });
});
