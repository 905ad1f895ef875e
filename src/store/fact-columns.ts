import type { StateToStore } from '../pipeline/index.js';

type Facts = StateToStore['facts'];

/** lesionLongAxisMm -> lesion_long_axis_mm */
type Snake<S extends string> = S extends `${infer Head}${infer Tail}`
  ? `${Head extends Lowercase<Head> ? Head : `_${Lowercase<Head>}`}${Snake<Tail>}`
  : '';

type FactColumns = { readonly [K in keyof Facts]: Snake<K> };

/** The newest facts of each case, one column a fact. */
export type FactsTable = { readonly [K in keyof Facts as Snake<K>]: Facts[K] };

/** A new fact does not compile until it has its column here; a migration must bring it. */
export const FACT_COLUMNS: FactColumns = {
  caseId: 'case_id',
  state: 'state',
  source: 'source',
  unit: 'unit',
  organ: 'organ',
  site: 'site',
  operator: 'operator',
  traineePercent: 'trainee_percent',
  scopeInAt: 'scope_in_at',
  resectionOutcome: 'resection_outcome',
  technique: 'technique',
  pieces: 'pieces',
  endoscopicallyComplete: 'endoscopically_complete',
  lesionLongAxisMm: 'lesion_long_axis_mm',
  specimenLongAxisMm: 'specimen_long_axis_mm',
  specimenShortAxisMm: 'specimen_short_axis_mm',
  specimenAreaCm2: 'specimen_area_cm2',
  procedureMin: 'procedure_min',
  dissectionMin: 'dissection_min',
  speedCm2PerH: 'speed_cm2_per_h',
  defectCircumferencePercent: 'defect_circumference_percent',
  strictureFlag: 'stricture_flag',
  fibrosis: 'fibrosis',
  intraproceduralBleeding: 'intraprocedural_bleeding',
  muscleInjury: 'muscle_injury',
  perforation: 'perforation',
  specimenRetrieved: 'specimen_retrieved',
};

/** Columns in a fixed order. */
export const factColumns = (): readonly string[] => Object.values(FACT_COLUMNS);

/** Values in the order of `factColumns`. */
export const factValues = (facts: Facts): readonly (string | number | boolean | null)[] => {
  const values: Readonly<Record<string, string | number | boolean | null>> = { ...facts };
  return Object.keys(FACT_COLUMNS).map((field) => values[field] ?? null);
};
