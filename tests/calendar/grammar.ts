/**
 * What in a stream breaks RFC 5545, in plain words; nothing for a sound one. Written from the
 * notation of the standard (3.1 content lines, 3.3.4, 3.3.5, 3.3.8, 3.3.11 values, 3.6 and 3.6.1
 * components), for the properties that this service writes.
 */
export function faultsOf(stream: Uint8Array): readonly string[] {
  const lines = physicalLines(stream);
  if (typeof lines === 'string') return [lines];
  const faults = lines.flatMap((line) => [
    ...(line.length <= 75 ? [] : ['a line of more than 75 octets']),
    ...(utf8(line) === undefined ? ['a line that is not UTF-8 by itself'] : []),
  ]);
  if (faults.length > 0) return faults;
  const content = unfolded(lines.map((line) => utf8(line) ?? ''));
  return content.some((line) => !CONTENT_LINE.test(line))
    ? ['a line that is no content line']
    : componentFaults(content);
}

const [CR, LF] = [13, 10];

/** The lines as octets, without their ends. */
function physicalLines(stream: Uint8Array): readonly Uint8Array[] | string {
  const lines: Uint8Array[] = [];
  let from = 0;
  for (const [at, octet] of stream.entries()) {
    if (octet === CR && stream[at + 1] !== LF) return 'a line end that is not CRLF';
    if (octet !== LF) continue;
    if (stream[at - 1] !== CR) return 'a line end that is not CRLF';
    lines.push(stream.subarray(from, at - 1));
    from = at + 1;
  }
  return from === stream.length ? lines : 'a last line without its end';
}

function utf8(octets: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(octets);
  } catch {
    return undefined;
  }
}

/** Lines that begin with white space belong to the line before. */
export function unfolded(lines: readonly string[]): readonly string[] {
  const content: string[] = [];
  for (const line of lines) {
    const before = /^[ \t]/.test(line) ? content.pop() : undefined;
    content.push(before === undefined ? line : before + line.slice(1));
  }
  return content;
}

// contentline = name *(";" param) ":" value; WSP, %x21-7E and NON-US-ASCII make a VALUE-CHAR.
const NAME = '[A-Za-z0-9-]+';
const NON_ASCII = '\\u{80}-\\u{10ffff}';
const PARAM_VALUE = `(?:"[\\t !\\x23-\\x7e${NON_ASCII}]*"|[\\t !\\x23-\\x2b\\x2d-9<-~${NON_ASCII}]*)`;
const PARAM = `;${NAME}=${PARAM_VALUE}(?:,${PARAM_VALUE})*`;
const CONTENT_LINE = new RegExp(`^(${NAME})((?:${PARAM})*):([\\t -~${NON_ASCII}]*)$`, 'u');

// TSAFE-CHAR, ":", DQUOTE or ESCAPED-CHAR.
const TEXT = new RegExp(`^(?:[\\t -+\\x2d-:<-\\x5b\\x5d-~${NON_ASCII}]|\\\\[\\\\;,Nn])*$`, 'u');
const DATE = /^\d{4}(0[1-9]|1[0-2])(0[1-9]|[12]\d|3[01])$/;
const UTC = /^\d{8}T([01]\d|2[0-3])[0-5]\d([0-5]\d|60)Z$/;
const INTEGER = /^[+-]?\d+$/;

interface Rule {
  readonly value: RegExp;
  readonly required?: boolean;
  readonly params?: string;
}
type Rules = Readonly<Record<string, Rule>>;

const CALENDAR: Rules = {
  PRODID: { value: TEXT, required: true },
  VERSION: { value: /^2\.0$/, required: true },
};

/** Of an event in an object without METHOD, where DTSTART is required. */
const EVENT: Rules = {
  UID: { value: TEXT, required: true },
  DTSTAMP: { value: UTC, required: true },
  DTSTART: { value: DATE, required: true, params: ';VALUE=DATE' },
  DTEND: { value: DATE, params: ';VALUE=DATE' },
  'LAST-MODIFIED': { value: UTC },
  SEQUENCE: { value: INTEGER },
  STATUS: { value: /^(TENTATIVE|CONFIRMED|CANCELLED)$/ },
  CLASS: { value: /^(PUBLIC|PRIVATE|CONFIDENTIAL)$/ },
  TRANSP: { value: /^(OPAQUE|TRANSPARENT)$/ },
  SUMMARY: { value: TEXT },
};

const ZONE: Rules = { TZID: { value: TEXT, required: true } };
const STANDARD: Rules = {
  DTSTART: { value: /^\d{8}T\d{6}$/, required: true },
  TZOFFSETFROM: { value: /^[+-]\d{4}$/, required: true },
  TZOFFSETTO: { value: /^[+-]\d{4}$/, required: true },
};

const RULES: Readonly<Record<string, Rules>> = {
  VCALENDAR: CALENDAR,
  VEVENT: EVENT,
  VTIMEZONE: ZONE,
  STANDARD,
};
const INSIDE: Readonly<Record<string, readonly string[]>> = {
  VCALENDAR: ['VEVENT', 'VTIMEZONE'],
  VTIMEZONE: ['STANDARD'],
};

/** A component, from the line after its BEGIN. */
function componentFaults(content: readonly string[]): readonly string[] {
  const faults: string[] = [];
  let at = 0;
  const uids: string[] = [];
  const component = (name: string): void => {
    const seen: string[] = [];
    let parts = 0;
    for (;;) {
      const [, property = '', params = '', value = ''] = CONTENT_LINE.exec(content[at] ?? '') ?? [];
      at += 1;
      if (property === 'END') {
        if (value !== name) faults.push('a component that does not end');
        break;
      }
      if (property === '') {
        faults.push('a component that does not end');
        break;
      }
      if (property === 'BEGIN') {
        if (!(INSIDE[name] ?? []).includes(value)) faults.push(`${value} inside ${name}`);
        parts += 1;
        component(value);
        continue;
      }
      const rule = RULES[name]?.[property];
      if (rule === undefined) faults.push(`${property} in ${name}`);
      else if (!rule.value.test(value)) faults.push(`${property} has no such value`);
      if (rule !== undefined && params !== (rule.params ?? ''))
        faults.push(`${property} parameters`);
      if (seen.includes(property)) faults.push(`${property} more than once`);
      seen.push(property);
      if (property === 'UID') uids.push(value);
    }
    for (const [property, { required }] of Object.entries(RULES[name] ?? {})) {
      if (required && !seen.includes(property)) faults.push(`${name} without ${property}`);
    }
    if (name === 'VCALENDAR' && parts === 0) faults.push('a calendar without a component');
  };
  if (content[at] !== 'BEGIN:VCALENDAR') return ['a stream that begins with no calendar'];
  at += 1;
  component('VCALENDAR');
  if (at !== content.length) faults.push('lines after the calendar');
  if (new Set(uids).size !== uids.length) faults.push('a UID more than once');
  return faults;
}
