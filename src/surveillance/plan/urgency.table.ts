import type { PlanTask } from './follow-up-plan.js';
import type { ReasonCode } from './reasons.table.js';

/**
 * What does not wait for its turn: what a high-risk resection waits for, and neoplasia at the scar.
 * Source: common practice, no source.
 */
export const URGENT_TASKS: readonly PlanTask[] = [
  'multidisciplinary-meeting',
  'surgery-referral',
  'additional-treatment',
  'recurrence-treatment',
];

/** A scar that is being dilated narrows again. Source: common practice, no source. */
export const URGENT_ROWS: readonly string[] = ['dilatation'];

/** Why an examination is urgent, whatever its row. Source: common practice, no source. */
export const URGENT_REASONS: readonly ReasonCode[] = ['did-not-attend'];

/** The same for the first examination of its series alone: the look after a recurrence. */
export const URGENT_FIRST_REASONS: readonly ReasonCode[] = ['recurrence'];
