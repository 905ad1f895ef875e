import type { ConceptKey } from './code-ref.js';
import { CONCEPTS } from './concepts.table.js';

/** A unit as a Quantity carries it. */
export interface Unit {
  readonly unit: string;
  readonly system: string;
  readonly code: string;
}

type UnitKey = Extract<ConceptKey, `unit-${string}`>;

function unit(key: UnitKey): Unit {
  const [{ system, code, display }] = CONCEPTS[key];
  return { unit: display, system, code };
}

/** Units by name; their codes are UCUM. Counts carry an annotation, which equals the unit 1. */
export const UNITS = {
  mm: unit('unit-mm'),
  um: unit('unit-um'),
  cm: unit('unit-cm'),
  cm2: unit('unit-cm2'),
  min: unit('unit-min'),
  ml: unit('unit-ml'),
  mlPerMin: unit('unit-ml-min'),
  mg: unit('unit-mg'),
  watt: unit('unit-w'),
  percent: unit('unit-percent'),
  cm2PerH: unit('unit-cm2-h'),
  score: unit('unit-score'),
  one: unit('unit-1'),
  piece: unit('unit-piece'),
  clip: unit('unit-clip'),
  lesion: unit('unit-lesion'),
  tunnel: unit('unit-tunnel'),
  inr: unit('unit-inr'),
  h: unit('unit-h'),
  gPerDl: unit('unit-g-dl'),
  mgPerL: unit('unit-mg-l'),
  degreeCelsius: unit('unit-cel'),
} as const;
