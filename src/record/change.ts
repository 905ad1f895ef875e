import type { Assessment } from '../assessment/index.js';
import type { MessageKind } from './message.js';

/** What one message has changed. */
export interface Change {
  readonly by: {
    readonly kind: MessageKind;
    readonly revision: number;
    /** Of a message of the service's own: why it was written. */
    readonly reason?: string;
  };
  /** Absent where the verdict is as it was. */
  readonly verdict?: {
    readonly from: string;
    readonly to: string;
    /** Why it is so now, for people. */
    readonly because: readonly string[];
  };
}

/** The verdicts before and after, where they differ. */
export function verdictChange(before: Assessment, after: Assessment): Change['verdict'] {
  const from = shortOf(before);
  const to = shortOf(after);
  if (from === to) return undefined;
  const { outcome } = after.curability.verdict;
  const because =
    outcome.kind === 'decided'
      ? outcome.reasons.map(({ says }) => says)
      : [`not known: ${outcome.missing.join(', ')}`];
  return { from, to, because };
}

function shortOf({ curability: { verdict } }: Assessment): string {
  const { rule, outcome } = verdict;
  const found = outcome.kind === 'decided' ? outcome.class : 'indeterminate';
  return `${found} (${rule})`;
}
