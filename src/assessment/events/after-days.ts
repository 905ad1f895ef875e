import { addDays, daysBetween, minutesBetween } from '../../kernel/index.js';

/**
 * Calendar days from the day of an instant, in its own offset, to a day.
 *
 * @param at ISO 8601 date and time with offset
 * @param on YYYY-MM-DD
 * @returns whole days, negative when the day lies before
 */
export const daysAfter = (at: string, on: string): number => daysBetween(at.slice(0, 10), on);

/**
 * Hours from an instant to something of which perhaps only the day is known.
 *
 * Source: arithmetic of the calendar.
 *
 * @returns the first and the last possible number of hours, never below 0; the same twice where
 *   the time is known
 */
export function hoursAfter(
  at: string,
  on: string,
  occurredAt: string | undefined,
): readonly [number, number] {
  if (occurredAt !== undefined) {
    const hours = minutesBetween(at, occurredAt) / 60;
    return [hours, hours];
  }
  const first = minutesBetween(at, startOfDay(at, daysAfter(at, on))) / 60;
  return [Math.max(0, first), Math.max(0, first + 24)];
}

/**
 * The first moment of a day after an instant, in the offset of that instant.
 *
 * Source: arithmetic of the calendar.
 *
 * @param days calendar days, 0 for the day of the instant itself
 */
export function startOfDay(at: string, days: number): string {
  const offset = /(?:Z|[+-]\d{2}:\d{2})$/.exec(at)?.[0] ?? 'Z';
  return `${addDays(at.slice(0, 10), days)}T00:00:00${offset}`;
}
