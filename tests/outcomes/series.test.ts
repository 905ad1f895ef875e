import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import {
  type CaseInOrder,
  cusumSeries,
  type IndicatorWord,
  learningCurve,
  type OutcomeQuery,
  SERIES,
  type SmallCellPolicy,
  toFunnel,
  toReport,
} from '../../src/outcomes/index.js';
import { counted, QUERY, type Row } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };
const HIDE: SmallCellPolicy = { smallCells: 'hide', threshold: 5 };

const caseOf = (enBloc: IndicatorWord, speedCm2PerH: number | null = null): CaseInOrder => ({
  on: '2026-01-01',
  operator: 'o',
  organ: 'colon',
  words: { enBloc, r0: 'missing', curative: 'missing', intraproceduralPerforation: 'no' },
  speedCm2PerH,
  areaCm2: null,
});
const times = <T>(count: number, value: T): readonly T[] =>
  Array.from({ length: count }, () => value);

describe('a cumulative sum of cases', () => {
  it('reaches the limit after 19 successes at 10 and 20 %, as the parameters say', () => {
    // PMC6470078 fig. 3: parameters read; the run is derived.
    const series = cusumSeries(times(19, caseOf('yes')), 'cusum-en-bloc', SHOW);
    expect(series.kind === 'cusum' && series.points.at(-1)?.reached).toBe('acceptable');
    expect(series.kind === 'cusum' && series.points.at(-2)?.reached).toBe(undefined);
  });

  it('leaves out and counts what was not told', () => {
    const series = cusumSeries(
      [caseOf('yes'), caseOf('missing'), caseOf('no')],
      'cusum-en-bloc',
      SHOW,
    );
    expect(series).toMatchObject({
      missing: 1,
      points: [
        { number: 1, failed: false },
        { number: 2, failed: true },
      ],
    });
  });

  it('does not miss the outcome of a case of which it is not asked', () => {
    const never = caseOf('not-applicable');
    const unread = { ...never, words: { ...never.words, r0: 'not-applicable' as const } };
    const cases = [caseOf('yes', 9), unread];
    expect(cusumSeries(cases, 'cusum-en-bloc', SHOW)).toMatchObject({ missing: 0 });
    expect(cusumSeries(cases, 'cusum-speed', SHOW)).toMatchObject({ missing: 0 });
    expect(cusumSeries(cases, 'cusum-r0', SHOW)).toMatchObject({ missing: 1 });
  });

  it('names a work for what is called published', () => {
    const cites = Object.values(SERIES).flatMap((series) => series.cites);
    const called = cites.filter(
      ({ work, basis }) => work === 'esdPractice' && basis === 'published',
    );
    expect(cites.length).toBeGreaterThan(4);
    expect(called).toEqual([]);
  });

  it('takes a speed below that of an expert, 9 cm2/h, as a failure', () => {
    const cases = [caseOf('yes', 9), caseOf('yes', 8.9), caseOf('yes')];
    expect(cusumSeries(cases, 'cusum-speed', SHOW)).toMatchObject({
      missing: 1,
      points: [{ failed: false }, { failed: true }],
    });
  });

  it('takes a perforation as a failure', () => {
    const safe = caseOf('yes');
    const cases = [
      safe,
      { ...safe, words: { ...safe.words, intraproceduralPerforation: 'yes' as const } },
    ];
    expect(cusumSeries(cases, 'cusum-perforation', SHOW)).toMatchObject({
      points: [{ failed: false }, { failed: true }],
    });
  });

  it('is hidden where small counts are, for it shows every case', () => {
    expect(cusumSeries([caseOf('yes')], 'cusum-r0', HIDE).kind).toBe('hidden');
    expect(learningCurve([caseOf('yes')], HIDE).kind).toBe('hidden');
  });
});

