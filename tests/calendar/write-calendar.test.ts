import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalendarEvent, writeCalendar } from '../../src/calendar/index.js';
import { InvariantError } from '../../src/kernel/index.js';
import { faultsOf, unfolded } from './grammar.js';
import { type ReadEvent, readByIcalJs, readByNodeIcal } from './readers.js';

const HOST = 'records.unit-one.example';

const EVENT: CalendarEvent = {
  id: '7d1f6f0e-2c7b-8a54-9f01-4a1d6f4b2c11',
  caseId: '0c6a2f',
  sequence: 0,
  status: 'tentative',
  firstOn: '2026-03-30',
  lastOn: '2026-06-30',
  changedAt: '2026-01-02T09:30:00+01:00',
};

const octets = (stream: string): Uint8Array => new TextEncoder().encode(stream);
const write = (...changes: readonly Partial<CalendarEvent>[]): string =>
  writeCalendar(
    changes.map((change, i) => ({ ...EVENT, id: `${EVENT.id}-${i}`, ...change })),
    HOST,
  );

/** What a reader is to understand, from the definition of the properties in RFC 5545. */
const understood = (event: CalendarEvent): ReadEvent => ({
  uid: `${event.id}@${HOST}`,
  summary: `Check endoscopy, case ${event.caseId}`,
  sequence: event.sequence,
  status: event.status.toUpperCase(),
  class: 'CONFIDENTIAL',
  start: event.firstOn,
  end: new Date(Date.parse(event.lastOn) + 86_400_000).toISOString().slice(0, 10),
  stampedAt: new Date(event.changedAt).toISOString().replace('.000Z', 'Z'),
  changedAt: new Date(event.changedAt).toISOString().replace('.000Z', 'Z'),
});

