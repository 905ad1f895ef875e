import type { Assessment } from '../assessment/index.js';
import { type RecordVersion, verdictChange } from '../record/index.js';

/** What was there before a message came; nothing while the case had not come. */
export interface Before {
  readonly assessment: Assessment;
  /** How many messages contradicted the case. */
  readonly setAside: number;
}

/**
 * What came of a message, as people read it in the timeline.
 *
 * @returns undefined where it changed no verdict and set nothing aside
 */
export function changedText(
  before: Before | undefined,
  { assessment, setAside }: Pick<RecordVersion, 'assessment' | 'setAside'>,
): string | undefined {
  const texts = [
    ...(before === undefined ? [] : verdictText(before.assessment, assessment)),
    ...(setAside.length === (before?.setAside ?? 0) ? [] : [asideText(setAside)]),
  ];
  return texts.length === 0 ? undefined : texts.join('; ');
}

function verdictText(before: Assessment, after: Assessment): readonly string[] {
  const verdict = verdictChange(before, after);
  if (verdict === undefined) return [];
  const { from, to, because } = verdict;
  const why = because.length === 0 ? '' : `, because: ${because.join(' ')}`;
  return [`verdict: ${from} -> ${to}${why}`];
}

function asideText(setAside: RecordVersion['setAside']): string {
  if (setAside.length === 0) return 'nothing is set aside any more';
  const each = setAside.map(({ kind, revision, problems }) => {
    const rules = [...new Set(problems.map(({ rule }) => rule))].join(', ');
    return `${kind} revision ${revision} (${rules})`;
  });
  return `set aside: ${each.join(', ')}`;
}
