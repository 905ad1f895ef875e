import type { StateToStore } from '../pipeline/index.js';

type Facts = StateToStore['facts'];

/** lesionLongAxisMm -> lesion_long_axis_mm */
type Snake<S extends string> = S extends `${infer Head}${infer Tail}`
  ? `${Head extends Lowercase<Head> ? Head : `_${Lowercase<Head>}`}${Snake<Tail>}`
  : '';

type FactColumns = {
  readonly [K in keyof Facts]: {
    readonly name: Snake<K>;
    /** Whether a case may leave the fact open. */
    readonly nullable: null extends Facts[K] ? true : false;
  };
};

/** The newest facts of each case, one column a fact. */
export type FactsTable = { readonly [K in keyof Facts as Snake<K>]: Facts[K] };

/** A fact that is new or newly open does not compile until it is said here; a test compares. */
export const FACT_COLUMNS: FactColumns = {
  caseId: { name: 'case_id', nullable: false },
  state: { name: 'state', nullable: false },
  source: { name: 'source', nullable: false },
  unit: { name: 'unit', nullable: true },
  organ: { name: 'organ', nullable: false },
  site: { name: 'site', nullable: true },
  operator: { name: 'operator', nullable: false },
  traineePercent: { name: 'trainee_percent', nullable: true },
  scopeInAt: { name: 'scope_in_at', nullable: false },
  resectionOutcome: { name: 'resection_outcome', nullable: false },
  technique: { name: 'technique', nullable: true },
  pieces: { name: 'pieces', nullable: true },
  endoscopicallyComplete: { name: 'endoscopically_complete', nullable: true },
  lesionLongAxisMm: { name: 'lesion_long_axis_mm', nullable: false },
  specimenLongAxisMm: { name: 'specimen_long_axis_mm', nullable: true },
  specimenShortAxisMm: { name: 'specimen_short_axis_mm', nullable: true },
  specimenAreaCm2: { name: 'specimen_area_cm2', nullable: true },
  procedureMin: { name: 'procedure_min', nullable: true },
  dissectionMin: { name: 'dissection_min', nullable: true },
  speedCm2PerH: { name: 'speed_cm2_per_h', nullable: true },
  defectCircumferencePercent: { name: 'defect_circumference_percent', nullable: true },
  strictureFlag: { name: 'stricture_flag', nullable: true },
  fibrosis: { name: 'fibrosis', nullable: true },
  intraproceduralBleeding: { name: 'intraprocedural_bleeding', nullable: true },
  muscleInjury: { name: 'muscle_injury', nullable: true },
  perforation: { name: 'perforation', nullable: true },
  specimenRetrieved: { name: 'specimen_retrieved', nullable: true },
  pathologyStatus: { name: 'pathology_status', nullable: true },
  pathologyReportedAt: { name: 'pathology_reported_at', nullable: true },
  horizontalMargin: { name: 'horizontal_margin', nullable: true },
  verticalMargin: { name: 'vertical_margin', nullable: true },
  histology: { name: 'histology', nullable: true },
  invasionDepth: { name: 'invasion_depth', nullable: true },
  curabilityRule: { name: 'curability_rule', nullable: false },
  curabilityClass: { name: 'curability_class', nullable: true },
  curabilityGroup: { name: 'curability_group', nullable: true },
  withdrawn: { name: 'withdrawn', nullable: false },
  awaitsPathology: { name: 'awaits_pathology', nullable: false },
};

/** Columns in a fixed order. */
export const factColumns = (): readonly string[] =>
  Object.values(FACT_COLUMNS).map(({ name }) => name);

/** Values in the order of `factColumns`. */
export const factValues = (facts: Facts): readonly (string | number | boolean | null)[] => {
  const values: Readonly<Record<string, string | number | boolean | null>> = { ...facts };
  return Object.keys(FACT_COLUMNS).map((field) => values[field] ?? null);
};
