import { yearsBetween } from '../../kernel/index.js';
import type { PlanItem } from './follow-up-plan.js';
import { toConfirm } from './item.js';
import type { PlanFacts } from './plan-facts.js';
import {
  BARRETT_STOP,
  FIRST_STAYS,
  OTHER_STOP,
  STOP_RULES,
  type StopRule,
} from './stop-rules.table.js';

/**
 * Asks again for an examination of somebody who is old; it is never cancelled.
 *
 * Source: the table of stop rules.
 * Indeterminate: without a day of birth or an age nothing is asked.
 *
 * @param local whether it follows a piecemeal or local-risk resection
 */
export function stopRule(item: PlanItem, facts: PlanFacts, local: boolean): PlanItem {
  if (item.due === undefined || item.kind === 'task') return item;
  const rule = stopRuleOf(item);
  const age = ageOn(item.due.target, facts);
  if (age === undefined || age < rule.fromYears || (item.first && rule.keepsFirst)) return item;
  const asked = toConfirm(item, 'age-limit');
  if (asked === item) return item;
  if (item.first && local) return { ...item, cites: [...item.cites, FIRST_STAYS] };
  return { ...asked, says: [...asked.says, rule.says], cites: [...asked.cites, ...rule.cites] };
}

/**
 * The stop rule of a row.
 *
 * Source: the table of stop rules.
 */
export function stopRuleOf({ row, ruleSet }: Pick<PlanItem, 'row' | 'ruleSet'>): StopRule {
  if (row.startsWith('BAR-5')) return BARRETT_STOP;
  return STOP_RULES[ruleSet] ?? OTHER_STOP;
}

/** Completed years; from an age at the dissection, the least that it can be. */
function ageOn(day: string, { bornOn, ageYears, esdOn }: PlanFacts): number | undefined {
  if (bornOn !== undefined) return yearsBetween(bornOn, day);
  return ageYears === undefined ? undefined : ageYears + yearsBetween(esdOn, day);
}
