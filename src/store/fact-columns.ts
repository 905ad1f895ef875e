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
  resectedOn: { name: 'resected_on', nullable: false },
  tumour: { name: 'tumour', nullable: true },
  sizeBand: { name: 'size_band', nullable: false },
  traineeBand: { name: 'trainee_band', nullable: false },
  pathologyDays: { name: 'pathology_days', nullable: true },
  firstCheckState: { name: 'first_check_state', nullable: false },
  firstCheckOn: { name: 'first_check_on', nullable: true },
  firstCheckTiming: { name: 'first_check_timing', nullable: true },
  firstCheckLatestOn: { name: 'first_check_latest_on', nullable: true },
  recurrenceOn: { name: 'recurrence_on', nullable: true },
  lastCheckOn: { name: 'last_check_on', nullable: true },
  lastKnownAliveOn: { name: 'last_known_alive_on', nullable: true },
  deathOn: { name: 'death_on', nullable: true },
  enBloc: { name: 'en_bloc', nullable: false },
  r0: { name: 'r0', nullable: false },
  curative: { name: 'curative', nullable: false },
  intraproceduralPerforation: { name: 'intraprocedural_perforation', nullable: false },
  delayedPerforation: { name: 'delayed_perforation', nullable: false },
  bleeding28d: { name: 'bleeding28d', nullable: false },
  bleeding6h30d: { name: 'bleeding6h30d', nullable: false },
  bleeding30dCsdb: { name: 'bleeding30d_csdb', nullable: false },
  stricture: { name: 'stricture', nullable: false },
  conversionToSurgery: { name: 'conversion_to_surgery', nullable: false },
  death30d: { name: 'death30d', nullable: false },
  readmission30d: { name: 'readmission30d', nullable: false },
  adverseEvent30d: { name: 'adverse_event30d', nullable: false },
  residualOrRecurrence: { name: 'residual_or_recurrence', nullable: false },
};

/** Columns in a fixed order. */
export const factColumns = (): readonly string[] =>
  Object.values(FACT_COLUMNS).map(({ name }) => name);

/** Values in the order of `factColumns`. */
export const factValues = (facts: Facts): readonly (string | number | boolean | null)[] => {
  const values: Readonly<Record<string, string | number | boolean | null>> = { ...facts };
  return Object.keys(FACT_COLUMNS).map((field) => values[field] ?? null);
};

/** The facts of a row of the table. */
export function factsOf(row: Readonly<Record<string, unknown>>): Facts {
  const facts = Object.entries(FACT_COLUMNS).map(([fact, { name }]) => [fact, row[name]]);
  return Object.fromEntries(facts);
}
