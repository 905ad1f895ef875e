import { addDays, eachDayOfInterval, format, getDay, parse } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../../src/contract/index.js';
import { planFollowUp } from '../../../src/surveillance/index.js';
import { openWindow } from '../../../src/surveillance/plan/closed-days.js';
import { ALWAYS_OPEN, itemOf, resected } from './plan-samples.js';

const { closedWeekdays, closedDays, publicHolidays } = DEFAULT_UNIT_SETTINGS;
const WEEKEND = { closedWeekdays, closedDays, publicHolidays };
const window = (earliest: string, target: string, latest: string) => ({ earliest, target, latest });

describe('closed days', () => {
  // 14 and 15 September 2024 are a Saturday and a Sunday (date-fns says so below).
  it.each([
    ['a Saturday: the Friday is nearer', ['2024-09-01', '2024-09-14', '2024-09-30'], '2024-09-13'],
    ['a Sunday: the Monday is nearer', ['2024-09-01', '2024-09-15', '2024-09-30'], '2024-09-16'],
    ['a Sunday at the end: never out', ['2024-09-01', '2024-09-15', '2024-09-15'], '2024-09-13'],
    [
      'a Saturday at the start: never out',
      ['2024-09-14', '2024-09-14', '2024-09-30'],
      '2024-09-16',
    ],
    ['a weekday', ['2024-09-01', '2024-09-17', '2024-09-30'], '2024-09-17'],
  ] as const)('move the target off %s', (_, [earliest, target, latest], expected) => {
    expect(openWindow(window(earliest, target, latest), WEEKEND)?.target).toBe(expected);
  });

  it('move the ends of the window inwards', () => {
    expect(openWindow(window('2024-09-14', '2024-09-18', '2024-09-22'), WEEKEND)).toEqual(
      window('2024-09-16', '2024-09-18', '2024-09-20'),
    );
  });

  it('of two days as near, the earlier one', () => {
    const own = { ...WEEKEND, closedDays: ['2024-09-18'] };
    expect(openWindow(window('2024-09-02', '2024-09-18', '2024-09-30'), own)?.target).toBe(
      '2024-09-17',
    );
  });

  it('and public holidays count alike', () => {
    const own = { ...WEEKEND, publicHolidays: ['2024-10-03'], closedDays: ['2024-10-04'] };
    expect(openWindow(window('2024-09-02', '2024-10-03', '2024-10-30'), own)?.target).toBe(
      '2024-10-02',
    );
  });

  it('that leave no day are said on the item, which keeps its date', () => {
    const facts = resected('colon', 'very-low-risk');
    // 15 March 2027 is a Monday.
    const closed = { ...DEFAULT_UNIT_SETTINGS, publicHolidays: ['2027-03-15'] };
    const item = itemOf(planFollowUp(facts, closed), 'COL-1.1');
    expect(item).toMatchObject({ noOpenDay: true, due: { target: '2027-03-15' } });
    expect(item).not.toHaveProperty('proposed');
    const open = itemOf(planFollowUp(facts, DEFAULT_UNIT_SETTINGS), 'COL-1.1');
    expect(open).toMatchObject({ proposed: { target: '2027-03-15' } });
    expect(open).not.toHaveProperty('noOpenDay');
  });

  it('play no part in what was due', () => {
    const facts = resected('stomach', 'low-risk');
    const due = (unit: typeof ALWAYS_OPEN) => itemOf(planFollowUp(facts, unit), 'GAS-1.1')?.due;
    expect(due(DEFAULT_UNIT_SETTINGS)).toEqual(due(ALWAYS_OPEN));
  });
});

/** Days at noon, which every time zone has; date-fns is another calendar. */
const dayOf = (text: string) => parse(`${text} 12`, 'yyyy-MM-dd HH', new Date(2000, 0, 1));
const textOf = (date: Date) => format(date, 'yyyy-MM-dd');

describe('open windows, against every day of them by date-fns', () => {
  const NAMES = [
    'sunday',
    'monday',
    'tuesday',
    'wednesday',
    'thursday',
    'friday',
    'saturday',
  ] as const;

  it('has the first, the nearest and the last open day', () => {
    const lengths = fc.tuple(fc.nat(4000), fc.nat(20), fc.nat(20));
    const weekdays = fc.subarray([...NAMES], { maxLength: 6 });
    fc.assert(
      fc.property(lengths, weekdays, fc.array(fc.nat(4000)), ([start, a, b], closed, single) => {
        const from = addDays(dayOf('2023-01-01'), start);
        const due = window(textOf(from), textOf(addDays(from, a)), textOf(addDays(from, a + b)));
        const closedOn = single.map((days) => textOf(addDays(dayOf('2023-01-01'), days)));
        const unit = { closedWeekdays: closed, closedDays: closedOn, publicHolidays: [] };
        const open = eachDayOfInterval({ start: dayOf(due.earliest), end: dayOf(due.latest) })
          .filter((date) => !closed.some((name) => name === NAMES[getDay(date)]))
          .map(textOf)
          .filter((text) => !closedOn.includes(text));
        const distance = (text: string) =>
          Math.abs(Math.round((+dayOf(text) - +dayOf(due.target)) / 864e5));
        const nearest = [...open].sort((x, y) => distance(x) - distance(y) || (x < y ? -1 : 1));
        const [earliest, target, latest] = [open[0], nearest[0], open.at(-1)];
        expect(openWindow(due, unit)).toEqual(
          earliest === undefined ? undefined : { earliest, target, latest },
        );
      }),
      { numRuns: 200 },
    );
  });
});
