import { z } from 'zod';
import { revision } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { instant, oneOf } from '../scalars.js';
import { BOOKING_STATUSES, CANCEL_REASONS } from './words.table.js';

/** An id of the list of follow-ups, as the service gives it. */
const FOLLOW_UP_ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** A reference to an Appointment with a FHIR R4 id. */
const APPOINTMENT = /^Appointment\/[A-Za-z0-9\-.]{1,64}$/;

/** More follow-ups than any patient has at one visit. */
const MOST_ALSO = 20;

const followUpId = z
  .string()
  .regex(FOLLOW_UP_ID)
  .meta({ title: 'the id of a follow-up, a UUID in lower case' });

/**
 * What the scheduler says of the appointment for one follow-up, which the address names; natural
 * key the follow-up.
 */
export const bookingSchema = z.strictObject({
  schema: z.literal('booking/1'),
  revision: revision.describe('of what one sender says of one follow-up'),
  sentAt: instant,
  status: oneOf(BOOKING_STATUSES),
  startsAt: instant
    .optional()
    .describe('required of what is booked; else that of the appointment that was'),
  endsAt: instant.optional().describe('with startsAt alone'),
  reason: oneOf(CANCEL_REASONS).optional().describe('why it was cancelled'),
  alsoFor: z
    .array(followUpId)
    .max(MOST_ALSO)
    .meta({ title: `a list of at most ${MOST_ALSO} ids of follow-ups` })
    .optional()
    .describe(
      'other follow-ups of the patient that the same visit answers; each has an appointment of ' +
        'its own from then on: whoever cancels or moves the visit names them again',
    ),
  appointment: z
    .string()
    .regex(APPOINTMENT)
    .meta({ title: 'a reference such as Appointment/123' })
    .optional()
    .describe("the sender's own Appointment on the FHIR server, which is then only read"),
});

export type BookingFields = DeepReadonly<z.infer<typeof bookingSchema>>;
