import type { CaseFields, UnitSettings } from '../../contract/index.js';
import type { ReviewRemark } from '../assessment.js';
import { type ChecksOn, remarksOn } from './check.js';
import { CLOSING_CHECKS } from './closing-checks.table.js';
import { CONSISTENCY_CHECKS } from './consistency-checks.table.js';
import { DISSECTION_CHECKS } from './dissection-checks.table.js';
import { DRUG_CHECKS } from './drug-checks.table.js';
import { drugFacts } from './drug-facts.js';
import { EQUIPMENT_CHECKS } from './equipment-checks.table.js';
import { type ReviewContext, type ReviewFacts, reviewFacts } from './facts.js';
import { PREPARATION_CHECKS } from './preparation-checks.table.js';
import { STRATEGY_CHECKS } from './strategy-checks.table.js';

/** All checks of a whole case, in the order of the procedure. */
export const CASE_CHECKS: ChecksOn<ReviewFacts> = [
  ...PREPARATION_CHECKS,
  ...EQUIPMENT_CHECKS,
  ...STRATEGY_CHECKS,
  ...DISSECTION_CHECKS,
  ...CLOSING_CHECKS,
  ...CONSISTENCY_CHECKS,
];

/**
 * Reads a case as a colleague would: what is unusual, what may be a slip, what a guideline asks
 * otherwise. A check is silent where a field that it needs was not told; nothing is changed.
 *
 * Source: common practice where a row says so; otherwise the work that the row cites.
 *
 * @param context what is known beside the case
 * @returns the remarks of all checks that the unit has not switched off; drugs come last
 */
export function reviewCase(
  fields: CaseFields,
  context: ReviewContext,
  unit: UnitSettings,
): readonly ReviewRemark[] {
  const off: readonly string[] = unit.checksOff;
  const drugs = fields.before?.antithrombotics ?? [];
  return [
    ...remarksOn(CASE_CHECKS, { ...reviewFacts(fields, context, unit) }),
    ...drugs.flatMap((drug, i) => remarksOn(DRUG_CHECKS, { ...drugFacts(drug, fields, unit) }, i)),
  ].filter(({ check }) => !off.includes(check));
}
