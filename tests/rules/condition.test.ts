import { describe, expect, it } from 'vitest';
import {
  bordersOf,
  type Condition,
  isNeeds,
  type Read,
  truthOf,
  type Value,
} from '../../src/rules/condition.js';

/** Reads these values; any other field is needed first. */
const reading =
  (known: Readonly<Record<string, Value>>): Read =>
  (field) =>
    known[field] ?? { needs: field };

const holds = (when: Condition, known: Readonly<Record<string, Value>>) =>
  truthOf(when, reading(known));

describe('whether a condition holds', () => {
  it.each([
    [{ above: 10 }, [false, false, true]],
    [{ atLeast: 10 }, [false, true, true]],
    [{ below: 10 }, [true, false, false]],
    [{ atMost: 10 }, [true, true, false]],
  ] as const)('knows on which side of the border %o a number lies', (test, expected) => {
    expect([9, 10, 11].map((g) => holds({ g: test }, { g }))).toEqual(expected);
    expect(bordersOf(test)).toEqual([test]);
  });

  it('asks for both borders of a pair', () => {
    const pair = [{ atLeast: 10 }, { below: 20 }] as const;
    expect([9, 10, 19, 20].map((g) => holds({ g: pair }, { g }))).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(bordersOf(pair)).toEqual(pair);
  });

  it('knows the words, numbers and flags of a list, by value and type', () => {
    expect(holds({ a: { is: ['x', 1, true] } }, { a: 'x' })).toBe(true);
    expect(holds({ a: { is: ['x', 1, true] } }, { a: 1 })).toBe(true);
    expect(holds({ a: { is: ['x', 1, true] } }, { a: true })).toBe(true);
    expect(holds({ a: { is: ['x', 1, true] } }, { a: '1' })).toBe(false);
    expect(holds({ a: { is: [] } }, { a: 'x' })).toBe(false);
    expect(bordersOf({ is: [1] })).toEqual([]);
  });

  it('compares no word with a border', () => {
    expect(holds({ g: { atLeast: 0 } }, { g: '5' })).toBe(false);
  });

  it('always holds without a test', () => {
    expect(holds({}, {})).toBe(true);
    expect(holds({ a: undefined }, {})).toBe(true);
  });

  // Kleene's strong logic: false and unknown is false, true and unknown is unknown.
  it('is false by one test that fails, whatever is not known', () => {
    const both = { a: { is: ['x'] }, b: { is: ['y'] } };
    expect(holds(both, { b: 'z' })).toBe(false);
    expect(holds(both, { a: 'z' })).toBe(false);
    expect(holds(both, { b: 'y' })).toEqual({ needs: 'a' });
    expect(holds(both, {})).toEqual({ needs: 'a' });
    expect(holds(both, { a: 'x', b: 'y' })).toBe(true);
  });

  it('tells a need from a result', () => {
    expect(isNeeds({ needs: 'a' })).toBe(true);
    for (const result of [true, false, 'needs', 0, null, undefined, []]) {
      expect(isNeeds(result)).toBe(false);
    }
  });
});
