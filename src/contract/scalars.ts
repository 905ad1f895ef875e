import { z } from 'zod';

/** FHIR R4 instant: seconds and offset are required; hours of offset end at 14. */
const INSTANT =
  /^(19|20)\d\d-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,6})?(Z|[+-](0\d|1[0-3]):[0-5]\d|[+-]14:00)$/;

/** An absolute URI in the character set of RFC 3986. */
const URI = /^[a-z][a-z0-9+.-]{1,20}:[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=%]{1,180}$/;

/** Printable text without leading or trailing blanks. */
const KEY =
  /^[\p{L}\p{M}\p{N}\p{P}\p{S}]([\p{L}\p{M}\p{N}\p{P}\p{S} ]{0,62}[\p{L}\p{M}\p{N}\p{P}\p{S}])?$/u;

/** The first and last day of a month exist in every year; others are looked up. */
function isCalendarDay(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.slice(0, 10).split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day;
}

export const instant = z
  .string()
  .regex(INSTANT, 'a date and time with seconds and offset, such as 2026-03-29T09:30:00+02:00')
  .refine(isCalendarDay, 'a day that the calendar has')
  .meta({ format: 'date-time' });

export const date = z.iso.date('a calendar date, such as 2026-03-29');

export const uri = z.string().regex(URI, 'an absolute URI such as urn:oid:2.999 or https://..');

/** An identifier of the sender's: the system that gives it and the value in that system. */
export const identifier = z.strictObject({
  system: uri,
  value: z.string().regex(KEY, '1 to 64 printable characters without blanks at the ends'),
});
export type Identifier = Readonly<z.infer<typeof identifier>>;

export const lengthMm = z.number().gt(0).max(1000);
export const lengthCm = z.number().gt(0).max(200);
export const percent = z.number().min(0).max(100);
export const count = z.number().int().min(0).max(200);

export const oneOf = <const T extends readonly [string, ...string[]]>(words: T) => z.enum(words);
/** A list of words, each at most once. */
export const someOf = <const T extends readonly [string, ...string[]]>(words: T) =>
  z
    .array(z.enum(words))
    .max(20)
    .refine((list) => new Set(list).size === list.length, 'each word at most once')
    .meta({ uniqueItems: true });
