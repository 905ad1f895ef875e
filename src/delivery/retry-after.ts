/** Longest wait that a server may ask for. */
export const RETRY_AFTER_CEILING_MS = 60 * 60_000;

/** A wish beyond this is taken for a mistake and not followed at all. */
const ABSURD_MS = 30 * 24 * 60 * 60_000;

const SHORTEST_MS = 1_000;

const DELTA_SECONDS = /^\d{1,10}$/;
const IMF_FIXDATE = /^[A-Z][a-z]{2}, \d{2} [A-Z][a-z]{2} \d{4} \d{2}:\d{2}:\d{2} GMT$/;
const RFC_850_DATE = /^[A-Z][a-z]{5,8}, \d{2}-[A-Z][a-z]{2}-\d{2} \d{2}:\d{2}:\d{2} GMT$/;
const ASCTIME_DATE = /^[A-Z][a-z]{2} [A-Z][a-z]{2} [ \d]\d \d{2}:\d{2}:\d{2} \d{4}$/;

/**
 * How long the server asks us to wait.
 *
 * A negative, past, unreadable or absurd wish (over 30 days) is no wish; a long one is cut to
 * the ceiling of one hour; a wish of nothing becomes one second, so that it cannot make a loop.
 *
 * Source: RFC 9110, 10.2.3 (Retry-After) and 5.6.7 (the three forms of HTTP-date).
 *
 * @param header the header as it came
 * @param now milliseconds since 1970
 * @returns milliseconds, or undefined when there is no wish to follow
 */
export function retryAfterMs(header: string | undefined, now: number): number | undefined {
  const text = header?.trim();
  if (text === undefined || text === '') return undefined;

  const wishMs = DELTA_SECONDS.test(text) ? Number(text) * 1_000 : dateMs(text) - now;
  if (Number.isNaN(wishMs) || wishMs < 0 || wishMs > ABSURD_MS) return undefined;
  return Math.min(Math.max(wishMs, SHORTEST_MS), RETRY_AFTER_CEILING_MS);
}

/** @returns milliseconds since 1970, or NaN */
function dateMs(text: string): number {
  if (IMF_FIXDATE.test(text) || RFC_850_DATE.test(text)) return Date.parse(text);
  if (ASCTIME_DATE.test(text)) return Date.parse(`${text} GMT`);
  return Number.NaN;
}