describe('a learning curve', () => {
  const cases = [
    ...times(10, caseOf('no', 5)),
    ...times(20, caseOf('yes', 10)),
    ...times(3, caseOf('no', 12)),
  ];

  it('has rates and the middle speed of each block', () => {
    expect(learningCurve(cases, SHOW, 10)).toMatchObject({
      cases: 33,
      blocks: [
        { fromCase: 1, toCase: 10, enBlocRate: 0, medianSpeedCm2PerH: 5 },
        { fromCase: 11, toCase: 20, enBlocRate: 1, medianSpeedCm2PerH: 10 },
        { fromCase: 21, toCase: 30, enBlocRate: 1 },
        { fromCase: 31, toCase: 33, enBlocRate: 0 },
      ],
    });
  });

  // Wilson: without an event the upper end is z²/(n + z²), newcombe1998; z² is 3.841.
  it('tells of each rate what it counts, and its interval', () => {
    const curve = learningCurve(cases, SHOW, 10);
    const [first, second, , last] = curve.kind === 'hidden' ? [] : curve.blocks;
    expect(first?.counts.enBlocRate).toMatchObject({ events: 0, of: 10, lower: 0 });
    expect(first?.counts.enBlocRate?.upper).toBeCloseTo(3.8415 / 13.8415, 4);
    expect(second?.counts.enBlocRate?.lower).toBeCloseTo(10 / 13.8415, 4);
    expect(last?.counts.enBlocRate).toMatchObject({ events: 0, of: 3 });
    expect(last?.counts.enBlocRate?.upper).toBeCloseTo(3.8415 / 6.8415, 4);
  });

  it('reaches a level with the first block from which every full block keeps it', () => {
    // Expert level of colorectal dissection: en bloc 90 % and 9 cm2/h (PMC7411630, abstract).
    const curve = learningCurve(cases, SHOW, 10, { organs: ['colon'] });
    const reached = (says: string) =>
      curve.kind === 'learning-curve' &&
      curve.thresholds.find((row) => row.says.startsWith(says))?.reachedAtCase;
    expect(reached('en bloc 90 %')).toBe(20);
    expect(reached('9 cm2/h')).toBe(20);
    expect(reached('17.9 cm2/h')).toBe(undefined);
    expect(reached('R0')).toBe(undefined);
  });

  it('does not count a dissection that never began', () => {
    const [first, ...others] = cases;
    const with1 = [...(first ? [first] : []), caseOf('not-applicable'), ...others];
    expect(learningCurve(with1, SHOW, 10)).toEqual(learningCurve(cases, SHOW, 10));
  });

  it('refuses blocks of no size', () => {
    expect(() => learningCurve(cases, SHOW, 0)).toThrow(InvariantError);
  });
});

describe('a funnel', () => {
  const BY: OutcomeQuery = { ...QUERY, by: ['operator'] };
  const unit = (operator: string, yes: number, no: number): readonly Row[] =>
    (['yes', 'no'] as const).flatMap((word) =>
      times(word === 'yes' ? yes : no, {
        resectedOn: '2025-01-01',
        place: { operator },
        words: { enBloc: word },
      }),
    );
  const cases = [
    ...unit('a', 46, 4),
    ...unit('b', 35, 15),
    ...unit('c', 40, 10),
    ...unit('d', 9, 0),
  ];
  const funnelOf = (policy: SmallCellPolicy) =>
    toFunnel(toReport(BY, policy, counted(cases, BY)).cells.slice(1), 'enBloc', 0.9);

  /** Chance of so many events or fewer, by adding up. */
  function orFewer(events: number, of: number, rate: number): number {
    let [sum, term] = [0, (1 - rate) ** of];
    for (let k = 0; k <= events; k += 1) {
      sum += term;
      term *= ((of - k) / (k + 1)) * (rate / (1 - rate));
    }
    return sum;
  }

  it('places rates by what the binomial distribution itself says', () => {
    const funnel = funnelOf(SHOW);
    for (const { events, of, position } of funnel.points) {
      const tail = Math.min(orFewer(events, of, 0.9), 1 - orFewer(events - 1, of, 0.9));
      expect(position).toBe(tail <= 0.001 ? 'beyond-998' : tail <= 0.025 ? 'beyond-95' : 'within');
    }
    expect(funnel.points.map(({ position }) => position)).toEqual([
      'within',
      'beyond-998',
      'beyond-95',
    ]);
  });

  it('leaves out whoever has fewer than 10 observations, and whoever is hidden', () => {
    expect(funnelOf(SHOW).leftOut).toBe(1);
    expect(funnelOf(HIDE).leftOut).toBeGreaterThan(1);
  });

  it('holds points to their own common rate where no target is given', () => {
    const cells = toReport(BY, SHOW, counted(cases, BY)).cells.slice(1);
    expect(toFunnel(cells, 'enBloc')).toMatchObject({ target: 121 / 150, targetIs: 'own-rate' });
  });

  it('has its points among the sizes of its limits', () => {
    const { limits } = funnelOf(SHOW);
    expect(limits.map(({ of }) => of)).toContain(50);
    expect(limits[0]?.of).toBe(10);
    expect(limits.length).toBeLessThan(70);
  });
});
