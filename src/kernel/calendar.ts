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

/*
 * Records are full of days, and a day is computed often: days are counted in UTC, in which each
 * has as many milliseconds as any other. That no day is moved or invented is tested against
 * another calendar.
 */
const DAY_MS = 86_400_000;

/**
 * Moves a date by calendar months; a day that the month does not have becomes its last one
 * (31 August and 6 months: 28 or 29 February). No time zone plays a part.
 *
 * @param date YYYY-MM-DD
 * @param months whole, may be negative
 * @throws RangeError when it is no day of the calendar
 */
export function addMonths(date: string, months: number): string {
  const day = new Date(msOf(date));
  const [year, month] = [day.getUTCFullYear(), day.getUTCMonth() + months];
  // Day 0 is the last one of the month before.
  const lastDay = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return textOf(Date.UTC(year, month, Math.min(day.getUTCDate(), lastDay)));
}

/**
 * Moves a date by whole days; no time zone plays a part.
 *
 * @param date YYYY-MM-DD
 * @param days whole, may be negative
 * @throws RangeError when it is no day of the calendar
 */
export const addDays = (date: string, days: number): string => textOf(msOf(date) + days * DAY_MS);

/** @returns whole days from one date to another; negative when `to` lies before `from` */
export const daysBetween = (from: string, to: string): number => (msOf(to) - msOf(from)) / DAY_MS;

/** @returns completed years from one date to another; negative when `to` lies before `from` */
export const yearsBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'years' }).years;

/** @returns the day of the week, 1 for Monday to 7 for Sunday */
export const weekdayOf = (date: string): number => ((new Date(msOf(date)).getUTCDay() + 6) % 7) + 1;

function msOf(date: string): number {
  const ms = Date.UTC(
    Number(date.slice(0, 4)),
    Number(date.slice(5, 7)) - 1,
    Number(date.slice(8)),
  );
  if (textOf(ms) !== date) throw new RangeError('a day of the calendar is YYYY-MM-DD');
  return ms;
}

const textOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
