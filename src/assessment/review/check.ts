import type { ReviewCheck } from '../../contract/index.js';
import { type Citation, roundTo } from '../../kernel/index.js';
import type { Condition, ConditionOn } from '../../rules/index.js';
import type { ReviewRemark } from '../assessment.js';
import { type Facts, holds } from './known.js';

/** A row of the case review: what it looks at, when it speaks, what it says, who says so. */
export interface Check<When = Condition> {
  readonly check: ReviewCheck;
  readonly severity: ReviewRemark['severity'];
  readonly title: string;
  /** JSON Pointers; `*` stands for the entries of a list. */
  readonly fields: readonly string[];
  readonly when: When;
  /** Silent where one of these holds. */
  readonly unless?: readonly When[];
  /** For people; a name in braces stands for that fact, which `when` asks for or which is told. */
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** Checks over one kind of facts: a wrong name or word does not compile. */
export type ChecksOn<Facts> = readonly Check<ConditionOn<Facts>>[];

/**
 * The remarks of all checks that hold.
 *
 * Source: the cites of each row.
 *
 * @param at index of the entry that the facts tell of, where they tell of one entry of a list
 */
export function remarksOn(checks: readonly Check[], facts: Facts, at?: number): ReviewRemark[] {
  return checks
    .filter(({ when, unless = [] }) => holds(when, facts) && !unless.some((u) => holds(u, facts)))
    .map(({ check, severity, fields, says, cites }) => ({
      check,
      severity,
      pointers: pointersTo(fields, at),
      says: filledIn(says, facts),
      cites,
    }));
}

/** A fact about a whole list points to the list. */
function pointersTo(fields: readonly string[], at: number | undefined): readonly string[] {
  const pointers = fields.map((field) =>
    at === undefined ? field.replace(/\/\*.*$/, '') : field.replace('*', String(at)),
  );
  return [...new Set(pointers)];
}

const DECIMALS = 2;

const filledIn = (says: string, facts: Facts): string =>
  says.replaceAll(/\{(\w+)\}/g, (_, fact: string) => {
    const value = facts[fact];
    return String(typeof value === 'number' ? roundTo(value, DECIMALS) : value);
  });
