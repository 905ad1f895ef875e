import type { FailureClass } from '../pipeline/index.js';

/** What one attempt came to, judged; what follows from it is decided elsewhere. */
export type Verdict =
  | { readonly kind: 'delivered'; readonly detail: string; readonly locations: readonly string[] }
  | { readonly kind: 'waiting-patient'; readonly reason: string }
  | Failure;

export interface Failure {
  readonly kind: 'failed';
  readonly failureClass: FailureClass;
  /** A word of our own for logs; attempts with the same word failed alike. */
  readonly fault: string;
  /** HTTP status, where one came. */
  readonly status?: number;
  /** A plain sentence without patient data. */
  readonly reason: string;
  /** The target is wrongly set up: it is held at once, not after several failures. */
  readonly hold: boolean;
  /** How long the server asked to be left alone, milliseconds. */
  readonly waitMs?: number;
}

/** Whether the same request may go well another time without anybody changing anything. */
export function isPassing({ failureClass, hold }: Failure): boolean {
  switch (failureClass) {
    case 'destination':
      return !hold;
    case 'bounded':
    case 'unknown':
      return true;
    case 'case':
    case 'ambiguous':
    case 'non-conformant-server':
      return false;
  }
}
