import { addMonths, type Checked, failed, passed } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { numberTold, type QuantityRule, type Told, textTold } from '../rules/index.js';

/** A hundred years. */
const MOST_MONTHS = 1_200;

export const CALENDAR_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'calendar-months',
  version: 1,
  title: 'A date some calendar months later',
  population: 'Dates of examinations; no time zone and no opening hours play a part.',
  cites: [cite('esdPractice', 'a missing day is the last of its month', 'derived')],
  fields: {
    date: { type: 'date', says: 'date' },
    addMonths: {
      type: 'number',
      unit: 'months',
      whole: true,
      from: -MOST_MONTHS,
      to: MOST_MONTHS,
      says: 'months to add',
    },
  },
  contradictions: [],
  formula: 'same day of the later month, or its last day where there is none',
  compute: later,
};

function later(told: Told): Checked<string> {
  const date = addMonths(textTold(told, 'date'), numberTold(told, 'addMonths'));
  // Dates beyond four digits of a year are written another way and were never meant.
  if (/^\d{4}-/.test(date)) return passed(date);
  return failed([
    {
      rule: 'out-of-range',
      pointer: '/addMonths',
      message: 'This leads beyond the years of the calendar.',
      expected: 'a date from year 0 to 9999',
    },
  ]);
}
