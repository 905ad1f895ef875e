import { describe, expect, it } from 'vitest';
import {
  type CaseInOrder,
  type RanOver,
  type SmallCellPolicy,
  speedSeries,
} from '../../src/outcomes/index.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };

const caseOf = (change: Partial<CaseInOrder>): CaseInOrder => ({
  on: '2026-01-01',
  operator: 'o',
  organ: 'colon',
  words: { enBloc: 'yes', r0: 'missing', curative: 'missing', intraproceduralPerforation: 'no' },
  speedCm2PerH: 9,
  areaCm2: 12,
  ...change,
});

const seriesOf = (cases: readonly CaseInOrder[], over: RanOver = {}) => {
  const series = speedSeries(cases, SHOW, over);
  if (series.kind === 'hidden') throw new Error('single cases are shown here');
  return series;
};

describe('speeds against the area of the specimen', () => {
  it('are those of the cases that tell both; the others are counted', () => {
    const cases = [
      caseOf({ speedCm2PerH: 4.5, organ: 'stomach' }),
      caseOf({ speedCm2PerH: null }),
      caseOf({ areaCm2: null }),
      caseOf({ areaCm2: 0.5 }),
    ];
    expect(seriesOf(cases)).toMatchObject({
      points: [
        { areaCm2: 12, speedCm2PerH: 4.5, organ: 'stomach' },
        { areaCm2: 0.5, speedCm2PerH: 9, organ: 'colon' },
      ],
      told: 2,
      missing: 2,
    });
  });

  it('do not miss a dissection that never began', () => {
    const { words } = caseOf({});
    const never = { ...words, enBloc: 'not-applicable' as const };
    const cases = [caseOf({ words: never, speedCm2PerH: null, areaCm2: null })];
    expect(seriesOf(cases)).toMatchObject({ points: [], told: 0, missing: 0 });
  });

  it.each([[['colon']], [['rectum']], [['colon', 'rectum']]])(
    'stand beside 9 cm2/h, the expert level in the colorectum (PMC7411630, abstract), of %j',
    (organs) => {
      const { level, cites } = seriesOf([], { organs });
      expect(level?.speedCm2PerH).toBe(9);
      expect(cites.map(({ work }) => work)).toEqual(['colorectalLevel2020']);
    },
  );

  it.each([[{}], [{ organs: ['stomach'] }], [{ organs: ['colon', 'oesophagus'] }]])(
    'do not stand beside a level of the colorectum where others may be among them: %j',
    (over) => {
      const { level, cites } = seriesOf([], over);
      expect([level, cites]).toEqual([undefined, []]);
    },
  );

  it('are those of the organs over which they run', () => {
    const cases = [caseOf({}), caseOf({ organ: 'stomach' }), caseOf({ organ: 'rectum' })];
    const { points, told } = seriesOf(cases, { organs: ['colon', 'rectum'] });
    expect([points.map(({ organ }) => organ), told]).toEqual([['colon', 'rectum'], 2]);
  });

  it.each([499, 500, 501, 777, 1000, 1001, 9999])(
    'are drawn 500 at most, evenly and in their order: of %i',
    (count) => {
      const cases = Array.from({ length: count }, (_, i) => caseOf({ areaCm2: i + 1 }));
      const { points, told, missing } = seriesOf(cases);
      const order = points.map(({ areaCm2 }) => areaCm2 - 1);
      expect([points.length, told, missing]).toEqual([Math.min(count, 500), count, 0]);
      expect(order[0]).toBe(0);
      const steps = order.slice(1).map((each, i) => each - (order[i] ?? 0));
      const step = Math.max(1, count / 500);
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(Math.floor(step));
      expect(Math.max(...steps)).toBeLessThanOrEqual(Math.ceil(step));
      expect(count - 1 - (order.at(-1) ?? 0)).toBeLessThan(step);
    },
  );

  it('are hidden where small counts are, for each is a case', () => {
    const series = speedSeries([caseOf({})], { smallCells: 'hide', threshold: 5 });
    expect(series).toMatchObject({ kind: 'hidden', because: expect.stringMatching(/hidden here/) });
    expect(JSON.stringify(series)).not.toMatch(/12/);
  });
});
