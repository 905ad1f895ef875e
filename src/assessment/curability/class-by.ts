import { askClass, type Told } from '../../rules/index.js';
import { RULE_SETS, type RuleSetId } from './rule-sets.js';

/**
 * The class of a resection by a rule set, whichever the unit has chosen.
 *
 * Source: the rule set.
 *
 * @returns undefined while the fields leave more than one class
 */
export function classBy(ruleSet: RuleSetId, told: Told): string | undefined {
  const { decision } = askClass(RULE_SETS[ruleSet], told);
  return decision.kind === 'decided' ? decision.class : undefined;
}
