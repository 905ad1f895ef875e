import { Temporal } from 'temporal-polyfill';

/**
 * Minutes from one instant to another, by instant: offsets and daylight saving play no part.
 *
 * @param from ISO 8601 date and time with offset
 * @param to ISO 8601 date and time with offset
 * @returns minutes, negative when `to` lies before `from`
 * @throws RangeError when either is no instant: `contract` has refused such text before
 */
export function minutesBetween(from: string, to: string): number {
  return (
    (Temporal.Instant.from(to).epochMilliseconds - Temporal.Instant.from(from).epochMilliseconds) /
    60_000
  );
}

/** @returns negative, zero or positive as `a` is before, at or after `b` */
export function compareInstants(a: string, b: string): number {
  return Temporal.Instant.compare(Temporal.Instant.from(a), Temporal.Instant.from(b));
}

/**
 * An instant in UTC, cut to whole seconds: 2026-01-02T08:30:00Z.
 *
 * @param at ISO 8601 date and time with offset
 * @throws RangeError when it is no instant
 */
export const utcToTheSecond = (at: string): string =>
  Temporal.Instant.from(at).toString({ smallestUnit: 'second', roundingMode: 'floor' });

/**
 * An instant as the clock on the wall of a place shows it: 2026-07-02T08:30:00+02:00.
 *
 * @param at ISO 8601 date and time with offset
 * @param timeZone name of the IANA time zone database
 * @throws RangeError when it is no instant or no time zone
 */
export const inTimeZone = (at: string, timeZone: string): string =>
  Temporal.Instant.from(at).toZonedDateTimeISO(timeZone).toString({ timeZoneName: 'never' });

/** @returns whether a text is the name of a time zone of the IANA database */
export function isTimeZone(text: string): boolean {
  try {
    inTimeZone('2000-01-01T00:00:00Z', text);
    return /^[A-Za-z]/.test(text);
  } catch {
    return false;
  }
}
