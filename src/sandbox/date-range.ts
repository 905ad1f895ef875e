/** A stretch of time: from `lowMs` to just before `highMs`, milliseconds since 1970 in UTC. */
export interface DateRange {
  readonly lowMs: number;
  readonly highMs: number;
}

/** Stand for the ends of a period without start or end; every date lies between them. */
export const FOREVER: DateRange = { lowMs: -9e15, highMs: 9e15 };

const PARTS =
  /^(\d{4})(?:-(\d\d)(?:-(\d\d)(?:T(\d\d):(\d\d)(?::(\d\d)(?:\.(\d+))?)?(Z|[+-]\d\d:\d\d)?)?)?)?$/;

/**
 * The stretch of time that a date of any precision stands for.
 *
 * Source: HL7 FHIR R4, Search, section "date": a year, month or day is the whole of it. Without
 * an offset UTC is taken, as the time zone of this server.
 *
 * @param text year, month, day, minute, second or finer; as a resource or a search has it
 * @returns undefined when the text is no date that exists
 */
export function dateRange(text: string): DateRange | undefined {
  const match = PARTS.exec(text);
  if (match === null) return undefined;
  const [, year, month, day, hour, minute, second, fraction, offset] = match;
  const at = (part: string | undefined, otherwise: number) =>
    part === undefined ? otherwise : Number(part);

  const local = Date.UTC(at(year, 0), at(month, 1) - 1, at(day, 1), at(hour, 0), at(minute, 0));
  const exists =
    Number(year) >= 100 &&
    new Date(local).getUTCMonth() === at(month, 1) - 1 &&
    new Date(local).getUTCDate() === at(day, 1) &&
    at(hour, 0) < 24 &&
    at(minute, 0) < 60 &&
    at(second, 0) < 61;
  if (!exists) return undefined;

  const milliseconds = Number((fraction ?? '').padEnd(3, '0').slice(0, 3));
  const lowMs = local + at(second, 0) * 1_000 + milliseconds - offsetMs(offset);
  return { lowMs, highMs: lowMs + widthMs(lowMs, match) };
}

function offsetMs(offset: string | undefined): number {
  if (offset === undefined || offset === 'Z') return 0;
  const minutes = Number(offset.slice(1, 3)) * 60 + Number(offset.slice(4));
  return (offset.startsWith('-') ? -minutes : minutes) * 60_000;
}

function widthMs(lowMs: number, [, , month, day, hour, , second, fraction]: RegExpExecArray) {
  const low = new Date(lowMs);
  if (month === undefined) return Date.UTC(low.getUTCFullYear() + 1, 0) - lowMs;
  if (day === undefined) return Date.UTC(low.getUTCFullYear(), low.getUTCMonth() + 1) - lowMs;
  if (hour === undefined) return 86_400_000;
  if (second === undefined) return 60_000;
  if (fraction === undefined) return 1_000;
  return 10 ** Math.max(0, 3 - fraction.length);
}
