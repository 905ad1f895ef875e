import { laterOf } from '../kernel/index.js';
import { daysFor, type PlanItem, type Window } from '../surveillance/index.js';

/** @returns the day of an appointment from a day on; one that is over holds nothing */
export const bookedFrom = ({ booking }: PlanItem, day: string): string | undefined =>
  booking?.status === 'booked' && booking.on >= day ? booking.on : undefined;

/**
 * Days from a day on on which one visit answers an examination: the day that is booked, others may
 * join it there; else its window. One that is over becomes that day itself, so that a visit of then
 * answers it as well.
 *
 * @param day YYYY-MM-DD
 */
export function daysOfVisit(item: PlanItem, day: string): Window | undefined {
  const on = bookedFrom(item, day);
  if (on !== undefined) return { earliest: on, target: on, latest: on };
  const days = daysFor(item);
  if (days === undefined) return undefined;
  return {
    earliest: laterOf(days.earliest, day),
    target: laterOf(days.target, day),
    latest: laterOf(days.latest, day),
  };
}
