import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { dateRange } from '../../src/sandbox/date-range.js';

const ms = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;

describe('the range of a date, against HL7 FHIR R4 Search, section "date"', () => {
  it.each([
    ['2013-01-10', '2013-01-10T00:00:00Z', '2013-01-11T00:00:00Z'],
    ['2000', '2000-01-01T00:00:00Z', '2001-01-01T00:00:00Z'],
    ['2000-04', '2000-04-01T00:00:00Z', '2000-05-01T00:00:00Z'],
    ['2015-08-12', '2015-08-12T00:00:00Z', '2015-08-13T00:00:00Z'],
  ])('%s lasts from %s to %s, as the page says', (text, low, high) => {
    expect(dateRange(text)).toEqual({ lowMs: ms(low), highMs: ms(high) });
  });
});

describe('the range of a date, against the calendar of Temporal', () => {
  it.each([
    ['2024-02', '2024-02-01T00:00:00Z', '2024-03-01T00:00:00Z'],
    ['2024-12', '2024-12-01T00:00:00Z', '2025-01-01T00:00:00Z'],
    ['2024-02-29', '2024-02-29T00:00:00Z', '2024-03-01T00:00:00Z'],
    ['2026-01-02T03:04', '2026-01-02T03:04:00Z', '2026-01-02T03:05:00Z'],
    ['2026-01-02T03:04+05:45', '2026-01-02T03:04:00+05:45', '2026-01-02T03:05:00+05:45'],
    ['2026-01-02T03:04:05-03:00', '2026-01-02T03:04:05-03:00', '2026-01-02T03:04:06-03:00'],
    ['2026-01-02T03:04:05.1Z', '2026-01-02T03:04:05.1Z', '2026-01-02T03:04:05.2Z'],
    ['2026-01-02T03:04:05.123Z', '2026-01-02T03:04:05.123Z', '2026-01-02T03:04:05.124Z'],
    ['2026-01-02T03:04:05.123456Z', '2026-01-02T03:04:05.123Z', '2026-01-02T03:04:05.124Z'],
  ])('%s lasts from %s to %s', (text, low, high) => {
    expect(dateRange(text)).toEqual({ lowMs: ms(low), highMs: ms(high) });
  });

  it.each([
    '2026-02-30',
    '2025-02-29',
    '2026-13',
    '2026-00-10',
    '2026-01-02T24:00',
    '2026-01-02T10:60',
    '2026-01-02T10',
    '26-01-02',
    'today',
    '',
  ])('%j is no date', (text) => {
    expect(dateRange(text)).toBeUndefined();
  });
});
