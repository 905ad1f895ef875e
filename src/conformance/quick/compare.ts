import { isObject } from './node.js';
import { asNodes, NOTHING, type Nodes, Unanswered } from './step.js';

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;
const DAY = /^\d{4}-\d{2}-\d{2}$/;
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

/** Two instants in milliseconds, or two whole days as they stand. */
function moments(a: string, b: string): Ordered {
  const instants: Ordered = [Date.parse(a), Date.parse(b)];
  const known = INSTANT.test(a) && INSTANT.test(b);
  if (known && !instants.some(Number.isNaN)) return instants;
  if (DAY.test(a) && DAY.test(b)) return [a, b];
  throw new Unanswered('times of different precision');
}
