import type { Change } from '../record/index.js';

/**
 * What a message changed, as people read it in the timeline.
 *
 * @returns undefined where it changed no verdict
 */
export function changedText(change: Change | undefined): string | undefined {
  if (change?.verdict === undefined) return undefined;
  const { from, to, because } = change.verdict;
  const why = because.length === 0 ? '' : `, because: ${because.join(' ')}`;
  return `verdict: ${from} -> ${to}${why}`;
}
