import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as contract from '../../src/contract/index.js';
import {
  DIMENSIONS,
  INDICATOR_IDS,
  NOT_TOLD,
  SERIES,
  SIZE_BANDS,
  TRAINEE_BANDS,
} from '../../src/outcomes/index.js';

const { parseExportQuery, parseOutcomeQuery, parseSeriesQuery, parseChartQuery } = contract;

describe('the words of a question', () => {
  it('are those by which outcomes are counted', () => {
    expect(contract.OUTCOME_DIMENSIONS).toEqual(DIMENSIONS);
    expect(contract.OUTCOME_INDICATORS).toEqual(INDICATOR_IDS);
    expect(contract.CUSUM_SERIES).toEqual(Object.keys(SERIES));
    expect(contract.OUTCOME_FILTERS.sizeBand).toEqual(SIZE_BANDS);
    expect(contract.OUTCOME_FILTERS.traineeBand).toEqual(TRAINEE_BANDS);
    expect(contract.OUTCOME_FILTERS.fibrosis).toContain(NOT_TOLD);
    expect(contract.OUTCOME_FILTERS.technique).toContain(NOT_TOLD);
  });
});

const OPERATOR = '0b54d9a2-6f0e-8c11-9b7d-2f3f5a6b7c8d';
const filters = fc.record(
  {
    from: fc.constantFrom('2024-01-01', '2024-02-29'),
    to: fc.constantFrom('2024-02-29', '2026-12-31'),
    ...Object.fromEntries(
      Object.entries(contract.OUTCOME_FILTERS).map(([name, words]) => [
        name,
        fc.constantFrom(...words),
      ]),
    ),
    operator: fc.constant(OPERATOR),
  },
  { requiredKeys: [] },
);

describe('a question', () => {
  it('is read as it was asked, whatever is left out', () => {
    const property = fc.property(
      filters,
      fc.subarray([...DIMENSIONS], { maxLength: 2 }),
      (asked, by) => {
        const given = { ...asked, ...(by.length === 0 ? {} : { by: by.join(',') }) };
        const read = parseOutcomeQuery(new URLSearchParams(given).toString());
        const { from, to, ...places } = asked;
        expect(read).toEqual({
          ok: true,
          value: {
            ...(from === undefined ? {} : { from }),
            ...(to === undefined ? {} : { to }),
            filters: places,
            by,
            interval: 'wilson',
          },
        });
      },
    );
    fc.assert(property);
  });

  it('never throws, and never tells what was sent', () => {
    const property = fc.property(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('organ', 'by', 'from'),
      (text, name) => {
        const secret = `SECRET${text}`;
        const search = new URLSearchParams({ [name]: secret, [secret]: secret }).toString();
        const reads = [
          parseExportQuery(search),
          parseOutcomeQuery(search),
          parseSeriesQuery(`series=funnel&${search}`),
          parseChartQuery('rates', search),
        ];
        for (const read of reads) {
          expect(read.ok).toBe(false);
          expect(JSON.stringify(read)).not.toContain('SECRET');
        }
      },
    );
    fc.assert(property);
  });
});

describe('a curve that is asked for', () => {
  it('has the aims of its table unless the question has others', () => {
    expect(parseSeriesQuery('series=cusum-r0&alpha=0.05')).toEqual({
      ok: true,
      value: { filters: {}, series: 'cusum-r0', aims: { alpha: 0.05 } },
    });
  });

  it('is that of one operator where somebody learns', () => {
    expect(parseSeriesQuery(`series=learning-curve&operator=${OPERATOR}`)).toEqual({
      ok: true,
      value: { filters: { operator: OPERATOR }, series: 'learning-curve', blockSize: 20 },
    });
  });

  it('is one of speeds without aims, as a chart too', () => {
    const series = { filters: { organ: 'colon' }, series: 'speed' };
    expect(parseSeriesQuery('series=speed&organ=colon')).toEqual({ ok: true, value: series });
    expect(parseChartQuery('speed', 'organ=colon')).toEqual({
      ...{ ok: true, value: { chart: 'speed', series } },
    });
    for (const read of [
      parseSeriesQuery('series=speed&alpha=0.1'),
      parseChartQuery('speed', 'alpha=0.1'),
    ]) {
      expect(read).toMatchObject({ ok: false, problems: [{ rule: 'unknown-parameter' }] });
    }
  });

  it('is one of learning as a chart too, of rates unless speed is asked for', () => {
    const series = { filters: { operator: OPERATOR }, series: 'learning-curve', blockSize: 20 };
    const chart = 'learning-curve';
    expect(parseChartQuery(chart, `operator=${OPERATOR}`)).toEqual({
      ...{ ok: true, value: { chart, series, form: 'rates' } },
    });
    expect(parseChartQuery(chart, `operator=${OPERATOR}&form=speed&blockSize=10`)).toEqual({
      ...{ ok: true, value: { chart, series: { ...series, blockSize: 10 }, form: 'speed' } },
    });
    expect(parseChartQuery(chart, '')).toMatchObject({
      ...{ ok: false, problems: [{ rule: 'missing-field', pointer: '/operator' }] },
    });
  });

  it('is a funnel of operators unless others are named', () => {
    expect(parseSeriesQuery('series=funnel&indicator=r0&target=0.9')).toEqual({
      ok: true,
      value: { filters: {}, series: 'funnel', indicator: 'r0', by: 'operator', target: 0.9 },
    });
  });

  it.each(['0', '1', '0.0', '.5', '1e-1', '0.1234567', '-0.1'])('has no aim of %s', (aim) => {
    const read = parseSeriesQuery(`series=cusum-r0&acceptable=${aim}`);
    expect(read).toMatchObject({ ok: false, problems: [{ pointer: '/acceptable' }] });
  });

  it('is none without a name', () => {
    expect(parseSeriesQuery('')).toMatchObject({
      ...{ ok: false, problems: [{ rule: 'missing-field', pointer: '/series' }] },
    });
  });
});
