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
