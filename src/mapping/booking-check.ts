import type { PlanItem } from '../surveillance/index.js';

export const BOOKING_CHECK: string = 'booking-check';

/** Whether an item asks to look at a booking; it is about the item that was booked. */
export const isBookingCheck = ({ task }: Pick<PlanItem, 'task'>): boolean => task === BOOKING_CHECK;

/** Key of the item that a check is about: its own key without the word before it. */
export const checkedKey = ({ key }: Pick<PlanItem, 'key'>): string =>
  key.slice(BOOKING_CHECK.length + 1);
