import type { IndicatorWords, SizeBand, TraineeBand } from '../outcomes/index.js';

/**
 * One flat row a case version, for counting. Absent answers are null, which never means "no".
 * Lengths in mm, areas in cm2, times in min, speed in cm2/h, as the names say.
 */
export interface CaseFacts extends IndicatorWords {
  readonly caseId: string;
  readonly state: number;
  readonly source: string;
  readonly unit: string | null;
  readonly organ: string;
  readonly site: string | null;
  /** Keyed pseudonym of the operator, for outcomes alone. */
  readonly operator: string;
  readonly traineePercent: number | null;
  /** Instant with offset. */
  readonly scopeInAt: string;
  readonly resectionOutcome: string;
  readonly technique: string | null;
  readonly pieces: number | null;
  readonly endoscopicallyComplete: boolean | null;
  readonly lesionLongAxisMm: number;
  readonly specimenLongAxisMm: number | null;
  readonly specimenShortAxisMm: number | null;
  readonly specimenAreaCm2: number | null;
  readonly procedureMin: number | null;
  readonly dissectionMin: number | null;
  readonly speedCm2PerH: number | null;
  readonly defectCircumferencePercent: number | null;
  readonly strictureFlag: string | null;
  readonly fibrosis: string | null;
  readonly intraproceduralBleeding: string | null;
  readonly muscleInjury: string | null;
  readonly perforation: boolean | null;
  readonly specimenRetrieved: boolean | null;
  /** Status of the pathology report in force; null while there is none. */
  readonly pathologyStatus: string | null;
  /** Instant with offset. */
  readonly pathologyReportedAt: string | null;
  /** 0 free, 1 involved, X not assessable. */
  readonly horizontalMargin: string | null;
  readonly verticalMargin: string | null;
  readonly histology: string | null;
  readonly invasionDepth: string | null;
  readonly curabilityRule: string;
  /** Null while it is indeterminate. */
  readonly curabilityClass: string | null;
  readonly curabilityGroup: string | null;
  /** Whether the whole case was taken back; then it counts for nothing. */
  readonly withdrawn: boolean;
  /** Whether a specimen waits for its final report. */
  readonly awaitsPathology: boolean;
  /** Calendar day on which the scope was out; windows count from it. */
  readonly resectedOn: string;
  readonly tumour: string | null;
  readonly sizeBand: SizeBand;
  readonly traineeBand: TraineeBand;
  /** Calendar days from the resection to the final report in force. */
  readonly pathologyDays: number | null;
  /**
   * First examination for the lesion that the plan asks for. `provisional`: pathology is not
   * final; `lost`: the patient could not be reached; `ended`: not wanted any more; `not-planned`:
   * the plan has none; `unplanned`: the plan has none, and the scar was looked at all the same.
   */
  readonly firstCheckState:
    | ('done' | 'open' | 'provisional' | 'lost' | 'ended')
    | ('not-planned' | 'unplanned');
  /** Calendar day of the examination that answered it, or of the first one without a plan. */
  readonly firstCheckOn: string | null;
  readonly firstCheckTiming: 'early' | 'in-window' | 'late' | null;
  /** Last calendar day of its window. */
  readonly firstCheckLatestOn: string | null;
  /** Calendar day of the first check that found neoplasia at the scar. */
  readonly recurrenceOn: string | null;
  /** Calendar day of the last check that saw the scar. */
  readonly lastCheckOn: string | null;
  readonly lastKnownAliveOn: string | null;
  readonly deathOn: string | null;
}
