/**
 * What the scheduler says of an appointment. `moved`: booked at another time than before;
 * `did-not-attend`: the patient neither came nor cancelled.
 */
export const BOOKING_STATUSES = ['booked', 'moved', 'cancelled', 'did-not-attend'] as const;

/**
 * Why an appointment was cancelled: by the patient, because of the death of the patient, by the
 * unit, for lack of an endoscope or room, because drugs were not stopped or the bowel was not
 * clean, because it is not needed, or because it never should have been booked.
 * Source: common practice, no source.
 */
export const CANCEL_REASONS = [
  'patient',
  'death',
  'unit',
  'equipment',
  'preparation',
  'not-needed',
  'booked-in-error',
  'other',
] as const;
export type CancelReason = (typeof CANCEL_REASONS)[number];
