import type { Organ } from '../../contract/index.js';
import { invariant } from '../../kernel/index.js';
import { askClass, type ClassRule, type Decision, type Told } from '../../rules/index.js';
import type { Curability, CurabilityGroup, Verdict, VerdictOutcome } from '../assessment.js';
import { type ClassGroup, CURABILITY_GROUPS } from './groups.table.js';
import { RULE_SETS, type RuleSetId, SETS_OF_ORGAN } from './rule-sets.js';
import { USUALLY, type Usually, WHO_DECIDES } from './usually.table.js';

/**
 * Says whether the resection cures, by the rule set of the unit and, where they see it in another
 * way, by the other sets for the organ.
 *
 * Source: each row of the tables.
 * Indeterminate: where the fields that are missing leave more than one class.
 *
 * @param told fields of a `CurabilityQuestion`
 * @param awaitsPathology whether the final report on the specimen is still to come
 */
export function assessCurability(
  told: Told,
  organ: Organ,
  chosen: RuleSetId,
  awaitsPathology: boolean,
): Curability {
  const own = RULE_SETS[chosen];
  const speaks = SETS_OF_ORGAN[organ].includes(own);
  const verdict = verdictOf(own, speaks ? told : NOT_OURS, awaitsPathology);
  const others = SETS_OF_ORGAN[organ]
    .filter(({ id }) => id !== own.id)
    .map((rule) => verdictOf(rule, told, awaitsPathology))
    .filter(({ outcome }) => isAnotherView(outcome, verdict.outcome));
  return { verdict, others };
}

/**
 * The group of a class. A class that is curative by name needs R0: without it the risk is local,
 * and as long as R0 is not known, nothing is said.
 *
 * Source: curative needs R0 in every guideline that names it; see the table of groups.
 */
export function groupOf(ruleSet: string, decided: string, told: Told): CurabilityGroup {
  const group = GROUPS[ruleSet]?.[decided]?.group;
  invariant(group !== undefined, 'every class of every set has a group');
  if (group !== 'curative') return group;
  const clear = isR0(told);
  if (clear === undefined) return 'open';
  return clear ? 'curative' : 'local-risk';
}

/** To a set that does not speak of the organ, every tumour of it is another one. */
const NOT_OURS: Told = { tumour: 'other' };

const GROUPS: Readonly<Record<string, Readonly<Record<string, ClassGroup>>>> = CURABILITY_GROUPS;
const FOLLOWS: Readonly<Record<string, Readonly<Record<string, Usually>>>> = USUALLY;

function verdictOf(rule: ClassRule, told: Told, awaitsPathology: boolean): Verdict {
  const { decision, remarks } = askClass(rule, told);
  return {
    rule: rule.id,
    version: rule.version,
    ...(rule.unconfirmed === undefined ? {} : { unconfirmed: rule.unconfirmed }),
    outcome: outcomeOf(rule, decision, told, awaitsPathology),
    usually: decision.kind === 'decided' ? usuallyAfter(rule, decision.class) : '',
    remarks: remarks.map(({ remark, says, cites }) => ({ remark, says, cites })),
  };
}

function outcomeOf(
  rule: ClassRule,
  decision: Decision,
  told: Told,
  awaitsPathology: boolean,
): VerdictOutcome {
  if (decision.kind === 'indeterminate') {
    return awaitsPathology ? { ...decision, awaits: 'pathology' } : decision;
  }
  return {
    kind: 'decided',
    class: decision.class,
    group: groupOf(rule.id, decision.class, told),
    reasons: decision.rows.map(({ row, reason, says, cites }) => ({
      row,
      ...(reason === undefined ? {} : { reason }),
      says,
      cites,
    })),
  };
}

function usuallyAfter(rule: ClassRule, decided: string): string {
  const usually = FOLLOWS[rule.id]?.[decided];
  invariant(usually !== undefined, 'something usually follows every class');
  return `${usually.says} ${WHO_DECIDES}`;
}

/** Whether another set has an answer, and one that the chosen set does not give. */
function isAnotherView(other: VerdictOutcome, own: VerdictOutcome): boolean {
  if (other.kind === 'indeterminate' || other.class === 'no-rule') return false;
  if (own.kind === 'indeterminate') return true;
  return other.class !== own.class || other.group !== own.group;
}

/** En bloc and free at both margins; undefined as long as nothing denies it. */
function isR0({ enBloc, hm, vm }: Told): boolean | undefined {
  const denied = enBloc === false || [hm, vm].some((state) => state === '1' || state === 'X');
  if (denied) return false;
  return enBloc === true && hm === '0' && vm === '0' ? true : undefined;
}
