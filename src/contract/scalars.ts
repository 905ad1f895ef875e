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

const INSTANT_TITLE = 'a date and time with seconds and offset, such as 2026-03-29T09:30:00+02:00';
export const instant = z
  .string()
  .regex(INSTANT, { abort: true })
  .refine(isCalendarDay, INSTANT_TITLE)
  .meta({ format: 'date-time', title: INSTANT_TITLE });

export const date = z.iso
  .date({ abort: true })
  .regex(/^(19|20)/)
  .meta({ format: 'date', title: 'a calendar date from 1900 to 2099, such as 2026-03-29' });

export const uri = z
  .string()
  .regex(URI)
  .meta({ title: 'an absolute URI, such as urn:oid:2.999 or https://..' });

/** An identifier of the sender's: the system that gives it and the value in that system. */
export const identifier = z.strictObject({
  system: uri,
  value: z
    .string()
    .regex(KEY)
    .meta({ title: '1 to 64 printable characters without blanks at the ends' }),
});
export type Identifier = Readonly<z.infer<typeof identifier>>;

interface From {
  readonly from: number;
  readonly to: number;
  readonly unit?: string;
}
interface Above {
  readonly above: number;
  readonly to: number;
  readonly unit?: string;
}

const inUnit = (unit: string | undefined): string => (unit === undefined ? '' : ` (${unit})`);

/** A number with both ends of its range; the unit is the one that the name of the field says. */
export const numberIn = (range: From | Above) =>
  'above' in range
    ? z
        .number()
        .gt(range.above)
        .max(range.to)
        .meta({
          title: `a number above ${range.above} and at most ${range.to}${inUnit(range.unit)}`,
        })
    : z
        .number()
        .min(range.from)
        .max(range.to)
        .meta({ title: `a number from ${range.from} to ${range.to}${inUnit(range.unit)}` });

export const wholeIn = ({ from, to, unit }: From) =>
  z
    .number()
    .int()
    .min(from)
    .max(to)
    .meta({ title: `a whole number from ${from} to ${to}${inUnit(unit)}` });

export const lengthMm = numberIn({ above: 0, to: 1000, unit: 'mm' });
export const lengthCm = numberIn({ above: 0, to: 200, unit: 'cm' });
export const percent = numberIn({ from: 0, to: 100, unit: '%' });
export const count = wholeIn({ from: 0, to: 200 });

export const oneOf = <const T extends readonly [string, ...string[]]>(words: T) => z.enum(words);

const MOST_WORDS = 20;
/** A list of words, each at most once. */
export const someOf = <const T extends readonly [string, ...string[]]>(words: T) => {
  const title = `a list of words, each at most once: ${words.join(', ')}`;
  return z
    .array(z.enum(words))
    .max(MOST_WORDS)
    .refine((list) => new Set(list).size === list.length, title)
    .meta({ uniqueItems: true, title });
};

/** A list of objects or identifiers with room for `most`. */
export const listOf = <T extends z.ZodType>(entry: T, most: number, unit = 'entries') =>
  z
    .array(entry)
    .max(most)
    .meta({ title: `a list of at most ${most} ${unit}` });
