import type { CaseFields } from '../contract/index.js';
import type { Finding } from '../kernel/index.js';
import { type DefectCircumference, defectCircumference } from './defect-circumference.js';
import { dissectionMin, procedureMin, speedCm2PerH } from './dissection-speed.js';
import { specimenAreaCm2 } from './specimen-area.js';
import { type StrictureRisk, strictureRisk } from './stricture-risk.js';

/** Version of all rules of this folder; rises with every change of a rule. */
const RULES_VERSION = '1';

/** What a case means; numbers unrounded. */
export interface Assessment {
  readonly rulesVersion: string;
  readonly procedureMin: Finding<number>;
  readonly dissectionMin: Finding<number>;
  readonly specimenAreaCm2: Finding<number>;
  readonly speedCm2PerH: Finding<number>;
  readonly defectCircumference: Finding<DefectCircumference>;
  /** Absent for an organ without a published threshold. */
  readonly strictureRisk?: Finding<StrictureRisk>;
}

/**
 * Computes everything that a case allows; decides nothing by itself.
 *
 * Source: the rules that it calls.
 */
export function assess(sent: CaseFields): Assessment {
  const area = specimenAreaCm2(sent.specimen ?? {});
  const minutes = dissectionMin(sent.times);
  const circumference = defectCircumference(sent.defect ?? {});
  const risk = strictureRisk(circumference, {
    organ: sent.lesion.organ,
    site: sent.lesion.site,
    lengthMm: sent.defect?.longAxisMm,
  });
  return {
    rulesVersion: RULES_VERSION,
    procedureMin: procedureMin(sent.times),
    dissectionMin: minutes,
    specimenAreaCm2: area,
    speedCm2PerH: speedCm2PerH(area, minutes),
    defectCircumference: circumference,
    ...(risk === undefined ? {} : { strictureRisk: risk }),
  };
}
