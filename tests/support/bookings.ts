import type { Service } from '../../src/pipeline/index.js';
import { followUpIdOf } from '../../src/pipeline/naming.js';

/** A booking as a scheduler sends it; what is not given is a sound word on a first booking. */
export interface BookingDraft {
  readonly revision?: number;
  readonly sentAt?: string;
  readonly status?: string;
  readonly startsAt?: string;
  readonly endsAt?: string;
  readonly reason?: string;
  readonly alsoFor?: readonly string[];
  readonly appointment?: string;
}

export const bookingBytes = (draft: BookingDraft): Uint8Array =>
  new TextEncoder().encode(
    JSON.stringify({
      schema: 'booking/1',
      revision: 1,
      sentAt: '2026-12-01T08:00:00Z',
      status: 'booked',
      ...draft,
    }),
  );

/** Begin and end of half an hour in the morning of a day. */
export const morningOf = (on: string) => ({
  startsAt: `${on}T09:00:00+01:00`,
  endsAt: `${on}T09:30:00+01:00`,
});

/** Says something of the appointment for an item, as the scheduler of a source. */
export const book = (
  service: Service,
  { caseId, item, source }: { caseId: string; item: string; source?: string },
  secret: string,
  draft: BookingDraft,
) =>
  service.receiveBooking(
    followUpIdOf(secret, caseId, item),
    bookingBytes(draft),
    source === undefined ? {} : { source },
  );
