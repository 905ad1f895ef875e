import type { PlanItem } from './follow-up-plan.js';
import { isToCome } from './item.js';
import {
  URGENT_FIRST_REASONS,
  URGENT_REASONS,
  URGENT_ROWS,
  URGENT_TASKS,
} from './urgency.table.js';

/**
 * The same item with its urgency.
 *
 * Source: the table of urgency (common practice, no source).
 */
export const withUrgency = (item: PlanItem): PlanItem => ({ ...item, urgency: urgencyOf(item) });

/**
 * How soon an item is to be booked, beside its window, in words of FHIR R4 `request-priority`.
 *
 * Source: the table of urgency (common practice, no source).
 */
function urgencyOf(item: PlanItem): PlanItem['urgency'] {
  const { task, row, first, reasons } = item;
  const isNamed = (codes: readonly string[]) => reasons.some(({ code }) => codes.includes(code));
  const isUrgent =
    (task !== undefined && URGENT_TASKS.includes(task)) ||
    URGENT_ROWS.includes(row) ||
    (isToCome(item) && isNamed(URGENT_REASONS)) ||
    (first && item.kind === 'endoscopy' && isNamed(URGENT_FIRST_REASONS));
  return isUrgent ? 'urgent' : 'routine';
}
