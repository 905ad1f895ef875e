import type { Readable } from '../cross-check.js';
import type { BookingFields } from './booking.js';

/** What can be read of a booking as it was sent. */
export type ReadableBooking = Readable<BookingFields>;
