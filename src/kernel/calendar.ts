import { Temporal } from 'temporal-polyfill';

/** @returns whether a text is a day of the calendar, YYYY-MM-DD */
export function isCalendarDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}

/**
 * Moves a date by calendar months; a day that the month does not have becomes its last one
 * (31 August and 6 months: 28 or 29 February). No time zone plays a part.
 *
 * @param date YYYY-MM-DD
 * @param months whole, may be negative
 */
export const addMonths = (date: string, months: number): string =>
  Temporal.PlainDate.from(date).add({ months }).toString();

/**
 * Moves a date by whole days; no time zone plays a part.
 *
 * @param date YYYY-MM-DD
 * @param days whole, may be negative
 */
export const addDays = (date: string, days: number): string =>
  Temporal.PlainDate.from(date).add({ days }).toString();

/** @returns whole days from one date to another; negative when `to` lies before `from` */
export const daysBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'days' }).days;

/** @returns completed years from one date to another; negative when `to` lies before `from` */
export const yearsBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'years' }).years;

/** @returns the day of the week, 1 for Monday to 7 for Sunday */
export const weekdayOf = (date: string): number => Temporal.PlainDate.from(date).dayOfWeek;
