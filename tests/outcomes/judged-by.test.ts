import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type FinestCells,
  type IndicatorWord,
  JUDGED_BY,
  judgedBy,
  judgedByOfAll,
  type OutcomeQuery,
  type SmallCellPolicy,
  toReport,
} from '../../src/outcomes/index.js';
import { counted, QUERY, type Row } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };
const HIDE: SmallCellPolicy = { smallCells: 'hide', threshold: 5 };
const BY_SET: OutcomeQuery = { ...QUERY, by: JUDGED_BY };

const rows = (count: number, ruleSet: string, curative: IndicatorWord, organ = 'colon') =>
  Array.from(
    { length: count },
    (_, i): Row => ({
      resectedOn: i % 2 === 0 ? '2024-03-01' : '2025-03-01',
      place: { organ, ruleSet, fibrosis: i % 3 === 0 ? 'F1' : 'F0' },
      words: { curative },
    }),
  );

const cellsOf = (all: readonly Row[], query: OutcomeQuery = BY_SET): FinestCells =>
  counted(all, query).strata;

const cautionsOf = (all: readonly Row[], policy = SHOW): readonly string[] => {
  const sets =
    policy.smallCells === 'show'
      ? judgedBy(cellsOf(all))
      : judgedByOfAll(cellsOf(all), QUERY, policy);
  const { cautions } = toReport(QUERY, policy, counted(all, QUERY, { judgedBy: sets }));
  return cautions.filter((caution) => caution.startsWith('The rate of curative resections m'));
};

describe('the rule sets behind a rate of curative resections', () => {
  const MIXED = [
    ...rows(12, 'jsccr-2019', 'yes'),
    ...rows(3, 'jsccr-2019', 'no'),
    ...rows(7, 'esge-esd-2022', 'yes'),
    ...rows(4, 'esge-esd-2022', 'missing'),
    ...rows(9, 'esge-esd-2022', 'yes', 'stomach'),
    ...rows(2, 'jgca-2021', 'not-applicable', 'stomach'),
  ];

  it('are told with the cases that they judged, which are those of the rate', () => {
    const sets = judgedBy(cellsOf(MIXED));
    expect(sets).toEqual([
      { organ: 'colon', ruleSet: 'esge-esd-2022', judged: 7 },
      { organ: 'colon', ruleSet: 'jsccr-2019', judged: 15 },
      { organ: 'stomach', ruleSet: 'esge-esd-2022', judged: 9 },
    ]);
    const [all] = toReport(QUERY, SHOW, counted(MIXED, QUERY)).cells;
    const rate = all?.indicators.find(({ id }) => id === 'curative');
    const judged = sets.reduce((sum, each) => sum + (each.judged ?? 0), 0);
    expect(rate).toMatchObject({ denominator: judged });
  });

  it('are warned of where an organ has more than one, with the way to tell them apart', () => {
    const [caution, ...others] = cautionsOf(MIXED);
    expect(others).toEqual([]);
    expect(caution).toContain('(colon: esge-esd-2022, jsccr-2019)');
    expect(caution).toContain('by=ruleSet');
  });

  it('are not warned of where each organ has one of its own', () => {
    const apart = [...rows(6, 'jsccr-2019', 'yes'), ...rows(6, 'jgca-2021', 'yes', 'stomach')];
    expect([cautionsOf(apart), cautionsOf(apart, HIDE)]).toEqual([[], []]);
  });
});

describe('the rule sets where small counts are hidden', () => {
  const cases = fc.array(
    fc.record({
      resectedOn: fc.constantFrom('2024-03-01', '2025-03-01'),
      place: fc.record({
        organ: fc.constantFrom('colon', 'stomach'),
        ruleSet: fc.constantFrom('set-a', 'set-a', 'set-b', 'set-c'),
        fibrosis: fc.constantFrom('F0', 'F1'),
      }),
      words: fc.record({ curative: fc.constantFrom<IndicatorWord>('yes', 'yes', 'no', 'missing') }),
    }),
    { minLength: 60, maxLength: 400, size: 'max' },
  );

  it('are those of which the answer by organ and rule set shows the cases, without a count', () => {
    let told = 0;
    const property = fc.property(cases, (all) => {
      const sets = judgedByOfAll(cellsOf(all), QUERY, HIDE);
      const shown = toReport(BY_SET, HIDE, counted(all, BY_SET))
        .cells.slice(1)
        .filter(({ cases: shownCases = 0 }) => shownCases > 0)
        .map(({ stratum: { organ, ruleSet } }) => ({ organ, ruleSet }));
      expect(new Set(sets.map((each) => JSON.stringify(each)))).toEqual(
        new Set(shown.map((each) => JSON.stringify(each))),
      );
      told += sets.length;
    });
    fc.assert(property, { numRuns: 40, seed: 2 });
    expect(told).toBeGreaterThan(40);
  });

  it('are of the organ and the set of a question, and else the same', () => {
    const all = [
      ...rows(20, 'a', 'yes'),
      ...rows(20, 'b', 'yes'),
      ...rows(20, 'a', 'no', 'stomach'),
    ];
    const asked = (filters: OutcomeQuery['filters']) =>
      judgedByOfAll(cellsOf(all), { filters }, HIDE).map(({ organ, ruleSet }) => [organ, ruleSet]);
    expect(asked({})).toEqual([
      ['colon', 'a'],
      ['colon', 'b'],
      ['stomach', 'a'],
    ]);
    expect(asked({ fibrosis: 'F1' })).toEqual(asked({}));
    expect(asked({ organ: 'stomach' })).toEqual([['stomach', 'a']]);
    expect(asked({ organ: 'colon', ruleSet: 'b' })).toEqual([['colon', 'b']]);
    expect(cautionsOf(all, HIDE)[0]).toContain(
      'may mix verdicts by the rule sets of all kept cases (colon: a, b)',
    );
  });

  it('would give small counts away, were they counted within each question', () => {
    const all = [...rows(20, 'a', 'yes'), ...rows(9, 'b', 'yes')];
    const weak = (filters: OutcomeQuery['filters']) =>
      judgedBy(cellsOf(all, { ...BY_SET, filters }))
        .filter(({ judged = 0 }) => judged >= HIDE.threshold)
        .find(({ ruleSet }) => ruleSet === 'b')?.judged;
    const [every, some] = [weak({}), weak({ fibrosis: 'F0' })];
    expect([every, some]).toEqual([9, 6]);
  });
});
