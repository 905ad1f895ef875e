import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  calendarDays,
  completedYears,
  daysUntilDate,
} from '../../../src/assessment/review/spans.js';
import { SEED } from '../../support/generate-case.js';

const OFFSETS = ['Z', '+01:00', '+02:00', '-03:30', '+14:00', '-12:00'];
const LAST_MINUTE = 60 * 24 * 365 * 3;

const instants = fc
  .tuple(fc.integer({ min: 0, max: LAST_MINUTE }), fc.constantFrom(...OFFSETS))
  .map(([minute, offset]) => {
    const timeZone = offset === 'Z' ? 'UTC' : offset;
    const epoch = Temporal.Instant.fromEpochMilliseconds(Date.UTC(2023, 10, 1) + minute * 60_000);
    return epoch.toZonedDateTimeISO(timeZone).toString({ timeZoneName: 'never' });
  });
const dates = fc
  .integer({ min: 0, max: 40_000 })
  .map((days) => Temporal.PlainDate.from('1930-01-01').add({ days }).toString());

const offsetOf = (at: string): string => at.replace(/^.*(?=[+-]\d\d:\d\d$)/, '');

// Oracle: Temporal, which knows the calendar.
describe('days and years between', () => {
  it('two instants, by the clock of the first', () => {
    fc.assert(
      fc.property(instants, instants, (from, to) => {
        const zone = offsetOf(from);
        const last = Temporal.Instant.from(to).toZonedDateTimeISO(zone).toPlainDate();
        const { days } = Temporal.PlainDate.from(from.slice(0, 10)).until(last);
        expect(calendarDays(from, to)).toBe(days);
      }),
      { seed: SEED },
    );
  });

  it('an instant and a date, as they are written', () => {
    fc.assert(
      fc.property(instants, dates, (from, date) => {
        const { days } = Temporal.PlainDate.from(from.slice(0, 10)).until(date);
        expect(daysUntilDate(from, date)).toBe(days);
      }),
      { seed: SEED },
    );
  });

  it('a birth and a day: one is a year older on the same day of the year', () => {
    fc.assert(
      fc.property(dates, dates, (bornOn, date) => {
        fc.pre(bornOn <= date && !bornOn.endsWith('-02-29'));
        const { years } = Temporal.PlainDate.from(bornOn).until(date, { largestUnit: 'years' });
        expect(completedYears(bornOn, date)).toBe(years);
      }),
      { seed: SEED },
    );
  });

  it('count a leap day: born on 29 February, a year older from 1 March, or on the day', () => {
    expect(completedYears('1952-02-29', '2026-02-28')).toBe(73);
    expect(completedYears('1952-02-29', '2026-03-01')).toBe(74);
    expect(completedYears('1952-02-29', '2024-02-29')).toBe(72);
  });

  it('are not counted in hours: the evening before is one day, however short', () => {
    expect(calendarDays('2026-03-30T00:10:00+02:00', '2026-03-29T23:50:00+02:00')).toBe(-1);
    expect(calendarDays('2026-03-30T00:10:00+02:00', '2026-03-29T22:05:00Z')).toBe(0);
  });
});
