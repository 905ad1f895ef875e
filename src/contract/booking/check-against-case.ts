import type { Problem } from '../../kernel/index.js';
import type { CaseFields } from '../case/case.js';
import { isBefore } from '../compare-told.js';
import { type CrossCheck, crossProblems } from '../cross-check.js';
import type { BookingFields } from './booking.js';

interface BookingOfCase {
  readonly sent: BookingFields;
  readonly esd: CaseFields;
}

/** Contradictions between a booking and the case of its follow-up. Project rules. */
export const BOOKING_CASE_CHECKS: readonly CrossCheck<BookingOfCase>[] = [
  {
    rule: 'before-procedure',
    message: 'The appointment starts before the procedure that it follows was over.',
    expected: 'startsAt at or after times.scopeOutAt of the case',
    broken: ({ sent, esd: { times } }) =>
      isBefore(sent.startsAt, times.scopeOutAt) ? ['/startsAt'] : [],
  },
];

/**
 * Holds a booking against the case of its follow-up. It names no case itself: the address does.
 *
 * @param sent has passed its own checks
 */
export const checkBookingAgainstCase = (sent: BookingFields, esd: CaseFields): readonly Problem[] =>
  crossProblems(BOOKING_CASE_CHECKS, { sent, esd });
