import type { PlanReason } from '../surveillance/index.js';

/**
 * Reasons that a scheduler is told: why a day is as it is. All others speak of what was found in
 * tissue, of a verdict or of a treatment, and are for those who treat. A reason that is not named
 * here is not told.
 */
export const SCHEDULED_REASONS = [
  'pathology-awaited',
  'report-interim',
  'death',
  'withdrawn',
  'declined',
  'lost',
  'age-limit',
  'sooner-without-day',
  'sooner',
  'schedule-complete',
  'day-not-known',
  'ever-done',
  'answered-by-event',
  'examined-again',
  'examination-told',
  'event-told',
  'booking-not-wanted',
  'booking-outside-window',
  'booking-after-done',
  'booking-cancelled',
  'booking-settled',
  'did-not-attend',
  'not-planned-now',
] as const satisfies readonly PlanReason['code'][];
