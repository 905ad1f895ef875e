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

/** Two instants in milliseconds, or two dates up to the precision that both have. */
function moments(a: string, b: string): Ordered {
  const instants: Ordered = [Date.parse(a), Date.parse(b)];
  const known = INSTANT.test(a) && INSTANT.test(b);
  if (known && !instants.some(Number.isNaN)) return instants;
  const precision = Math.min(a.length, b.length);
  const dates: Ordered = [a.slice(0, precision), b.slice(0, precision)];
  if (DATE.test(a) && DATE.test(b) && (a.length === b.length || dates[0] !== dates[1]))
    return dates;
  throw new Unanswered('times of different precision');
}
