import type { MeasureReport } from 'fhir/r4.js';
import type { Problem } from '../kernel/index.js';
import type {
  Asked,
  Dimension,
  IndicatorId,
  OutcomeQuery,
  OutcomeReport,
  OutcomeSeries,
  ReportCell,
  SeriesName,
} from '../outcomes/index.js';
import type { DataDictionary, ExportRow } from './export-rows.js';

/** What is asked of the outcomes; they are judged as of today, the day in UTC. */
export type OutcomeQuestion = Omit<OutcomeQuery, 'asOf'>;

/** Aims of a curve that are not those of its table, shares. */
export interface OtherAims {
  readonly acceptable?: number;
  readonly unacceptable?: number;
  readonly alpha?: number;
  readonly beta?: number;
}

/** Which curve is asked for. */
export type SeriesQuestion = Asked &
  (
    | { readonly series: SeriesName; readonly aims: OtherAims }
    | { readonly series: 'speed' }
    | { readonly series: 'learning-curve'; readonly blockSize: number }
    | {
        readonly series: 'funnel';
        readonly indicator: IndicatorId;
        readonly by: Dimension;
        /** A share; absent: the rate of all together. */
        readonly target?: number;
      }
  );

interface Refused {
  readonly kind: 'invalid';
  readonly problems: readonly Problem[];
}

export type FoundOutcomes = { readonly kind: 'found'; readonly report: OutcomeReport } | Refused;
export type FoundSeries = { readonly kind: 'found'; readonly series: OutcomeSeries } | Refused;

/** Everything that a printed report shows. */
export interface OutcomesAtLarge {
  readonly title: string;
  /** What people call the unit, where its settings say it, and the base of its identifiers. */
  readonly unit: { readonly name?: string | undefined; readonly identifier: string };
  /** Calendar day. */
  readonly madeOn: string;
  /** Rule set by which the unit judges curability, by organ. */
  readonly curabilityRules: Readonly<Record<string, string>>;
  readonly outcomes: OutcomeReport;
  /** Years of the resection; empty where so fine a question would show small counts. */
  readonly periods: readonly PeriodOfCases[];
  readonly series: readonly { readonly title: string; readonly series: OutcomeSeries }[];
}

/** The same question asked of one period of the resection. */
export interface PeriodOfCases {
  readonly label: string;
  readonly cell: ReportCell;
}

export type FoundAtLarge = { readonly kind: 'found'; readonly report: OutcomesAtLarge } | Refused;

export type FoundMeasureReport =
  | { readonly kind: 'found'; readonly report: MeasureReport }
  | Refused;

/** `hidden`: rows are single cases, and small counts are hidden here. */
export type FoundRows =
  | { readonly kind: 'rows'; readonly rows: AsyncIterable<readonly ExportRow[]> }
  | { readonly kind: 'hidden' };

/** Outcomes over all cases, for the records team. */
export interface OutcomesService {
  readOutcomes(question: OutcomeQuestion): Promise<FoundOutcomes>;
  readOutcomesAtLarge(question: OutcomeQuestion): Promise<FoundAtLarge>;
  readSeries(question: SeriesQuestion): Promise<FoundSeries>;
  /** For others: small counts are hidden, whatever the unit shows to its own people. */
  readMeasureReport(question: OutcomeQuestion): Promise<FoundMeasureReport>;
  /** One row a case, a page at a time; a reader that ends early ends the reading. */
  exportCases(asked: Asked): FoundRows;
  dataDictionary(): DataDictionary;
}
