import type { Assessment } from '../assessment/index.js';
import { type Change, verdictChange } from '../record/index.js';

/** Where two assessments of the same messages differ. */
export interface ComputedChange {
  readonly verdict?: NonNullable<Change['verdict']>;
  /** Scores that differ. */
  readonly scores: readonly ScoreChange[];
}

interface ScoreChange {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
}

type Score = Assessment['scores'][number];

/**
 * Compares verdict and scores.
 *
 * @param before as it was stored; an early release computed neither
 * @returns undefined where they are the same
 */
export function computedChange(
  before: Partial<Assessment>,
  after: Assessment,
): ComputedChange | undefined {
  const verdict = verdictChange(before, after);
  const scores = scoreChanges(before.scores ?? [], after.scores);
  if (verdict === undefined && scores.length === 0) return undefined;
  return { ...(verdict === undefined ? {} : { verdict }), scores };
}

function scoreChanges(before: readonly Score[], after: readonly Score[]): readonly ScoreChange[] {
  const rules = [...new Set([...before, ...after].map(({ rule }) => rule))];
  return rules.flatMap((rule) => {
    const [from, to] = [before, after].map((scores) => textOf(scores, rule));
    return from === undefined || to === undefined || from === to ? [] : [{ rule, from, to }];
  });
}

function textOf(scores: readonly Score[], rule: string): string {
  const outcome = scores.find((score) => score.rule === rule)?.outcome;
  switch (outcome?.kind) {
    case undefined:
      return 'not computed';
    case 'total':
      return [String(outcome.total), outcome.group ?? []].flat().join(' ');
    case 'indeterminate':
      return `indeterminate, ${outcome.lowest} to ${outcome.highest}`;
    case 'refused':
      return 'not made for such a case';
  }
}
