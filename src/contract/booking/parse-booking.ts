import type { Checked } from '../../kernel/index.js';
import { type Message, parseMessage } from '../parse-message.js';
import { type BookingFields, bookingSchema } from './booking.js';
import { BOOKING_CHECKS } from './cross-checks.js';

/** A booking that has passed every check of the contract. */
export type BookingMessage = Message<BookingFields>;

/** Reads the bytes of a `booking` message; see `parseMessage`. */
export function parseBooking(bytes: Uint8Array): Checked<BookingMessage> {
  return parseMessage<BookingFields>(bookingSchema, BOOKING_CHECKS, bytes);
}
