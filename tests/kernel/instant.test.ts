import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareInstants,
  inTimeZone,
  isTimeZone,
  minutesBetween,
  utcToTheSecond,
} from '../../src/kernel/index.js';

/**
 * Summer time in the Union begins and ends at 01:00 UTC on the last Sundays of March and October
 * (Directive 2000/84/EC, articles 2 and 3); the other rows rest on offsets that the time zone
 * database publishes (America/Sao_Paulo -03, Asia/Kathmandu +05:45, Pacific/Kiritimati +14).
 */
const PUBLISHED = [
  {
    name: 'spring 2026 in central Europe: 02:00 to 03:00 does not exist',
    from: '2026-03-29T01:30:00+01:00',
    to: '2026-03-29T03:30:00+02:00',
    minutes: 60,
  },
  {
    name: 'autumn 2026: half past two comes twice',
    from: '2026-10-25T02:30:00+02:00',
    to: '2026-10-25T02:30:00+01:00',
    minutes: 60,
  },
  {
    name: 'the same instant in Kathmandu and in Kiritimati',
    from: '2026-06-01T09:45:00+05:45',
    to: '2026-06-01T18:00:00+14:00',
    minutes: 0,
  },
  {
    name: 'across the date line into yesterday',
    from: '2026-01-01T00:10:00+14:00',
    to: '2025-12-31T07:40:00-03:00',
    minutes: 30,
  },
  {
    name: 'over the leap day',
    from: '2028-02-28T23:59:00Z',
    to: '2028-03-01T00:01:00Z',
    minutes: 1442,
  },
  {
    name: 'a half minute',
    from: '2026-06-01T09:00:00.5Z',
    to: '2026-06-01T09:00:30.500Z',
    minutes: 0.5,
  },
];

describe('minutes between two instants, against published offsets', () => {
  it.each(PUBLISHED)('$name', ({ from, to, minutes }) => {
    expect(minutesBetween(from, to)).toBe(minutes);
    expect(minutesBetween(to, from)).toBe(minutes === 0 ? 0 : -minutes);
  });

  it('is not what a clock on the wall shows: the oracle rejects reading without offset', () => {
    const wall = PUBLISHED.map(({ from, to }) =>
      minutesBetween(`${from.slice(0, 19)}Z`, `${to.slice(0, 19)}Z`),
    );
    expect(wall.slice(0, 4)).not.toEqual(PUBLISHED.slice(0, 4).map(({ minutes }) => minutes));
    expect(wall[1]).toBe(0);
  });

  it('refuses text that is no instant', () => {
    expect(() => minutesBetween('2026-06-01T09:00:00', '2026-06-01T10:00:00Z')).toThrow(RangeError);
    expect(() => compareInstants('yesterday', '2026-06-01T10:00:00Z')).toThrow(RangeError);
  });
});

const ZONES = ['Europe/Berlin', 'America/Sao_Paulo', 'Asia/Kathmandu', 'Pacific/Kiritimati'];
const WRITERS = new Map(
  ZONES.map((timeZone) => [
    timeZone,
    new Intl.DateTimeFormat('en', { timeZone, timeZoneName: 'longOffset' }),
  ]),
);

/** A second reading of the time zone database: the offset that ICU has for a zone. */
function offsetOf(zone: string, ms: number): string {
  const parts = WRITERS.get(zone)?.formatToParts(ms) ?? [];
  const name = parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
  return name === 'GMT' ? '+00:00' : name.slice(3);
}

function localText(zone: string, ms: number): string {
  const offset = offsetOf(zone, ms);
  const [hours = 0, minutes = 0] = offset.slice(1).split(':').map(Number);
  const shift = (offset.startsWith('-') ? -1 : 1) * (hours * 60 + minutes) * 60_000;
  return `${new Date(ms + shift).toISOString().slice(0, 19)}${offset}`;
}

describe('instants, against a second date library (ECMAScript Date and ICU)', () => {
  const moment = fc
    .record({
      zone: fc.constantFrom(...ZONES),
      ms: fc
        .integer({ min: Date.UTC(2000, 0, 1) / 1000, max: Date.UTC(2040, 0, 1) / 1000 })
        .map((s) => s * 1000),
    })
    .map(({ zone, ms }) => ({ ms, text: localText(zone, ms) }));

  it('are as far apart, and in the same order, whatever zone each was written in', () => {
    fc.assert(
      fc.property(moment, moment, (a, b) => {
        expect(minutesBetween(a.text, b.text)).toBe((b.ms - a.ms) / 60_000);
        expect(Math.sign(compareInstants(a.text, b.text))).toBe(Math.sign(a.ms - b.ms));
        expect(Date.parse(a.text)).toBe(a.ms);
      }),
      { seed: 29, numRuns: 500 },
    );
  });

  it('are the same in UTC, cut to the second', () => {
    fc.assert(
      fc.property(moment, fc.nat(999), ({ ms, text }, more) => {
        const inUtc = `${new Date(ms).toISOString().slice(0, 19)}Z`;
        expect(utcToTheSecond(text)).toBe(inUtc);
        expect(utcToTheSecond(new Date(ms + more).toISOString())).toBe(inUtc);
        expect(utcToTheSecond(new Date(ms - 1).toISOString())).not.toBe(inUtc);
      }),
      { seed: 31, numRuns: 300 },
    );
    expect(() => utcToTheSecond('2026-01-02T09:30:00')).toThrow(RangeError);
  });

  it('follow every change of the clocks in central Europe from 2020 to 2030', () => {
    for (let year = 2020; year <= 2030; year += 1) {
      for (const month of [2, 9]) {
        const change = Date.UTC(year, month, lastSunday(year, month), 1);
        const [before, after] = [change - 60_000, change + 60_000].map((ms) =>
          localText('Europe/Berlin', ms),
        );
        expect(before?.slice(-6)).not.toBe(after?.slice(-6));
        expect(minutesBetween(before ?? '', after ?? '')).toBe(2);
      }
    }
  });

  it('are shown as the clock at a place shows them, whatever offset they came in', () => {
    expect(inTimeZone('2026-07-02T06:30:00Z', 'Europe/Berlin')).toBe('2026-07-02T08:30:00+02:00');
    expect(inTimeZone('2026-01-02T06:30:00-03:00', 'Europe/Berlin')).toBe(
      '2026-01-02T10:30:00+01:00',
    );
    expect(inTimeZone('2026-07-01T18:30:00Z', 'Asia/Kathmandu')).toBe('2026-07-02T00:15:00+05:45');
    expect(() => inTimeZone('2026-07-02T06:30:00', 'Europe/Berlin')).toThrow(RangeError);
  });

  it.each([
    ['Europe/Berlin', true],
    ['Europe/Nowhere', false],
    ['+02:00', false],
  ])('are at a place that has a name: %s %s', (name, isOne) => {
    expect(isTimeZone(name)).toBe(isOne);
  });
});

const lastSunday = (year: number, month: number): number =>
  31 - new Date(Date.UTC(year, month, 31)).getUTCDay();
