import { describe, expect, it } from 'vitest';
import { RETRY_AFTER_CEILING_MS, retryAfterMs } from '../../src/delivery/retry-after.js';

/** The instant of all examples in RFC 9110, 5.6.7: Sun, 06 Nov 1994 08:49:37 GMT. */
const EXAMPLE = Date.UTC(1994, 10, 6, 8, 49, 37);

describe('Retry-After, against RFC 9110, 10.2.3 and 5.6.7', () => {
  it('reads delay-seconds, with the example of the RFC', () => {
    expect(retryAfterMs('120', EXAMPLE)).toBe(120_000);
  });

  it.each([
    ['IMF-fixdate', 'Sun, 06 Nov 1994 08:49:37 GMT'],
    ['the obsolete form of RFC 850', 'Sunday, 06-Nov-94 08:49:37 GMT'],
    ['the obsolete form of asctime', 'Sun Nov  6 08:49:37 1994'],
  ])('reads %s, in every time zone', (_form, text) => {
    expect(retryAfterMs(text, EXAMPLE - 90_000)).toBe(90_000);
    expect(retryAfterMs(text, EXAMPLE - 91_000)).not.toBe(90_000);
  });

  it.each([
    ['missing', undefined],
    ['empty', ''],
    ['negative', '-5'],
    ['a fraction', '1.5'],
    ['hexadecimal', '0x10'],
    ['a word', 'soon'],
    ['a date without a day', '1994-11-06T08:49:37Z'],
    ['a date in the past', 'Sun, 06 Nov 1994 08:49:36 GMT'],
    ['absurdly long', '99999999999999999999'],
    ['longer than 30 days', String(31 * 24 * 3600)],
  ])('follows no wish that is %s', (_what, text) => {
    expect(retryAfterMs(text, EXAMPLE)).toBeUndefined();
  });

  it('cuts a long wish to the ceiling, and makes one second of none', () => {
    expect(retryAfterMs('7200', EXAMPLE)).toBe(RETRY_AFTER_CEILING_MS);
    expect(retryAfterMs('0', EXAMPLE)).toBe(1_000);
  });
});