describe('a calendar of follow-ups', () => {
  it('is these lines for one open window', () => {
    expect(writeCalendar([EVENT], HOST).split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'PRODID:-//dissection-records//follow-ups//EN',
      'VERSION:2.0',
      'BEGIN:VEVENT',
      'UID:7d1f6f0e-2c7b-8a54-9f01-4a1d6f4b2c11@records.unit-one.example',
      'DTSTAMP:20260102T083000Z',
      'LAST-MODIFIED:20260102T083000Z',
      'SEQUENCE:0',
      'STATUS:TENTATIVE',
      'CLASS:CONFIDENTIAL',
      'TRANSP:TRANSPARENT',
      'DTSTART;VALUE=DATE:20260330',
      'DTEND;VALUE=DATE:20260701',
      'SUMMARY:Check endoscopy\\, case 0c6a2f',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  it('is a sound stream without an event, too, and shows nothing', () => {
    const stream = writeCalendar([], HOST);
    expect(faultsOf(octets(stream))).toEqual([]);
    expect(readByIcalJs(stream)).toEqual([]);
    expect(readByNodeIcal(stream)).toEqual([]);
  });

  // RFC 5546, 3.2.1: PUBLISH asks for ORGANIZER and forbids ATTENDEE (from memory).
  it('is no message: it has no METHOD and nobody to reply to', () => {
    expect(write({}, { status: 'cancelled' })).not.toMatch(/METHOD|ORGANIZER|ATTENDEE/);
  });

  it('is the same octets for the same events', () => {
    expect(write({}, { sequence: 3 })).toBe(write({}, { sequence: 3 }));
  });

  it('keeps a cancelled event', () => {
    const stream = write({ status: 'cancelled', sequence: 2 });
    expect(readByIcalJs(stream)).toMatchObject([{ status: 'CANCELLED', sequence: 2 }]);
    expect(readByNodeIcal(stream)).toMatchObject([{ status: 'CANCELLED', sequence: 2 }]);
  });
});

const day = fc
  .integer({ min: Date.UTC(2000, 0, 1) / 86_400_000, max: Date.UTC(2099, 11, 30) / 86_400_000 })
  .map((n) => new Date(n * 86_400_000).toISOString().slice(0, 10));
const events = (text: fc.Arbitrary<string>): fc.Arbitrary<readonly CalendarEvent[]> =>
  fc
    .array(
      fc.record({
        caseId: text,
        sequence: fc.nat(),
        status: fc.constantFrom('tentative', 'confirmed', 'cancelled'),
        days: fc.tuple(day, day).map((days) => days.sort()),
        changedAt: fc
          .integer({ min: 1_000_000_000, max: 4_000_000_000 })
          .map((s) => new Date(s * 1000).toISOString()),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map((list) =>
      list.map(({ days: [firstOn = '', lastOn = ''], ...each }, i) => ({
        ...each,
        firstOn,
        lastOn,
        id: `${EVENT.id}-${i}`,
      })),
    );

/** Text of every kind that a summary can hold: special characters, wide ones, line ends. */
const sayable = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        '\\',
        ';',
        ',',
        ':',
        '"',
        '\n',
        'n',
        'N',
        ' ',
        '\t',
        '\\n',
        '\\,',
        '\ud83e\ude7a',
        'ö',
      ),
      fc
        .string({ unit: 'binary', maxLength: 30 })
        .map((s) => s.replace(/[\p{Cc}\u2028\u2029]/gu, '')),
    ),
    { maxLength: 20 },
  )
  .map((parts) => `${parts.join('')}.`);

/**
 * `node-ical` 0.26 takes the second half of an escaped backslash and an n after it for a line
 * end: it undoes one escape after the other. RFC 5545, 3.3.11: `\\` encodes a backslash.
 */
const BACKSLASH_AND_N = /\\[nN]/;
const NONE = understood(EVENT);

describe('two readers of others and the grammar of the standard', () => {
  it('understand what was meant, with any text', () => {
    fc.assert(
      fc.property(events(sayable), (list) => {
        const stream = writeCalendar(list, HOST);
        const meant = list.map(understood);
        expect(faultsOf(octets(stream))).toEqual([]);
        expect(readByIcalJs(stream)).toEqual(meant);
        const plain = ({ summary }: ReadEvent) => !BACKSLASH_AND_N.test(summary);
        expect(readByNodeIcal(stream).filter((_event, i) => plain(meant[i] ?? NONE))).toEqual(
          meant.filter(plain),
        );
      }),
      { seed: 201, numRuns: 500 },
    );
  });

  it('agree that a backslash and an n are no line end, but for one of them', () => {
    const [first, second] = [readByIcalJs, readByNodeIcal].map((read) =>
      read(write({ caseId: '\\n' })),
    );
    expect(first?.[0]?.summary).toBe('Check endoscopy, case \\n');
    expect(second?.[0]?.summary).toBe('Check endoscopy, case \\\n');
  });

  it('find a sound stream whatever is put into it, half characters and controls as well', () => {
    const anything = fc
      .array(fc.nat(0x10ffff))
      .map((units) =>
        units
          .map((unit) => (unit < 0x10000 ? String.fromCharCode(unit) : String.fromCodePoint(unit)))
          .join(''),
      );
    const odd = fc.array(
      fc.constantFrom('\0', '\r', '\v', '\x7f', '\ud800', '\udc00', '\r\n', '\u0085', '\u2028'),
    );
    const text = fc.oneof(
      anything,
      odd.map((list) => list.join('')),
    );
    fc.assert(
      fc.property(events(text), (list) => {
        const stream = writeCalendar(list, HOST);
        expect(faultsOf(octets(stream))).toEqual([]);
        expect(readByIcalJs(stream)).toHaveLength(list.length);
        expect(readByNodeIcal(stream)).toHaveLength(list.length);
      }),
      { seed: 202, numRuns: 500 },
    );
  });

  // RFC 5545, 3.3.11: a TEXT holds no control but the tab; RFC 3629, 3: UTF-8 has no half pairs.
  it('read the replacement character for what the standard cannot say', () => {
    const stream = write({ caseId: 'a\0b\x1fc\x7fd\ud800e\tf' });
    expect(stream.isWellFormed()).toBe(true);
    for (const read of [readByIcalJs, readByNodeIcal]) {
      expect(read(stream)[0]?.summary).toBe(
        'Check endoscopy, case a\ufffdb\ufffdc\ufffdd\ufffde\tf',
      );
    }
  });

  it('read a line end for each kind of line end', () => {
    const stream = write({ caseId: 'a\r\nb\nc\rd\ve\ff\u0085g\u2028h\u2029i' });
    for (const read of [readByIcalJs, readByNodeIcal]) {
      expect(read(stream)[0]?.summary).toBe(`Check endoscopy, case ${[...'abcdefghi'].join('\n')}`);
    }
  });

  it.each<[string, string, (stream: string) => string]>([
    ['an end that is not exclusive', 'end', (s) => s.replace('20260701', '20260630')],
    ['a text that is not escaped', 'summary', (s) => s.replace('case 0c', 'case 0\\n')],
    [
      'a time that is not UTC',
      'stampedAt',
      (s) => s.replace('P:20260102T083000Z', 'P:20260102T093000Z'),
    ],
    ['a sequence that did not rise', 'sequence', (s) => s.replace('SEQUENCE:1', 'SEQUENCE:0')],
  ])('would show %s', (_name, field, broken) => {
    const event = { ...EVENT, sequence: 1 };
    const stream = broken(writeCalendar([event], HOST));
    expect(stream).not.toBe(writeCalendar([event], HOST));
    for (const read of [readByIcalJs, readByNodeIcal]) {
      const differs = Object.entries(read(stream)[0] ?? {}).flatMap(([name, value]) =>
        value === Object.entries(understood(event)).find(([n]) => n === name)?.[1] ? [] : [name],
      );
      expect(differs).toEqual([field]);
    }
  });

  const sound = write({});
  it.each<[string, string | Uint8Array]>([
    ['a line end that is not CRLF', sound.replaceAll('\r\n', '\n')],
    ['a line end that is not CRLF', sound.replace('VERSION', 'X\rVERSION')],
    ['a last line without its end', sound.trimEnd()],
    ['a line of more than 75 octets', sound.replace('0c6a2f', 'x'.repeat(60))],
    ['a line of more than 75 octets', sound.replace('0c6a2f', 'ö'.repeat(26))],
    ['a line that is not UTF-8 by itself', cutCharacter()],
    ['a line that is no content line', sound.replace('SEQUENCE:0', 'SEQUENCE')],
    ['a line that is no content line', sound.replace('0c6a2f', '\x07')],
    ['a component that does not end', sound.replace('END:VEVENT\r\n', '')],
    ['VEVENT inside VEVENT', sound.replace('UID', 'BEGIN:VEVENT\r\nUID')],
    ['SUMMARY has no such value', sound.replace('\\,', ',')],
    ['SUMMARY has no such value', sound.replace('\\,', '\\x')],
    ['DTSTAMP has no such value', sound.replace('083000Z', '083000')],
    ['DTSTART has no such value', sound.replace('20260330', '20261330')],
    ['DTSTART parameters', sound.replace('DTSTART;VALUE=DATE', 'DTSTART')],
    ['STATUS has no such value', sound.replace('TENTATIVE', 'PROPOSED')],
    ['UID more than once', sound.replace('DTSTAMP', 'UID:b\r\nDTSTAMP')],
    ['a UID more than once', sound.replace('END:VCALENDAR', `${eventOf(sound)}END:VCALENDAR`)],
    ['VEVENT without UID', sound.replace(/UID.*\r\n/, '')],
    ['VCALENDAR without PRODID', sound.replace(/PRODID.*\r\n/, '')],
    ['METHOD in VCALENDAR', sound.replace('VERSION', 'METHOD:PUBLISH\r\nVERSION')],
    ['a calendar without a component', sound.replace(eventOf(sound), '')],
    ['a stream that begins with no calendar', eventOf(sound)],
    ['lines after the calendar', `${sound}X-A:b\r\n`],
  ])('name: %s', (fault, broken) => {
    expect(faultsOf(typeof broken === 'string' ? octets(broken) : broken)).toContain(fault);
  });

  function cutCharacter(): Uint8Array {
    const [before = '', after = ''] = sound.split('0c6a2f');
    const [first = 0, second = 0] = octets('ö');
    return Uint8Array.from([
      ...octets(before),
      first,
      ...octets('\r\n '),
      second,
      ...octets(after),
    ]);
  }
});

function eventOf(stream: string): string {
  return /BEGIN:VEVENT[\s\S]*END:VEVENT\r\n/.exec(stream)?.[0] ?? '';
}

// RFC 5545, 3.1: at most 75 octets, the line break not counted, and a fold is CRLF and one space.
describe('folding at the border', () => {
  const START = 'SUMMARY:Check endoscopy\\, case ';
  const summaryLines = (caseId: string): readonly string[] => {
    const lines = write({ caseId }).split('\r\n');
    const from = lines.findIndex((line) => line.startsWith('SUMMARY'));
    return lines.slice(from, lines.indexOf('END:VEVENT'));
  };
  const length = (line: string): number => octets(line).length;
  const room = 75 - START.length;

  it('leaves a line of 75 octets whole and folds one of 76', () => {
    expect(summaryLines('x'.repeat(room)).map(length)).toEqual([75]);
    expect(summaryLines('x'.repeat(room + 1)).map(length)).toEqual([75, 2]);
    expect(summaryLines('x'.repeat(room + 74)).map(length)).toEqual([75, 75]);
    expect(summaryLines('x'.repeat(room + 75)).map(length)).toEqual([75, 75, 2]);
  });

  // The borders of one to four octets: RFC 3629, section 3.
  it.each([
    ['\u0080', 2],
    ['ö', 2],
    ['\u07ff', 2],
    ['\u0800', 3],
    ['€', 3],
    ['\ufffd', 3],
    ['\u{10000}', 4],
    ['\u{1fa7a}', 4],
    ['\u{10ffff}', 4],
  ])('moves %s on whole when its %i octets would pass the border', (wide, size) => {
    for (let short = 0; short <= size; short += 1) {
      const lines = summaryLines(`${'x'.repeat(room - short)}${wide}`);
      const fits = short >= size;
      expect(lines.map(length)).toEqual(fits ? [75 - short + size] : [75 - short, 1 + size]);
      expect(unfolded(lines)).toEqual([`${START}${'x'.repeat(room - short)}${wide}`]);
    }
  });

  it('may fall inside an escape, and the readers put it together', () => {
    const caseId = `${'x'.repeat(room - 1)};y`;
    expect(summaryLines(caseId)[0]?.endsWith('\\')).toBe(true);
    for (const read of [readByIcalJs, readByNodeIcal]) {
      expect(read(write({ caseId }))[0]?.summary).toBe(`Check endoscopy, case ${caseId}`);
    }
  });
});

describe('what is no event is refused', () => {
  it.each<[string, readonly Partial<CalendarEvent>[]]>([
    ['each event of a feed has its own id', [{ id: 'a' }, { id: 'a' }]],
    ['an event has a first and a last day', [{ firstOn: '2026-02-30' }]],
    ['an event does not end before it begins', [{ firstOn: '2026-07-01' }]],
    ['a sequence is an INTEGER, 0 or more', [{ sequence: -1 }]],
    ['a sequence is an INTEGER, 0 or more', [{ sequence: 1.5 }]],
    ['a sequence is an INTEGER, 0 or more', [{ sequence: 2 ** 31 }]],
  ])('%s', (message, changes) => {
    expect(() => write(...changes)).toThrow(new InvariantError(message));
  });

  it('an instant without an offset', () => {
    expect(() => write({ changedAt: '2026-01-02T09:30:00' })).toThrow(RangeError);
  });
});
