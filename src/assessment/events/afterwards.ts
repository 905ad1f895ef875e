import type { EventKind, Identifier } from '../../contract/index.js';
import type { Finding } from '../../kernel/index.js';
import type { Reason, ReviewRemark, Shown } from '../assessment.js';
import type { Grade } from '../classifications/adverse-event-fields.table.js';
import type { Recurrence } from './recurrence.table.js';

/** What came after a dissection means; plain JSON. */
export interface Afterwards {
  /** Every event that can be graded, in the order of the record. */
  readonly grades: readonly EventGrades[];
  /** Delayed bleeding by each definition that speaks of the organ. */
  readonly delayedBleeding: readonly BleedingFinding[];
  /** Whether anything went wrong after the procedure, up to its 30th day. */
  readonly adverseEvent30d: Finding<'yes' | 'no'>;
  /** Whether the 30th day is over, as far as the messages themselves show. */
  readonly windowIsClosed: boolean;
  /** Whether neoplasia is at the scar, by each examination in the order of the record. */
  readonly recurrences: readonly RecurrenceFinding[];
  readonly review: readonly ReviewRemark[];
}

export interface EventGrades {
  readonly event: Identifier;
  readonly kind: EventKind;
  /** Calendar days after the procedure. */
  readonly days: number;
  readonly findings: readonly GradeFinding[];
  /** Contradictions between the grades as the unit states them. */
  readonly conflicts: readonly Shown[];
}

/** A grade by the facts, and beside it the one that the unit states. */
export interface GradeFinding {
  readonly rule: 'agree' | 'clavien-dindo';
  readonly version: number;
  readonly outcome: GradeOutcome;
  readonly stated?: Grade;
}

export type GradeOutcome =
  | { readonly kind: 'decided'; readonly grade: Grade; readonly reasons: readonly Reason[] }
  | {
      readonly kind: 'indeterminate';
      /** Dotted paths of the fields of the event. */
      readonly missing: readonly string[];
      readonly atLeast: Grade;
    }
  /** The grading does not speak of such an event; a sentence says why. */
  | { readonly kind: 'refused'; readonly because: string };

export interface BleedingFinding {
  readonly rule: string;
  readonly version: number;
  readonly title: string;
  readonly answer: Finding<'yes' | 'no'>;
  /** Rows of the definition that a bleeding fulfilled. */
  readonly reasons: readonly Reason[];
}

export interface RecurrenceFinding {
  readonly examination: Identifier;
  readonly rule: string;
  readonly version: number;
  readonly answer: Finding<Recurrence>;
  /** Tissue was taken whose result may change the answer. */
  readonly isPending: boolean;
}
