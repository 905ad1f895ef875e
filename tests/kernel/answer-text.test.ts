import { describe, expect, it } from 'vitest';
import { addMonths, fixedText, isCalendarDate, trimmedText } from '../../src/kernel/index.js';

// Formats: project definition (fixed and trimmed decimals, half away from zero).
describe('numbers as text', () => {
  it.each([
    [0, 4, '0.0000'],
    [1, 4, '1.0000'],
    [0.12345, 4, '0.1235'],
    [11.447, 1, '11.4'],
    [-0.25, 1, '-0.3'],
  ])('%d with %i fixed decimals is %s', (value, decimals, text) => {
    expect(fixedText(value, decimals)).toBe(text);
  });

  it.each([
    [26.18, 3, '26.18'],
    [15, 3, '15'],
    [13.9535, 3, '13.954'],
    [0.0004, 3, '0'],
    [0.0005, 3, '0.001'],
    [400, 3, '400'],
  ])('%d with at most %i decimals is %s', (value, decimals, text) => {
    expect(trimmedText(value, decimals)).toBe(text);
  });
});

describe('calendar months', () => {
  // By the calendar: 2024 is a leap year, 2023, 2025 and 2100 are none.
  it.each([
    ['2023-08-31', 6, '2024-02-29'],
    ['2024-08-31', 6, '2025-02-28'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-02-29', 48, '2028-02-29'],
    ['2099-02-28', 12, '2100-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2024-03-31', -1, '2024-02-29'],
    ['2024-12-15', 1, '2025-01-15'],
    ['2024-03-15', 0, '2024-03-15'],
  ])('%s and %i months are %s', (date, months, later) => {
    expect(addMonths(date, months)).toBe(later);
  });

  it.each(['2023-02-29', '2024-13-01', '2024-00-10', '2024-1-1', '2024-01-32', 'today', ''])(
    'know no day %j',
    (text) => {
      expect(isCalendarDate(text)).toBe(false);
    },
  );

  it('know the days that are there', () => {
    for (const text of ['2024-02-29', '2000-02-29', '1999-12-31']) {
      expect(isCalendarDate(text)).toBe(true);
    }
  });
});
