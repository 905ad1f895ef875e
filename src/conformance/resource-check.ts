import type { Problem } from '../kernel/index.js';
import { holdsByReference } from './reference.js';
import type { Rule } from './rule.js';

/** What a rule found out: warnings are shown, errors stop the delivery. */
export interface Broken {
  readonly rule: Rule;
  readonly problem: Problem;
}

/** A resource under check, with a copy for FHIRPath that is only made when it is needed. */
export interface Subject {
  readonly resource: unknown;
  /** JSON Pointer of the resource in the Bundle. */
  readonly pointer: string;
  readonly copy: () => unknown;
}

export function subjectOf(resource: unknown, pointer: string): Subject {
  let copied: unknown;
  return {
    resource,
    pointer,
    copy: () => {
      copied ??= structuredClone(resource);
      return copied;
    },
  };
}

/**
 * Puts a rule to FHIRPath proper, which alone may say that it is broken.
 *
 * @param expression the rule as a question about the whole resource
 * @param pointer where the rule seems to be broken
 */
export function broken(
  rule: Rule,
  expression: string,
  subject: Subject,
  pointer: string,
): readonly Broken[] {
  if (holdsByReference(expression, subject.copy())) return [];
  const message = `The rule ${rule.key} for ${rule.context} does not hold.`;
  return [{ rule, problem: { rule: rule.key, pointer, message, expected: rule.human } }];
}
