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
