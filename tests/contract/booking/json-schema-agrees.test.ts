import { describe } from 'vitest';
import { BOOKING_CASE_CHECKS, BOOKING_CHECKS, parseBooking } from '../../../src/contract/index.js';
import { testAgreement } from '../schema-agreement.js';

describe('the published JSON Schema of a booking', () => {
  testAgreement({
    message: 'booking',
    file: 'booking-1.schema.json',
    examples: 'examples/bookings',
    parse: parseBooking,
    checks: BOOKING_CHECKS,
    caseChecks: BOOKING_CASE_CHECKS,
  });
});
