import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSessions, type Session } from '../../src/capacity/index.js';
import { dayNumber, ROUTES } from './instances.js';

const rulesOf = (text: string): readonly string[] => {
  const read = readSessions(text);
  return read.ok ? [] : read.problems.map(({ rule, pointer }) => `${rule} ${pointer}`);
};

const anySessions: fc.Arbitrary<readonly Session[]> = fc.array(
  fc.record({
    on: fc.nat(900).map(dayNumber),
    route: fc.constantFrom(...ROUTES),
    places: fc.nat(999),
  }),
  { minLength: 1, maxLength: 20 },
);

const toCsv = (sessions: readonly Session[], end: string, quote: string): string =>
  [['date', 'route', 'places'], ...sessions.map((one) => [one.on, one.route, one.places])]
    .map((row) => row.map((cell) => `${quote}${cell}${quote}`).join(',') + end)
    .join('');

describe('sessions in CSV, against RFC 4180 section 2', () => {
  it.each([
    ['line feeds', '\n', ''],
    ['CRLF', '\r\n', ''],
    ['quoted fields', '\r\n', '"'],
  ])('are read as another reader of CSV reads them: %s', (_, end, quote) => {
    fc.assert(
      fc.property(anySessions, (sessions) => {
        const text = toCsv(sessions, end, quote);
        const rows: readonly Record<string, string>[] = parse(text, { columns: true });
        const expected = rows.map(({ date, route, places }) => ({
          ...{ on: date, route, places: Number(places) },
        }));
        expect(readSessions(text)).toEqual({ ok: true, value: expected });
        expect(expected).toEqual(sessions);
      }),
    );
  });

  it('need not end with an empty line, and may begin with a byte order mark', () => {
    const value = [{ on: '2026-09-04', route: 'upper', places: 4 }];
    expect(readSessions('date,route,places\n2026-09-04,upper,4')).toEqual({ ok: true, value });
    expect(readSessions('\ufeffdate,route,places\r\n2026-09-04,upper,4\r\n')).toEqual({
      ...{ ok: true, value },
    });
    expect(readSessions('date,route,places\n')).toEqual({ ok: true, value: [] });
  });

  it('are refused with everything that is wrong, each by its line', () => {
    const text = [
      ...[
        'date,route,places',
        '2026-02-29,middle,-1',
        '2026-09-04,upper,4',
        '',
        '2026-09-04,upper',
      ],
      '2026-09-04,lower,4,5',
      '04.09.2026,Upper,1.5',
      '2026-09-04,both,1000',
    ].join('\n');
    expect(rulesOf(text)).toEqual([
      ...['session-date /0/date', 'session-route /0/route', 'session-places /0/places'],
      ...['session-fields /2', 'session-fields /3', 'session-fields /4'],
      ...['session-date /5/date', 'session-route /5/route', 'session-places /5/places'],
      'session-places /6/places',
    ]);
    const read = readSessions(text);
    const messages = read.ok ? [] : read.problems.map(({ message }) => message);
    expect(messages[0]).toBe('Line 2: This is no calendar date.');
    expect(messages.at(-1)).toBe('Line 8: This is no number of places.');
    expect(JSON.stringify(read)).not.toContain('middle');
  });

  it.each(['', 'date;route;places\n2026-09-04;upper;4', '2026-09-04,upper,4', 'route,date,places'])(
    'are refused without their header: %j',
    (text) => {
      expect(rulesOf(text)).toEqual(['sessions-header ']);
    },
  );
});

describe('sessions in JSON', () => {
  it('are the same as in CSV', () => {
    fc.assert(
      fc.property(anySessions, (sessions) => {
        const list = sessions.map(({ on, route, places }) => ({ places, date: on, route }));
        expect(readSessions(JSON.stringify(list, undefined, 1))).toEqual({
          ...{ ok: true, value: sessions },
        });
      }),
    );
  });

  it('are refused with everything that is wrong', () => {
    const sound = { date: '2026-09-04', route: 'upper', places: 4 };
    const text = JSON.stringify([
      ...[sound, { ...sound, places: '4' }, { ...sound, room: 2 }, ['2026-09-04', 'upper', 4]],
      { ...sound, date: 20260904, route: null },
    ]);
    expect(rulesOf(text)).toEqual([
      ...['session-places /1/places', 'session-fields /2', 'session-fields /3'],
      ...['session-date /4/date', 'session-route /4/route'],
    ]);
  });

  it.each(['{"date":"2026-09-04","route":"upper","places":4}', '[{', '{'])(
    'are refused when they are no list: %s',
    (text) => {
      expect(rulesOf(text)).toEqual(['sessions-list ']);
    },
  );
});

describe('the sessions of the examples', () => {
  const files = readdirSync('examples/sessions');
  it.each(files)('%s can be read', (file) => {
    const read = readSessions(readFileSync(`examples/sessions/${file}`, 'utf8'));
    expect(read.ok && read.value.length > 0).toBe(true);
  });
});
