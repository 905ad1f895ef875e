import type { Problem } from '../kernel/index.js';
import {
  type Definition,
  type Funnel,
  INDICATORS,
  type IndicatorResult,
  MISSING_IN_NO_RATE,
  NOT_ADJUSTED,
  type RateInterval,
  toFunnel,
} from '../outcomes/index.js';
import { MEASURE } from './codes.table.js';
import type { UnitReport } from './unit-report.js';

/** A unit as others read it. */
export interface ComparedUnit {
  readonly unit: string;
  /** Its name, or its identifier where it has none or another unit is called so too. */
  readonly title: string;
}

/** One indicator over all units. */
export interface ComparedIndicator {
  readonly definition: Definition;
  /** In the order of the reports. */
  readonly units: readonly (ComparedUnit & { readonly result: IndicatorResult })[];
  /** Around the rate of all units that are shown. */
  readonly funnel: Funnel;
}

/** Rates of several units over one period. */
export interface Comparison {
  readonly measure: string;
  readonly period: UnitReport['period'];
  readonly units: readonly (ComparedUnit & Pick<UnitReport, 'countedAt'>)[];
  /** How all intervals were made; absent: no rate is shown. */
  readonly interval?: Pick<RateInterval, 'method' | 'level'>;
  readonly indicators: readonly ComparedIndicator[];
  /** What readers have to know before they compare. */
  readonly cautions: readonly string[];
}

/** A report by the name under which it was given, and what is wrong with it beside the others. */
export interface RefusedReport {
  readonly name: string;
  readonly problems: readonly Problem[];
}

export interface NamedReport {
  readonly name: string;
  readonly report: UnitReport;
}

/**
 * Puts the reports of several units side by side. What a unit has hidden stays hidden and is in
 * no sum. Nothing is adjusted for how difficult the cases were.
 *
 * Source: derived; the limits, see `toFunnel`.
 *
 * @param reports one a unit, all of one measure, period and kind of interval
 * @returns every report that cannot stand beside the others, with all its problems
 */
export function compareUnits(
  reports: readonly NamedReport[],
):
  | { readonly ok: true; readonly value: Comparison }
  | { readonly ok: false; readonly refused: readonly RefusedReport[] } {
  const refused = reports
    .map(({ name, report }, i) => ({ name, problems: problemsOf(report, reports.slice(0, i)) }))
    .filter(({ problems }) => problems.length > 0);
  const [first] = reports;
  if (first === undefined || refused.length > 0) return { ok: false, refused };
  const units = reports.map(({ report }) => report);
  const [interval] = units.flatMap(intervalsIn);
  return {
    ok: true,
    value: {
      measure: first.report.measure,
      period: first.report.period,
      units: units.map((each) => ({ ...comparedUnit(each, units), countedAt: each.countedAt })),
      ...(interval === undefined ? {} : { interval }),
      indicators: INDICATORS.map((definition, i) => toCompared(definition, i, units)),
      cautions: COMPARISON_CAUTIONS,
    },
  };
}

const COMPARISON_CAUTIONS: readonly string[] = [
  NOT_ADJUSTED,
  'The order of the units is no ranking.',
  'Each unit hides its own small counts. What is hidden is in no sum and on no chart.',
  MISSING_IN_NO_RATE,
];

function toCompared(
  definition: Definition,
  index: number,
  reports: readonly UnitReport[],
): ComparedIndicator {
  const units = reports.flatMap((report) => {
    const result = report.results[index];
    return result === undefined ? [] : [{ ...comparedUnit(report, reports), result }];
  });
  const strata = units.map(({ title, result }) => ({
    ...{ stratum: { unit: title }, indicators: [result] },
  }));
  return { definition, units, funnel: toFunnel(strata, definition.id) };
}

function comparedUnit({ unit, name }: UnitReport, all: readonly UnitReport[]): ComparedUnit {
  const isAlone = all.filter((one) => one.name === name || one.unit === name).length === 1;
  return { unit, title: name !== undefined && isAlone ? name : unit };
}

/** @param before reports that were given earlier */
function problemsOf(report: UnitReport, before: readonly NamedReport[]): readonly Problem[] {
  const others = before.map((one) => one.report);
  const [first = report] = others;
  const isSame = others.some(({ identifier }) => identifier === report.identifier);
  const found: readonly (readonly [boolean, Problem])[] = [
    [report.measure !== MEASURE, OTHER_MEASURE],
    [isSame, SAME_REPORT],
    [!isSame && others.some((other) => isOverlap(other, report)), SAME_UNIT],
    [
      report.period.from !== first.period.from || report.period.to !== first.period.to,
      otherPeriod(first),
    ],
    [intervalsOf(report, first).size > 1, OTHER_INTERVAL],
  ];
  return found.flatMap(([isBroken, problem]) => (isBroken ? [problem] : []));
}

/** Whether both speak of the same unit, and some days are in both. */
const isOverlap = (a: UnitReport, b: UnitReport): boolean =>
  a.unit === b.unit &&
  a.unitSystem === b.unitSystem &&
  a.period.from <= b.period.to &&
  b.period.from <= a.period.to;

/** Kinds of interval in these reports. */
const intervalsOf = (...reports: readonly UnitReport[]): ReadonlySet<string> =>
  new Set(reports.flatMap(intervalsIn).map(({ method, level }) => `${method} ${level}`));

const intervalsIn = ({ results }: UnitReport): readonly Pick<RateInterval, 'method' | 'level'>[] =>
  results.flatMap((result) =>
    result.kind === 'rate'
      ? [{ method: result.interval.method, level: result.interval.level }]
      : [],
  );

const OTHER_MEASURE: Problem = {
  rule: 'compare-measure',
  pointer: '/measure',
  message: 'The report follows other definitions than this program.',
  expected: MEASURE,
};

const SAME_REPORT: Problem = {
  rule: 'compare-identifier',
  pointer: '/identifier',
  message: 'This report, or another run of it, was given before.',
  expected: 'each report once',
};

const SAME_UNIT: Problem = {
  rule: 'compare-overlap',
  pointer: '/reporter',
  message: 'Another report of this unit covers some of the same days: its cases would count twice.',
  expected: 'one report a unit',
};

const otherPeriod = ({ period: { from, to } }: UnitReport): Problem => ({
  rule: 'compare-period',
  pointer: '/period',
  message: 'The report covers other days than the first one.',
  expected: `${from} to ${to}`,
});

const OTHER_INTERVAL: Problem = {
  rule: 'compare-interval',
  pointer: '/group',
  message: 'Intervals were made by another method, or at another level, than in the first report.',
  expected: 'one method and level in all reports',
};
