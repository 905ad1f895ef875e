import { minutesBetween } from '../../kernel/index.js';

const MINUTES_PER_DAY = 24 * 60;
const DATE_LENGTH = 10;

/**
 * Days by the calendar from one instant to another, both as the clock beside the first one shows
 * them: Monday evening to Wednesday morning is two days.
 *
 * Source: arithmetic.
 *
 * @param from ISO 8601 date and time with offset
 * @param to ISO 8601 date and time with offset
 * @returns whole days, negative when `to` lies on an earlier day
 */
export function calendarDays(from: string, to: string): number {
  const offset = from.replace(/^.*?(Z|[+-]\d\d:\d\d)$/, '$1');
  const midnight = `${from.slice(0, DATE_LENGTH)}T00:00:00${offset}`;
  return Math.floor(minutesBetween(midnight, to) / MINUTES_PER_DAY);
}

/**
 * Source: arithmetic.
 *
 * @returns whole days from the day of an instant, as written, to a calendar date
 */
export function daysUntilDate(from: string, date: string): number {
  const day = from.slice(0, DATE_LENGTH);
  return minutesBetween(`${day}T00:00:00Z`, `${date}T00:00:00Z`) / MINUTES_PER_DAY;
}

/**
 * Source: arithmetic.
 *
 * @returns completed years at a calendar date, by month and day
 */
export function completedYears(bornOn: string, date: string): number {
  const years = Number(date.slice(0, 4)) - Number(bornOn.slice(0, 4));
  return date.slice(4) < bornOn.slice(4) ? years - 1 : years;
}

/** @returns minutes between two instants, or undefined where one was not told */
export const minutesIfTold = (
  from: string | undefined,
  to: string | undefined,
): number | undefined =>
  from === undefined || to === undefined ? undefined : minutesBetween(from, to);
