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

/** What may be known of an assessment that an early release has stored. */
type Stored = Partial<Pick<Assessment, 'curability'>>;

/** The verdicts before and after, where they differ. */
export const verdictChange = (before: Stored, after: Assessment): Change['verdict'] =>
  verdictSince(verdictText(before), after);

/**
 * The same, where the verdict of before is known as text alone.
 *
 * @param from as `verdictText` writes it
 */
export function verdictSince(from: string, after: Assessment): Change['verdict'] {
  const to = verdictText(after);
  if (from === to) return undefined;
  const { outcome } = after.curability.verdict;
  const because =
    outcome.kind === 'decided'
      ? outcome.reasons.map(({ says }) => says)
      : [`not known: ${outcome.missing.join(', ')}`];
  return { from, to, because };
}

/** A verdict in a few words: class and rule. */
export function verdictText({ curability }: Stored): string {
  if (curability === undefined) return 'not computed';
  const { rule, outcome } = curability.verdict;
  const found = outcome.kind === 'decided' ? outcome.class : 'indeterminate';
  return `${found} (${rule})`;
}
