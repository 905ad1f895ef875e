import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toUnitReport } from '../../src/measure/index.js';
import {
  boundsOf,
  type IndicatorResult,
  type IndicatorWord,
  type SmallCellPolicy,
  toReport,
} from '../../src/outcomes/index.js';
import { CASES, reported, YEAR } from '../measure/reported.js';
import { counted, QUERY, type Row } from './counted.js';

const SHOW: SmallCellPolicy = { smallCells: 'show', threshold: 5 };

/** Rates of every way in which what is missing could have come out, by trying each. */
function everyRate(yes: number, no: number, missing: number): readonly number[] {
  const ways = 2 ** missing;
  return Array.from({ length: ways }, (_, bits) => {
    const more = [...bits.toString(2)].filter((bit) => bit === '1').length;
    return (yes + more) / (yes + no + missing);
  });
}

const few = fc.nat(8);

// Manski, J Hum Resour 1989;24:343-360; Horowitz and Manski, J Am Stat Assoc 2000;95:77-84 (both
// from memory and second sources): bounds that assume nothing of what is missing.
describe('the bounds of a rate', () => {
  it('are the least and the most of all rates that what is missing leaves possible', () => {
    fc.assert(
      fc.property(few, few, few, (yes, no, missing) => {
        fc.pre(yes + no > 0);
        const rates = everyRate(yes, no, missing);
        const { ifNo, ifYes } = boundsOf({ yes, no, missing });
        expect([ifNo, ifYes]).toEqual([Math.min(...rates), Math.max(...rates)]);
        const rate = yes / (yes + no);
        expect(ifNo <= rate && rate <= ifYes).toBe(true);
      }),
    );
  });

  const rows = (counts: Partial<Record<IndicatorWord, number>>): readonly Row[] =>
    Object.entries(counts).flatMap(([word, count]) =>
      Array.from(
        { length: count },
        (): Row => ({
          resectedOn: '2025-05-05',
          place: { organ: 'colon' },
          words: { enBloc: word === 'window-open' ? 'window-open' : wordOf(word) },
        }),
      ),
    );
  const wordOf = (word: string): IndicatorWord =>
    word === 'yes' || word === 'no' ? word : 'missing';
  const enBlocOf = (cases: readonly Row[], policy = SHOW): IndicatorResult | undefined =>
    toReport(QUERY, policy, counted(cases, QUERY)).cells[0]?.indicators[0];

  it('stand beside each rate, of what is told and missing, not of what is open', () => {
    const cases = rows({ yes: 12, no: 6, missing: 2, 'window-open': 7 });
    expect(enBlocOf(cases)).toMatchObject({ rate: 12 / 18, bounds: { ifNo: 0.6, ifYes: 0.7 } });
  });

  it('are both the rate where nothing is missing', () => {
    expect(enBlocOf(rows({ yes: 3, no: 1 }))).toMatchObject({
      ...{ rate: 0.75, bounds: { ifNo: 0.75, ifYes: 0.75 } },
    });
  });

  it('are hidden with their rate', () => {
    const hidden = enBlocOf(rows({ yes: 20, no: 2, missing: 9 }), { ...SHOW, smallCells: 'hide' });
    expect(hidden).toEqual({ id: 'enBloc', kind: 'suppressed' });
  });

  it('have their works among the sources of a report', () => {
    const { sources } = toReport(QUERY, SHOW, counted([], QUERY));
    const works = sources.filter(({ basis }) => basis === 'recalled').map(({ work }) => work);
    expect(works).toEqual(expect.arrayContaining(['manski1989', 'horowitzManski2000']));
  });

  it('are the same for a reader of the MeasureReport', () => {
    const read = toUnitReport(reported(CASES));
    const [all] = toReport(YEAR, SHOW, counted(CASES, YEAR)).cells;
    const of = (results: readonly IndicatorResult[]) =>
      results.flatMap((result) => (result.kind === 'rate' ? [[result.id, result.bounds]] : []));
    expect(of(all?.indicators ?? []).length).toBeGreaterThan(2);
    expect(read.ok && of(read.value.results)).toEqual(of(all?.indicators ?? []));
  });
});
