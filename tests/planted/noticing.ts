import { InvariantError } from '../../src/kernel/index.js';
import type { Rule } from '../../src/rules/index.js';
import type { Told } from '../../src/rules/question.js';
import type { KnownRule } from './known-rules.js';
import { questionsThatTell, type Reason, reasonOf } from './search.js';
import type { Planted } from './table-changes.js';
import { type Axes, valuesOf } from './ways.js';

/**
 * What becomes of a planted change: a question of the tests tells it, only a question beyond
 * theirs would, or no question at all, for a reason.
 */
export type Fate = 'noticed' | 'a question is missing in the tests' | Reason;

export function fateOf(known: KnownRule, planted: Planted<KnownRule['rule']>): Fate {
  const { rule, axes, impossible, expected } = known;
  const tells = (space: Axes, only: boolean, from: (question: Told) => string) => {
    for (const question of questionsThatTell(rule, planted, space, { only, impossible })) {
      const must = from(question);
      if (said(known, planted.rule, question) === must) continue;
      if (said(known, rule, question) === must) return true;
      throw new Error(`${rule.id} differs from its second writing: ${JSON.stringify(question)}`);
    }
    return false;
  };
  if (axes.some((space) => tells(space, false, expected))) return 'noticed';
  const anything = everywhere(known, planted.rule);
  if (tells(anything, true, (question) => said(known, rule, question))) {
    return 'a question is missing in the tests';
  }
  return reasonOf(rule, planted, anything, { only: true, impossible });
}

/** What a rule says, also when it has no answer at all. */
export function said(known: KnownRule, rule: Rule, question: Told): string {
  try {
    return known.says(rule, question);
  } catch (error) {
    if (error instanceof InvariantError) return 'no answer at all';
    throw error;
  }
}

/** Every word of every field, and every number that one of the two rules or the tests tell. */
function everywhere({ rule, axes }: KnownRule, changed: KnownRule['rule']): Axes {
  return Object.fromEntries(
    Object.entries(rule.fields).map(([name, field]) => {
      const numbers = [rule, changed].flatMap(({ samples }) => samples[name] ?? []);
      const asked = axes.flatMap((each) => each[name] ?? []);
      return [name, [...new Set([...asked, ...valuesOf(field, numbers)])]];
    }),
  );
}
