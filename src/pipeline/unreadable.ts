import type { Problem } from '../kernel/index.js';

/** Rules that a body breaks which is no JSON document at all. */
const UNREADABLE: readonly string[] = ['not-utf-8', 'byte-order-mark', 'too-deep', 'not-json'];

/** A body that cannot be read is another matter than one that breaks rules. */
export function refusedKind(problems: readonly Problem[]): 'unreadable' | 'invalid' {
  return problems.some(({ rule }) => UNREADABLE.includes(rule)) ? 'unreadable' : 'invalid';
}
