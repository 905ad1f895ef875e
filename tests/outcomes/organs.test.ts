import { describe, expect, it } from 'vitest';
import {
  type CaseInOrder,
  cusumSeries,
  INDICATORS,
  learningCurve,
  type OutcomeSeries,
  organsOf,
  ranOver,
  SERIES,
  type SmallCellPolicy,
  speaksOf,
  toFunnel,
  toReport,
} from '../../src/outcomes/index.js';
import { THRESHOLDS } from '../../src/outcomes/series.table.js';
import { counted, QUERY } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };

/** Of whose cases each work speaks, as its own words say; the others tell no organ. */
const ORGANS_OF_WORK: Readonly<Record<string, readonly string[]>> = {
  colorectalLevel2020: ['colon', 'rectum'],
  jeonHh: ['colon', 'rectum'],
  gePort2023: ['rectum'],
  gastricTwoOperators2025: ['stomach'],
};

interface Published {
  readonly organs?: readonly string[];
  readonly cites: readonly { readonly work: string }[];
}

/** Values that claim more organs than their work has. */
const tooWide = (values: readonly Published[]): readonly Published[] =>
  values.filter(({ organs, cites }) =>
    cites.some(({ work }) => {
      const of = ORGANS_OF_WORK[work];
      return of !== undefined && !(organs?.every((organ) => of.includes(organ)) ?? false);
    }),
  );

describe('a published value', () => {
  const report = toReport(QUERY, SHOW, counted([], QUERY));
  const values = [
    ...INDICATORS.flatMap(({ benchmarks }) => benchmarks),
    ...report.speedBenchmarks,
    ...Object.values(SERIES),
    ...THRESHOLDS,
  ];

  it('names the organs of its work (as the works themselves say)', () => {
    expect(values.length).toBeGreaterThan(20);
    expect(tooWide(values)).toEqual([]);
    expect(tooWide([{ cites: [{ work: 'gePort2023' }] }])).toHaveLength(1);
    const wide = { organs: ['colon', 'rectum'], cites: [{ work: 'gePort2023' }] };
    expect(tooWide([wide])).toHaveLength(1);
  });

  it('tells them in the answer itself', () => {
    const [enBloc] = JSON.parse(JSON.stringify(report)).definitions;
    expect(enBloc.benchmarks[0].organs).toEqual(['colon', 'rectum']);
    expect(enBloc.benchmarks[1].organs).toEqual(['rectum']);
  });

  it.each([
    [['colon', 'rectum'], ['colon'], true],
    [['colon', 'rectum'], ['colon', 'rectum'], true],
    [['colon', 'rectum'], ['stomach'], false],
    [['rectum'], ['colon', 'rectum'], false],
    [['rectum'], undefined, false],
    [undefined, undefined, true],
    [undefined, ['stomach'], true],
  ] as const)('of %j may stand beside cases of %j: %s', (organs, cases, may) => {
    expect(speaksOf(organs === undefined ? {} : { organs }, cases)).toBe(may);
  });
});

const caseOf = (organ: string, enBloc: 'yes' | 'no' = 'yes'): CaseInOrder => ({
  on: '2026-01-01',
  operator: 'o',
  organ,
  words: { enBloc, r0: enBloc, curative: enBloc, intraproceduralPerforation: 'no' },
  speedCm2PerH: enBloc === 'yes' ? 12 : 5,
  areaCm2: 10,
});
const CASES = ['colon', 'stomach', 'rectum', 'oesophagus', 'colon'].map((organ) => caseOf(organ));
const AIMS = { acceptable: 0.05, unacceptable: 0.2 };

