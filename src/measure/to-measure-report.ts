import type {
  Extension,
  MeasureReport,
  MeasureReportGroup,
  MeasureReportGroupPopulation,
  MeasureReportGroupStratifier,
  MeasureReportGroupStratifierStratum,
  Quantity,
  Reference,
} from 'fhir/r4.js';
import { invariant, roundTo } from '../kernel/index.js';
import type {
  IndicatorId,
  IndicatorResult,
  OutcomeReport,
  RateInterval,
  ReportCell,
} from '../outcomes/index.js';
import { localCoding, STRUCTURE, UNITS } from '../terminology/index.js';
import {
  dimensionConcept,
  EXTENSION,
  indicatorConcept,
  MEASURE,
  MEASURE_NAME,
  POPULATIONS,
  REPORT_PROFILE,
} from './codes.table.js';

/** Whose report it is, and of when. */
export interface Reporting {
  /** The site's base for identifier systems: it also names the unit, which owns it. */
  readonly identifierBase: string;
  /** What people call the unit. */
  readonly name?: string | undefined;
  /** When the cases were counted; UTC instant. */
  readonly countedAt: string;
}

/** Decimals of rates and of the ends of their intervals; the only rounding. */
const DECIMALS = 6;

/** Identifier system of URIs. Source: FHIR R4, Identifier.system and known systems. */
const URIS = 'urn:ietf:rfc:3986';

const toReporter = ({ identifierBase, name }: Reporting): Reference => ({
  type: 'Organization',
  identifier: { system: URIS, value: identifierBase },
  ...(name === undefined ? {} : { display: name }),
});

/**
 * A report of outcomes as a MeasureReport: one group an indicator with its four populations, the
 * rate and its interval, and the same for each stratum. The denominator holds what it excludes, as
 * the standard has it: the rate is the numerator over the denominator less its exclusions.
 *
 * The identifier says measure, period and, by its system, the unit: a rerun replaces. A report by
 * groups is another one. No bar is in its value, since searches part system and value by it.
 *
 * Source: FHIR R4 (4.0.1), MeasureReport; search, escaping search parameters; identifier, date,
 * reporter and whole period as data exchange of quality measures asks for them, from memory.
 *
 * @param report of a period with both its days, over all cases: a filter would make it another
 *   Measure
 * @throws InvariantError for another report
 */
export function toMeasureReport(
  { query, cells }: Pick<OutcomeReport, 'query' | 'cells'>,
  reporting: Reporting,
): MeasureReport {
  const { from, to } = query;
  invariant(from !== undefined && to !== undefined, 'a MeasureReport is of a period with its days');
  const isOfAll = Object.values(query.filters).every((value) => value === undefined);
  invariant(isOfAll, 'a MeasureReport is of all cases');
  const [all, ...strata] = cells;
  invariant(all !== undefined, 'a report has a cell of all cases');
  return {
    resourceType: 'MeasureReport',
    meta: { profile: [REPORT_PROFILE] },
    identifier: [
      {
        system: `${reporting.identifierBase}/measurereport`,
        value: [MEASURE_NAME, from, to, ...query.by.toSorted()].join('/'),
      },
    ],
    status: 'complete',
    type: 'summary',
    measure: MEASURE,
    date: reporting.countedAt,
    reporter: toReporter(reporting),
    period: { start: from, end: to },
    group: all.indicators.map((result): MeasureReportGroup => {
      const stratifier = toStratifier(result.id, query.by, strata);
      return {
        code: indicatorConcept(result.id),
        ...toCounts(all, result),
        ...(stratifier === undefined ? {} : { stratifier: [stratifier] }),
      };
    }),
  };
}

/** One stratifier: a dimension with its values, or two with their pairs of values. */
function toStratifier(
  id: IndicatorId,
  by: OutcomeReport['query']['by'],
  strata: readonly ReportCell[],
): MeasureReportGroupStratifier | undefined {
  if (by.length === 0 || strata.length === 0) return undefined;
  return {
    code: by.map(dimensionConcept),
    stratum: strata.flatMap((cell): MeasureReportGroupStratifierStratum[] => {
      const result = cell.indicators.find((each) => each.id === id);
      if (result === undefined) return [];
      const values = by.map((dimension) => ({
        code: dimensionConcept(dimension),
        value: { text: cell.stratum[dimension] ?? '' },
      }));
      const [only, second] = values;
      return [
        {
          ...(second === undefined && only !== undefined
            ? { value: only.value }
            : { component: values }),
          ...toCounts(cell, result),
        },
      ];
    }),
  };
}

type Counts = Pick<MeasureReportGroup, 'population'> & { readonly measureScore: Quantity };

/** Populations and rate; nothing but a reason where the counts are hidden. */
function toCounts(cell: ReportCell, result: IndicatorResult): Counts {
  switch (result.kind) {
    case 'suppressed':
      return { measureScore: absent(MASKED) };
    case 'no-rate':
      return {
        population: populations(cell, { ...result, numerator: 0, denominator: 0 }),
        measureScore: absent(NOT_APPLICABLE),
      };
    case 'rate':
      return {
        population: populations(cell, result),
        measureScore: {
          extension: [toInterval(result.interval)],
          value: roundTo(result.rate, DECIMALS),
          ...UNITS.one,
        },
      };
  }
}

function populations(
  { cases }: ReportCell,
  counted: Readonly<Record<'numerator' | 'denominator' | 'missing' | 'windowOpen', number>>,
): MeasureReportGroupPopulation[] {
  invariant(cases !== undefined, 'counts are shown of cells whose number of cases is shown alone');
  const { numerator, denominator, missing, windowOpen } = counted;
  const excluded = missing + windowOpen;
  const whyExcluded: Extension = {
    url: EXTENSION.notCounted,
    extension: [
      { url: 'missing', valueUnsignedInt: missing },
      { url: 'windowOpen', valueUnsignedInt: windowOpen },
    ],
  };
  return [
    { code: POPULATIONS['initial-population'], count: cases },
    { code: POPULATIONS.denominator, count: denominator + excluded },
    {
      extension: [whyExcluded],
      code: POPULATIONS['denominator-exclusion'],
      count: excluded,
    },
    { code: POPULATIONS.numerator, count: numerator },
  ];
}

const toInterval = ({ lower, upper, level, method }: RateInterval): Extension => ({
  url: EXTENSION.interval,
  extension: [
    { url: 'lower', valueDecimal: roundTo(lower, DECIMALS) },
    { url: 'upper', valueDecimal: roundTo(upper, DECIMALS) },
    { url: 'level', valueDecimal: level },
    { url: 'method', valueCoding: localCoding('interval-method', method) },
  ],
});

const MASKED = STRUCTURE.absent.masked;
const NOT_APPLICABLE = STRUCTURE.absent.notApplicable;

/** The extension takes the bare code of the concept. */
function absent({ coding }: typeof MASKED): Quantity {
  const code = coding?.[0]?.code;
  invariant(code !== undefined, 'a reason for absence has a code');
  return { extension: [{ url: EXTENSION.absent, valueCode: code }] };
}
