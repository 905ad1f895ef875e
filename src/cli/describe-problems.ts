import type { Problem } from '../kernel/index.js';

/** Problems for people: where, what, and what would have been accepted. */
export function describeProblems(problems: readonly Problem[]): string {
  return problems.map(describe).join('\n');
}

const describe = ({ pointer, message, expected, rule }: Problem): string =>
  [
    `  ${pointer === '' ? '(the whole document)' : pointer}`,
    `    ${message}`,
    `    expected: ${expected}   [${rule}]`,
  ].join('\n');
