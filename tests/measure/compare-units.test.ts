import { readFileSync } from 'node:fs';
import type { MeasureReport } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { compareUnits, type NamedReport, toUnitReport } from '../../src/measure/index.js';
import { readUnitReport } from '../../src/read-unit-report.js';
import { CASES, HIDE, REPORTING, reported, rows, SHOW, YEAR } from './reported.js';

const UNITS = ['vale', 'ridge', 'shore'] as const;

const bytesOf = (value: unknown): Uint8Array => new TextEncoder().encode(JSON.stringify(value));

const written = (unit: string): MeasureReport =>
  JSON.parse(readFileSync(`examples/comparison/${unit}.json`, 'utf8'));

function named(name: string, report: MeasureReport): NamedReport {
  const read = readUnitReport(bytesOf(report));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { name, report: read.value };
}

const EXAMPLES = UNITS.map((unit) => named(unit, written(unit)));

function compared(reports: readonly NamedReport[]) {
  const result = compareUnits(reports);
  if (!result.ok) throw new Error(JSON.stringify(result.refused));
  return result.value;
}

/** Rules that each report breaks, by its name. */
function refusals(reports: readonly NamedReport[]) {
  const result = compareUnits(reports);
  return result.ok
    ? {}
    : Object.fromEntries(
        result.refused.map(({ name, problems }) => [name, problems.map(({ rule }) => rule)]),
      );
}

const other = (identifierBase: string) => ({ ...REPORTING, identifierBase });
const A = named('a', reported(CASES, YEAR, SHOW, other('https://a.example/x')));
const B = named('b', reported(CASES, YEAR, SHOW, other('https://b.example/x')));

describe('a report that a unit has sent', () => {
  it('is read as it was made', () => {
    const { report } = A;
    expect(report).toMatchObject({
      unit: 'https://a.example/x',
      period: { from: '2025-01-01', to: '2025-12-31' },
      countedAt: REPORTING.countedAt,
    });
    expect(report.results.find(({ id }) => id === 'r0')).toMatchObject({
      kind: 'rate',
      numerator: 40,
      denominator: 50,
      missing: 10,
      windowOpen: 0,
      rate: 0.8,
      interval: { method: 'wilson', level: 0.95 },
    });
    expect(report.results.find(({ id }) => id === 'stricture')).toMatchObject({ kind: 'no-rate' });
  });

  it('has the name that people call the unit by, where it says one (Reference.display)', () => {
    const reporting = { ...REPORTING, name: 'An invented unit' };
    const report = reported(CASES, YEAR, SHOW, reporting);
    expect(report.reporter?.display).toBe('An invented unit');
    expect(named('n', report).report.name).toBe('An invented unit');
    expect(A.report.name).toBeUndefined();
    expect(reported(CASES).reporter).not.toHaveProperty('display');
  });

  it('keeps hidden what the unit hides', () => {
    const { report } = named('h', reported(CASES, YEAR, HIDE));
    expect(report.results.find(({ id }) => id === 'death30d')).toEqual({
      id: 'death30d',
      kind: 'suppressed',
    });
  });

  it.each<[string, Uint8Array, string]>([
    ['no JSON', new TextEncoder().encode('{'), 'not-json'],
    ['a key twice', new TextEncoder().encode('{"a":1,"a":2}'), 'repeated-key'],
    ['another resource', bytesOf({ resourceType: 'Patient' }), 'r4-resource-type'],
    ['no reporter', bytesOf({ ...written('vale'), reporter: undefined }), 'profile-shape'],
  ])('is refused: %s', (_name, bytes, rule) => {
    const read = readUnitReport(bytes);
    expect(read.ok ? [] : read.problems.map((problem) => problem.rule)).toContain(rule);
  });

  it('is refused with a code that nobody knows here', () => {
    const report = reported(CASES);
    for (const coding of report.group?.[0]?.code?.coding ?? []) coding.code = 'speed';
    const read = toUnitReport(report);
    expect(read.ok ? [] : read.problems).toMatchObject([
      { rule: 'report-code', pointer: '/group/0/code' },
    ]);
  });
});

describe('what units are called', () => {
  const titles = (...names: readonly (string | undefined)[]) => {
    const reports = names.map((name, i) => {
      const reporting = { ...other(`https://${'abc'[i]}.example/x`), name };
      return named(`report ${i}`, reported(CASES, YEAR, SHOW, reporting));
    });
    return compared(reports).units.map(({ title }) => title);
  };
  const [a, b, c] = ['https://a.example/x', 'https://b.example/x', 'https://c.example/x'];

  it('is the name of each, or the identifier of one that has none', () => {
    expect(titles('Ridge', 'Vale', undefined)).toEqual(['Ridge', 'Vale', c]);
  });

  it('is no name that another unit has too, nor one that identifies another', () => {
    expect(titles('Ridge', 'Ridge', 'Vale')).toEqual([a, b, 'Vale']);
    expect(titles(b, undefined, 'Vale')).toEqual([a, b, 'Vale']);
  });
});

