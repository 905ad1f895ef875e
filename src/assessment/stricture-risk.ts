import type { Organ } from '../contract/index.js';
import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { askClass, type ClassRule } from '../rules/index.js';
import type { DefectCircumference } from './defect-circumference.js';
import {
  STRICTURE_BANDS,
  STRICTURE_FACTORS,
  type StrictureFactorName,
  type StrictureFlag,
} from './stricture-risk.table.js';

export interface StrictureRisk {
  readonly flag: StrictureFlag;
  readonly factors: readonly StrictureFactorName[];
}

/** Where the defect lies and how long it is; mm. */
export interface DefectPlace {
  readonly organ: Organ;
  readonly site?: string | undefined;
  readonly lengthMm?: number | undefined;
}

const UPPER_OESOPHAGUS: readonly string[] = ['oesophagus-cervical', 'oesophagus-upper-third'];

const RULES: Partial<Record<Organ, ClassRule<StrictureFlag>>> = STRICTURE_BANDS;

/**
 * Flags the risk of a stricture by the share of the circumference that the defect takes.
 *
 * Source: kim2014, abstract; the bands between by memory, see the table.
 * Indeterminate: without the share, or where length decides and is absent.
 *
 * @returns undefined for an organ without a published threshold
 */
export function strictureRisk(
  circumference: Finding<DefectCircumference>,
  place: DefectPlace,
): Finding<StrictureRisk> | undefined {
  const rule = RULES[place.organ];
  if (rule === undefined) return undefined;
  if (circumference.kind === 'indeterminate') return circumference;
  const { decision, remarks } = askClass(rule, {
    defectCircumferencePercent: circumference.value.percent,
    defectLengthMm: place.lengthMm,
    upperOesophagus: place.site === undefined ? undefined : UPPER_OESOPHAGUS.includes(place.site),
  });
  // The share is known, so that only the length can be missing.
  if (decision.kind === 'indeterminate') return indeterminate(['defect.longAxisMm']);
  const factors = STRICTURE_FACTORS.filter((factor) => remarks.includes(factor));
  return determined({ flag: decision.class, factors: factors.map(({ remark }) => remark) }, [
    ...circumference.cites,
    ...decision.rows.flatMap(({ cites }) => cites),
    ...factors.flatMap(({ cites }) => cites),
  ]);
}
