import { describe, expect, it } from 'vitest';
import { type CubeCell, measuredCells, NO_CASES } from '../../src/outcomes/index.js';

/** Words of a cell, as a store counts them; no cell has so few of the others. */
const cell = (organ: string, words: Partial<CubeCell['indicators']>): CubeCell => ({
  stratum: { organ },
  cases: 20,
  indicators: { ...NO_CASES.indicators, ...words },
});
const counts = (yes: number, no: number, missing: number, open: number) => ({
  ...{ yes, no, missing, 'window-open': open, 'not-applicable': 20 - yes - no - missing - open },
});
const CELLS = [
  cell('colon', { enBloc: counts(5, 2, 1, 1), r0: counts(1, 1, 1, 0) }),
  cell('rectum', { enBloc: counts(3, 0, 0, 0), r0: counts(3, 1, 0, 0) }),
];
const values = (organ: string, speeds: readonly (readonly [number, number])[], days: number) => ({
  stratum: { organ },
  values: {
    speedCm2PerH: speeds.map(([value, count]) => ({ value, count })),
    ...{ sizeMm: [], procedureMin: [], pathologyDays: [{ value: 7, count: days }] },
  },
});

describe('quantities', () => {
  const { all, strata } = measuredCells(
    CELLS,
    ['organ'],
    [
      values(
        'colon',
        [
          [12, 1],
          [4, 3],
          [10, 1],
        ],
        2,
      ),
      values('rectum', [[20, 2]], 4),
    ],
  );

  // By hand, rank 1 + (n - 1) p (Hyndman and Fan, definition 7): of 4 4 4 10 12, and of
  // 4 4 4 10 12 20 20.
  it('have quartiles of the values of each stratum, and of all values together', () => {
    expect(strata[0]?.quantities.speedCm2PerH).toMatchObject({ q1: 4, median: 4, q3: 10 });
    expect(strata[1]?.quantities.speedCm2PerH).toMatchObject({ q1: 20, median: 20, q3: 20 });
    expect(all.quantities.speedCm2PerH).toMatchObject({ q1: 4, median: 10, q3: 16 });
  });

  it('are missing where a dissection that began, whatever came of it, has no value', () => {
    expect(strata[0]?.quantities.speedCm2PerH).toMatchObject({ n: 5, missing: 4 });
    expect(strata[1]?.quantities.speedCm2PerH).toMatchObject({ n: 2, missing: 1 });
    expect(all.quantities.speedCm2PerH).toMatchObject({ n: 7, missing: 5 });
    expect(all.quantities.sizeMm).toEqual({ n: 0, missing: 12, q1: null, median: null, q3: null });
  });

  it('of pathology are of those who wait for a report or have one', () => {
    expect(strata[0]?.quantities.pathologyDays).toMatchObject({ n: 2, missing: 1, median: 7 });
    expect(strata[1]?.quantities.pathologyDays).toMatchObject({ n: 4, missing: 0 });
    expect(all.quantities.pathologyDays).toMatchObject({ n: 6, missing: 1 });
  });
});
