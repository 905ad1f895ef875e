import { describe, expect, it } from 'vitest';
import { answer } from '../../src/rules/index.js';
import { STATISTICS_RULES } from '../../src/statistics/index.js';

type Document = Readonly<Record<string, unknown>>;

/** The short answer, or the codes of the refusal with their places. */
function ask(id: string, document: Document): string {
  const rule = STATISTICS_RULES.find((each) => each.id === id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  const answered = answer(rule, document);
  if (answered.ok) return answered.value.answer;
  return answered.problems.map((problem) => `${problem.rule} ${problem.pointer}`).join(',');
}

const aims = { p0: 0.1, p1: 0.2, alpha: 0.1, beta: 0.1 };

describe('statistics that are asked like a rule', () => {
  // By hand: six of six by chance is 1/64 and not expected, five or more is 7/64 and is.
  it.each([
    ['rate-percent-1dp', { x: 0, n: 3 }, '0.0'],
    ['rate-percent-1dp', { x: 3, n: 3 }, '100.0'],
    ['clopper-pearson', { x: 0, n: 1, level: 0.95 }, '0.0000;0.9750'],
    ['cusum-parameters', aims, 's=0.1452;h=2.7095;successesToH0=19'],
    ['funnel', { p0: 0.9, n: 50, z: 3.09 }, '0.7689;1.0000'],
    ['funnel-exact', { p0: 0.5, n: 1, level: 0.95 }, '0.0000;1.0000'],
    ['funnel-exact', { p0: 0.5, n: 6, level: 0.95 }, '0.1667;0.8333'],
    ['calendar-months', { date: '2024-03-31', addMonths: -1 }, '2024-02-29'],
  ])('%s of %j is %s', (id, document, expected) => {
    expect(ask(id, document)).toBe(expected);
  });

  it.each([
    ['rate-percent-1dp', { x: 1, n: 0 }, 'out-of-range /n'],
    ['rate-percent-1dp', { x: 4, n: 3 }, 'more-events-than-observations /x'],
    ['rate-percent-1dp', { x: 1.5, n: 3 }, 'wrong-type /x'],
    ['wilson', { x: 4, n: 3, level: 0.95 }, 'more-events-than-observations /x'],
    ['wilson', { x: 1, n: 3, level: 1 }, 'out-of-range /level'],
    ['clopper-pearson', { x: 1, n: 3, level: 95 }, 'out-of-range /level'],
    ['cusum-parameters', { ...aims, p1: 0.1 }, 'rates-out-of-order /p1'],
    ['cusum-parameters', { ...aims, alpha: 0.9 }, 'risks-too-high /beta'],
    [
      'cusum-parameters',
      { p0: 0.3, p1: 0.2, alpha: 0.5, beta: 0.5 },
      'rates-out-of-order /p1,risks-too-high /beta',
    ],
    ['funnel', { p0: 1.1, n: 50, z: 1.96 }, 'out-of-range /p0'],
    ['funnel', { p0: 0.9, n: 50, z: 0 }, 'out-of-range /z'],
    ['calendar-months', { date: '2023-02-29', addMonths: 6 }, 'bad-format /date'],
    ['calendar-months', { date: '2024-02-29', addMonths: 0.5 }, 'wrong-type /addMonths'],
    ['calendar-months', { date: '9999-12-01', addMonths: 1 }, 'out-of-range /addMonths'],
    ['calendar-months', { date: '0000-01-01', addMonths: -1 }, 'out-of-range /addMonths'],
    ['wilson', { x: 1, n: 3, level: 0.95, z: 2 }, 'unknown-field /z'],
  ])('%s of %j is refused: %s', (id, document, refusal) => {
    expect(ask(id, document)).toBe(refusal);
  });

  it('name what is missing instead of a number', () => {
    expect(ask('wilson', { x: 1 })).toBe('indeterminate;missing=n,level');
    expect(ask('funnel', { p0: null, n: 50 })).toBe('indeterminate;missing=p0,z');
    expect(ask('calendar-months', { date: null, addMonths: 1 })).toBe('indeterminate;missing=date');
  });
});
