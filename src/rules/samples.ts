import { type Border, bordersOf, type Condition } from './condition.js';
import type { Fields } from './field.js';
import type { Samples } from './question.js';

/**
 * One value on each side of every border that the conditions draw in a number field, so that
 * trying them out visits every range. Fields without a border get the start of their range.
 */
export function samplesOf(fields: Fields, conditions: readonly Condition[]): Samples {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => {
      if (field.type !== 'number') return [];
      const values = conditions
        .flatMap((condition) => {
          const test = condition[name];
          return test === undefined ? [] : bordersOf(test).flatMap(bothSides);
        })
        .filter((value) => field.from <= value && value <= field.to);
      return [[name, [...new Set([field.from, ...values])].sort((a, b) => a - b)]];
    }),
  );
}

/** The last value inside and the first outside, one unit apart. */
function bothSides(border: Border): readonly number[] {
  if ('above' in border) return [border.above, border.above + 1];
  if ('atMost' in border) return [border.atMost, border.atMost + 1];
  if ('below' in border) return [border.below - 1, border.below];
  return [border.atLeast - 1, border.atLeast];
}
