import { isObject } from './node.js';
import { asNodes, NOTHING, type Nodes, Unanswered } from './step.js';

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;
const DATE = /^\d{4}(-\d{2}(-\d{2})?)?$/;
const TIMES = new Set(['date', 'dateTime', 'instant', 'time']);

export type Operator = '=' | '!=' | '<' | '>' | '<=' | '>=';

/** Compares two collections of at most one primitive each; anything else stays unanswered. */
export function compare(operator: Operator, left: Nodes, right: Nodes): Nodes {
  if (left.length === 0 || right.length === 0) return NOTHING;
  if (left.length > 1 || right.length > 1) throw new Unanswered('one value on each side expected');
  const [a, b] = comparable(left, right, operator);
  switch (operator) {
    case '=':
      return asNodes(a === b);
    case '!=':
      return asNodes(a !== b);
    case '<':
      return asNodes(a < b);
    case '>':
      return asNodes(a > b);
    case '<=':
      return asNodes(a <= b);
    case '>=':
      return asNodes(a >= b);
  }
}

/** Values that can be told apart by `===`: texts, numbers, booleans, but no dates. */
export function plainValues(nodes: Nodes): readonly unknown[] {
  for (const { value, path } of nodes) {
    if (isObject(value) || Array.isArray(value) || TIMES.has(path)) {
      throw new Unanswered('equality of objects or times');
    }
  }
  return nodes.map(({ value }) => value);
}

/** As `plainValues`, and codings by their content: equal keys, equal values. */
export function equalityKeys(nodes: Nodes): readonly unknown[] {
  if (nodes.some(({ path }) => path !== 'Coding')) return plainValues(nodes);
  return nodes.map(({ value }) => {
    const parts = isObject(value) ? Object.entries(value) : [];
    if (parts.some(([, part]) => typeof part === 'object')) throw new Unanswered('deep coding');
    return JSON.stringify(parts.sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}

type Ordered = readonly [string, string] | readonly [number, number] | readonly [boolean, boolean];

function comparable(left: Nodes, right: Nodes, operator: Operator): Ordered {
  const a = left[0]?.value;
  const b = right[0]?.value;
  const times = TIMES.has(left[0]?.path ?? '') || TIMES.has(right[0]?.path ?? '');
  if (typeof a === 'string' && typeof b === 'string') return times ? moments(a, b) : [a, b];
  if (typeof a === 'number' && typeof b === 'number') return [a, b];
  const equality = operator === '=' || operator === '!=';
  if (equality && typeof a === 'boolean' && typeof b === 'boolean') return [a, b];
  throw new Unanswered('values of different or compound types');
}

/** Between a day and an instant in any zone the order is certain from so many days on. */
const CERTAIN_FROM_MS = 2 * 24 * 3_600_000;
const DAY_LENGTH = '2026-06-24'.length;

/**
 * Two instants in milliseconds, two dates up to the precision that both have, or a day and an
 * instant that lie so far apart that no zone can turn them round.
 */
function moments(a: string, b: string): Ordered {
  const instants: Ordered = [Date.parse(a), Date.parse(b)];
  const known = INSTANT.test(a) && INSTANT.test(b);
  if (known && !instants.some(Number.isNaN)) return instants;
  const precision = Math.min(a.length, b.length);
  const dates: Ordered = [a.slice(0, precision), b.slice(0, precision)];
  if (DATE.test(a) && DATE.test(b) && (a.length === b.length || dates[0] !== dates[1]))
    return dates;
  if (isDayAndInstant(a, b) || isDayAndInstant(b, a)) {
    const days: Ordered = [a.slice(0, DAY_LENGTH), b.slice(0, DAY_LENGTH)];
    if (Math.abs(Date.parse(days[0]) - Date.parse(days[1])) >= CERTAIN_FROM_MS) return days;
  }
  throw new Unanswered('times of different precision');
}

const isDayAndInstant = (day: string, instant: string): boolean =>
  DATE.test(day) && day.length === DAY_LENGTH && INSTANT.test(instant);