describe('the reports of three invented units', () => {
  const comparison = compared(EXAMPLES);

  it('stand side by side with the counts that each of them says', () => {
    for (const { definition, units } of comparison.indicators) {
      expect(units).toHaveLength(3);
      for (const [i, { result }] of units.entries()) {
        const group = written(UNITS[i] ?? 'vale').group?.find(
          ({ code }) => code?.text === codeText(definition.id),
        );
        const [, denominator, excluded, numerator] = (group?.population ?? []).map(
          ({ count = 0 }) => count,
        );
        if (result.kind === 'rate') {
          expect(result.numerator).toBe(numerator);
          expect(result.denominator).toBe((denominator ?? 0) - (excluded ?? 0));
          expect(result.rate).toBeCloseTo(group?.measureScore?.value ?? Number.NaN, 6);
        } else {
          expect(group?.measureScore?.value).toBeUndefined();
        }
      }
    }
  });

  it('have some rates of all, and hidden ones that nothing gives away', () => {
    const kinds = comparison.indicators.flatMap(({ units }) => units.map((one) => one.result.kind));
    expect(new Set(kinds)).toEqual(new Set(['rate', 'suppressed']));
    expect(comparison.indicators.some(({ funnel }) => funnel.points.length === 3)).toBe(true);
    for (const { units, funnel } of comparison.indicators) {
      const shown = units.filter(({ result }) => result.kind === 'rate');
      expect(funnel.points.map(({ stratum }) => stratum.unit)).toEqual(
        shown.map(({ title }) => title),
      );
      expect(funnel.leftOut).toBe(3 - shown.length);
    }
  });

  // A rate of all is that of the sums: Measure.rateAggregation of the published Measure.
  it('are held to the rate of all that are shown', () => {
    for (const { units, funnel } of comparison.indicators) {
      const shown = units.flatMap(({ result }) => (result.kind === 'rate' ? [result] : []));
      const of = shown.reduce((sum, { denominator }) => sum + denominator, 0);
      const events = shown.reduce((sum, { numerator }) => sum + numerator, 0);
      expect(funnel.target).toBeCloseTo(of === 0 ? 0 : events / of, 12);
    }
  });
});

describe('units beside exact limits', () => {
  // All 92.9 %: 96 % of 500 lies 2.7 standard errors above it, 66.7 % of 60 lies 7.9 below; the
  // limits are at about 1.96 and 3.09 (spiegelhalter2005, from memory).
  it('are found beyond them where chance alone is no likely reason', () => {
    const good = named(
      'good',
      reported(
        [...rows(480, { enBloc: 'yes' }), ...rows(20, { enBloc: 'no' })],
        YEAR,
        SHOW,
        other('https://good.example/x'),
      ),
    );
    const poor = named(
      'poor',
      reported(
        [...rows(40, { enBloc: 'yes' }), ...rows(20, { enBloc: 'no' })],
        YEAR,
        SHOW,
        other('https://poor.example/x'),
      ),
    );
    const [enBloc] = compared([good, poor]).indicators;
    expect(enBloc?.funnel.points.map(({ position }) => position)).toEqual([
      'beyond-95',
      'beyond-998',
    ]);
  });
});

describe('reports that cannot stand side by side', () => {
  const changed = (report: NamedReport, change: Partial<NamedReport['report']>): NamedReport => ({
    name: 'c',
    report: { ...report.report, ...change },
  });

  it('are none where there is nothing wrong', () => {
    expect(refusals([A, B])).toEqual({});
  });

  it.each<[string, NamedReport, string]>([
    [
      'another version of the Measure',
      changed(B, { measure: `${B.report.measure.split('|')[0]}|0.9.0` }),
      'compare-measure',
    ],
    ['the same report', changed(A, {}), 'compare-identifier'],
    [
      'another run of the same report',
      changed(A, { countedAt: '2027-01-01' }),
      'compare-identifier',
    ],
    [
      'another report of the same unit and days',
      changed(A, { identifier: 'x' }),
      'compare-overlap',
    ],
    [
      'other days',
      changed(B, { period: { from: '2024-01-01', to: '2024-12-31' } }),
      'compare-period',
    ],
    [
      'intervals of another method',
      named(
        'c',
        reported(CASES, { ...YEAR, interval: 'clopper-pearson' }, SHOW, other('https://c.example')),
      ),
      'compare-interval',
    ],
  ])('are refused: %s', (_name, report, rule) => {
    expect(refusals([A, report])).toEqual({ c: [rule] });
  });

  it('are refused with every problem of each at once', () => {
    const bad = changed(A, { measure: 'x|1', period: { from: '2025-06-01', to: '2026-05-31' } });
    const worse = { ...changed(B, { measure: 'x|2' }), name: 'd' };
    expect(refusals([A, { ...bad, report: { ...bad.report, identifier: 'y' } }, worse])).toEqual({
      c: ['compare-measure', 'compare-overlap', 'compare-period'],
      d: ['compare-measure'],
    });
  });
});

function codeText(id: string): string | undefined {
  const [found] = TEXTS.filter(([name]) => name === id);
  return found?.[1];
}

const TEXTS =
  EXAMPLES[0]?.report.results.map(
    ({ id }, i) => [id, written('vale').group?.[i]?.code?.text] as const,
  ) ?? [];
