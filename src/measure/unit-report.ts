import type { Extension, MeasureReport, MeasureReportGroup } from 'fhir/r4.js';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';
import type { IndicatorId, IndicatorResult, IntervalMethod } from '../outcomes/index.js';
import { boundsOf, INDICATOR_IDS } from '../outcomes/index.js';
import { localSystem } from '../terminology/index.js';
import { EXTENSION, INDICATOR_CODES, type PopulationName } from './codes.table.js';

/** What a MeasureReport tells of its unit, all cases together. */
export interface UnitReport {
  /** The unit, by the value of the identifier of the reporter. */
  readonly unit: string;
  readonly unitSystem: string;
  /** What people call the unit, where its report says it. */
  readonly name?: string | undefined;
  /** Canonical with version. */
  readonly measure: string;
  readonly identifier: string;
  /** Calendar days, both included. */
  readonly period: { readonly from: string; readonly to: string };
  readonly countedAt: string;
  /** In the order of the table of indicators; one that the report leaves out is suppressed. */
  readonly results: readonly IndicatorResult[];
}

/**
 * Reads a report of outcomes. Strata are left aside.
 *
 * @param report that has passed every check
 * @returns problems with codes that no check of the standard sees
 */
export function toUnitReport(report: MeasureReport): Checked<UnitReport> {
  const groups = report.group ?? [];
  const read = groups.map((group, i) => toResult(group, `/group/${i}`));
  const problems = read.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return failed(problems);
  const results = new Map(read.flatMap((one) => (one.ok ? [[one.value.id, one.value]] : [])));
  const { reporter, identifier, period, measure, date } = report;
  return passed({
    unit: reporter?.identifier?.value ?? '',
    unitSystem: reporter?.identifier?.system ?? '',
    name: reporter?.display,
    measure,
    identifier: JSON.stringify([identifier?.[0]?.system, identifier?.[0]?.value]),
    period: { from: period.start ?? '', to: period.end ?? '' },
    countedAt: date ?? '',
    results: INDICATOR_IDS.map((id) => results.get(id) ?? { id, kind: 'suppressed' }),
  });
}

function toResult(group: MeasureReportGroup, pointer: string): Checked<IndicatorResult> {
  const id = indicatorOf(group);
  if (id === undefined) return failed([unknownCode(`${pointer}/code`, 'outcome-indicator')]);
  const { value, extension = [] } = group.measureScore ?? {};
  if (codeOf(extension) === 'masked') return passed({ id, kind: 'suppressed' });
  const excluded = extensionsOf(group, 'denominator-exclusion');
  const why = within(excluded, EXTENSION.notCounted);
  const missing = part(why, 'missing')?.valueUnsignedInt ?? 0;
  const windowOpen = part(why, 'windowOpen')?.valueUnsignedInt ?? 0;
  if (value === undefined) return passed({ id, kind: 'no-rate', missing, windowOpen });
  const interval = within(extension, EXTENSION.interval);
  const method = methodOf(part(interval, 'method'));
  if (method === undefined) {
    return failed([unknownCode(`${pointer}/measureScore/extension`, 'interval-method')]);
  }
  const numerator = countOf(group, 'numerator');
  const denominator = countOf(group, 'denominator') - countOf(group, 'denominator-exclusion');
  return passed({
    id,
    kind: 'rate',
    numerator,
    denominator,
    missing,
    windowOpen,
    rate: numerator / denominator,
    interval: {
      lower: part(interval, 'lower')?.valueDecimal ?? 0,
      upper: part(interval, 'upper')?.valueDecimal ?? 1,
      level: part(interval, 'level')?.valueDecimal ?? 0,
      method,
    },
    bounds: boundsOf({ yes: numerator, no: denominator - numerator, missing }),
    isSmall: false,
  });
}

const CODES = new Map<string, IndicatorId>(INDICATOR_IDS.map((id) => [INDICATOR_CODES[id], id]));

function indicatorOf({ code }: MeasureReportGroup): IndicatorId | undefined {
  const system = localSystem('outcome-indicator');
  const own = code?.coding?.find((coding) => coding.system === system);
  return CODES.get(own?.code ?? '');
}

const METHODS: readonly IntervalMethod[] = ['wilson', 'clopper-pearson'];

const methodOf = (extension: Extension | undefined): IntervalMethod | undefined =>
  extension?.valueCoding?.system === localSystem('interval-method')
    ? METHODS.find((method) => method === extension.valueCoding?.code)
    : undefined;

const population = ({ population: all = [] }: MeasureReportGroup, name: PopulationName) =>
  all.find(({ code }) => code?.coding?.some((coding) => coding.code === name));

const countOf = (group: MeasureReportGroup, name: PopulationName): number =>
  population(group, name)?.count ?? 0;

const extensionsOf = (group: MeasureReportGroup, name: PopulationName): readonly Extension[] =>
  population(group, name)?.extension ?? [];

/** Parts of a complex extension. */
const within = (extensions: readonly Extension[], url: string): readonly Extension[] =>
  extensions.find((extension) => extension.url === url)?.extension ?? [];

const part = (parts: readonly Extension[], url: string): Extension | undefined =>
  parts.find((extension) => extension.url === url);

const codeOf = (extensions: readonly Extension[]): string | undefined =>
  part(extensions, EXTENSION.absent)?.valueCode;

const unknownCode = (pointer: string, set: 'outcome-indicator' | 'interval-method'): Problem => ({
  rule: 'report-code',
  pointer,
  message: 'There is no code here that this program knows.',
  expected: `a code of ${localSystem(set)}`,
});
