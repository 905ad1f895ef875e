import type { Problem } from '../kernel/index.js';

/** Rules that a body breaks which is no JSON document at all. */
const RULES: readonly string[] = ['not-utf-8', 'byte-order-mark', 'too-deep', 'not-json'];

/** Whether a body could not be read at all, which is another matter than breaking rules. */
export function isUnreadable(problems: readonly Problem[]): boolean {
  return problems.some(({ rule }) => RULES.includes(rule));
}