describe('a cumulative sum', () => {
  const asked = (organ?: string, aims = {}, name: keyof typeof SERIES = 'cusum-en-bloc') =>
    cusumSeries(CASES, name, SHOW, { filters: organ === undefined ? {} : { organ }, aims });

  it('runs over the organs of its aims, and counts the cases of others', () => {
    expect(asked()).toMatchObject({
      ...{ aimsOf: ['colon', 'rectum'], over: { organs: ['colon', 'rectum'] }, ofOtherOrgans: 2 },
      points: [{ number: 1 }, { number: 2 }, { number: 3 }],
    });
  });

  it('runs over one organ where the question is about it', () => {
    const ofColon = CASES.filter(({ organ }) => organ === 'colon');
    const series = cusumSeries(ofColon, 'cusum-perforation', SHOW, {
      ...{ filters: { organ: 'colon', operator: 'o' }, aims: {} },
    });
    const over = { organs: ['colon'], operator: 'o' };
    expect(series).toMatchObject({ over, ofOtherOrgans: 0, points: [{}, {}] });
  });

  it('is none of an organ of which its aims do not speak, and says why', () => {
    const because = expect.stringMatching(/published for colon and rectum.*of your own/);
    expect(asked('stomach')).toEqual({ kind: 'hidden', because });
    expect(asked('stomach', { acceptable: 0.01 })).toMatchObject({ kind: 'hidden' });
  });

  it('runs over all that is asked for by aims that the question brings', () => {
    const series = asked(undefined, AIMS);
    expect(series).toMatchObject({ kind: 'cusum', over: {}, ofOtherOrgans: 0 });
    expect(series).not.toHaveProperty('aimsOf');
    const works = series.kind === 'cusum' ? series.cites.map(({ work }) => work) : [];
    expect(works).not.toContain('colorectalLevel2020');
  });

  it('of speed is none of another organ whatever the aims, for the speed itself is a level', () => {
    expect(asked('stomach', AIMS, 'cusum-speed')).toMatchObject({ kind: 'hidden' });
    const series = asked(undefined, AIMS, 'cusum-speed');
    expect(series).toMatchObject({ over: { organs: ['colon', 'rectum'] } });
    // The level keeps its source; the aims have none but the question.
    const works = series.kind === 'cusum' ? series.cites.map(({ work }) => work) : [];
    expect(works).toContain('colorectalLevel2020');
    expect(works).not.toContain('esdPractice');
  });

  it('of R0, whose aims are chosen without a source, runs over every organ', () => {
    expect(asked(undefined, {}, 'cusum-r0')).toMatchObject({ over: {}, ofOtherOrgans: 0 });
  });
});

describe('a learning curve', () => {
  const cases = [
    ...Array.from({ length: 20 }, () => caseOf('stomach', 'no')),
    ...Array.from({ length: 20 }, () => caseOf('colon')),
  ];
  const told = (series: OutcomeSeries) =>
    series.kind === 'learning-curve'
      ? series.thresholds.map(({ organs, isOfThese, reachedAtCase }) => ({
          organs: organs ?? [],
          ...{ isOfThese, reachedAtCase },
        }))
      : [];

  it('does not hold cases of all organs to the level of some', () => {
    const rows = told(learningCurve(cases, SHOW, 10));
    expect(rows.filter(({ isOfThese }) => !isOfThese).length).toBeGreaterThan(2);
    for (const { organs, isOfThese, reachedAtCase } of rows) {
      expect(isOfThese).toBe(organs.length === 0);
      if (!isOfThese) expect(reachedAtCase).toBe(undefined);
    }
  });

  it('reaches a level of the colon by cases of the colon', () => {
    const curve = learningCurve(cases, SHOW, 10, ranOver({}, ['colon', 'rectum']));
    expect(curve).toMatchObject({ cases: 20, over: { organs: ['colon', 'rectum'] } });
    const [enBloc] = told(curve);
    expect(enBloc).toEqual({ organs: ['colon', 'rectum'], isOfThese: true, reachedAtCase: 10 });
    const ofStomach = told(curve).filter(({ organs }) => organs.includes('stomach'));
    expect(ofStomach.map(({ isOfThese }) => isOfThese)).toEqual([false]);
  });
});

describe('over whose cases something runs', () => {
  it('is said by the filter before all', () => {
    expect(ranOver({ organ: 'colon' }, ['stomach'])).toEqual({ organs: ['colon'] });
    expect(ranOver({ operator: 'o' })).toEqual({ operator: 'o' });
    expect([organsOf({}), organsOf({ organ: 'colon' })]).toEqual([undefined, ['colon']]);
  });

  it('is said by a funnel', () => {
    expect(toFunnel([], 'r0', undefined, { organs: ['colon'] }).over.organs).toEqual(['colon']);
    expect(toFunnel([], 'r0').over).toEqual({});
  });
});
