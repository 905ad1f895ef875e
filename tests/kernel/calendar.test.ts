import {
  addDays as addDaysThere,
  addMonths as addMonthsThere,
  differenceInCalendarDays,
  differenceInYears,
  format,
  getISODay,
} from 'date-fns';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  daysBetween,
  weekdayOf,
  yearsBetween,
} from '../../src/kernel/index.js';

// Oracle: date-fns, another implementation of the calendar; noon is there in every time zone.
const at = (days: number) => new Date(2030, 0, 1 + days, 12);
const textOf = (date: Date) => format(date, 'yyyy-MM-dd');
/** From 2030 to 2084, with what lies 150 months before: days that no time zone has skipped. */
const LAST = 20_000;
const offset = fc.integer({ min: 0, max: LAST });
const RUNS = { numRuns: 500 };

describe('the calendar, against date-fns', () => {
  it('adds months to every day of five years, ends of months and leap days included', () => {
    for (let days = 365 * 3; days < 365 * 8; days += 1) {
      for (const months of [1, 3, 6, 12, 36, 60]) {
        expect(addMonths(textOf(at(days)), months)).toBe(textOf(addMonthsThere(at(days), months)));
      }
    }
  });

  it('adds months and days, forwards and backwards', () => {
    fc.assert(
      fc.property(offset, fc.integer({ min: -150, max: 150 }), (days, n) => {
        expect(addMonths(textOf(at(days)), n)).toBe(textOf(addMonthsThere(at(days), n)));
        expect(addDays(textOf(at(days)), n)).toBe(textOf(addDaysThere(at(days), n)));
      }),
      RUNS,
    );
  });

  it('counts days, completed years and weekdays', () => {
    fc.assert(
      fc.property(offset, offset, (a, b) => {
        const [from, to] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(daysBetween(textOf(from), textOf(to))).toBe(differenceInCalendarDays(to, from));
        expect(daysBetween(textOf(to), textOf(from))).toBe(differenceInCalendarDays(from, to) + 0);
        expect(yearsBetween(textOf(from), textOf(to))).toBe(differenceInYears(to, from));
        expect(weekdayOf(textOf(to))).toBe(getISODay(to));
      }),
      RUNS,
    );
  });

  it.each([
    ['2023-08-31', 6, '2024-02-29'],
    ['2022-08-31', 6, '2023-02-28'],
    ['2024-02-29', 12, '2025-02-28'],
  ])('%s and %i months is %s', (day, months, expected) => {
    expect(addMonths(day, months)).toBe(expected);
  });

  it('would see a month that runs over', () => {
    expect(addMonths('2023-08-31', 6)).not.toBe('2024-03-02');
  });
});
