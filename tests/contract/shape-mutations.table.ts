import type { FieldKind, Place } from './places.js';

/** A mistake in one field that any validator of the schema must find. */
export interface ShapeMutation {
  readonly mistake: string;
  readonly kinds: readonly FieldKind[];
  /** The rule that the service names. */
  readonly rule: string;
  readonly onlyRequired?: true;
  /** @returns what stands there instead; `undefined`: nothing */
  readonly instead: (value: unknown, place: Place) => unknown;
}

const TEXTS: readonly FieldKind[] = ['instant', 'date', 'other text'];
const NUMBERS: readonly FieldKind[] = ['whole number', 'number from', 'number above'];
const LISTS: readonly FieldKind[] = ['list', 'list of words'];
const ALL: readonly FieldKind[] = [
  ...TEXTS,
  ...NUMBERS,
  ...LISTS,
  'object',
  'word',
  'literal',
  'yes or no',
];

const text =
  (change: (sent: string) => string): ShapeMutation['instead'] =>
  (value) =>
    change(String(value));

const wrongType = (
  mistake: string,
  kinds: readonly FieldKind[],
  value: unknown,
): ShapeMutation => ({
  mistake,
  kinds,
  rule: 'wrong-type',
  instead: () => value,
});

const badText = (
  mistake: string,
  kinds: readonly FieldKind[],
  change: (sent: string) => string,
): ShapeMutation => ({ mistake, kinds, rule: 'bad-format', instead: text(change) });

export const SHAPE_MUTATIONS: readonly ShapeMutation[] = [
  {
    mistake: 'a required field is left out',
    kinds: ALL,
    rule: 'missing-field',
    onlyRequired: true,
    instead: () => undefined,
  },
  wrongType('null for "not told"', ALL, null),
  wrongType('a text for an object', ['object'], 'see above'),
  wrongType('a list for an object', ['object'], []),
  wrongType('a text for a list', LISTS, 'none'),
  wrongType('an object for a list', LISTS, {}),
  wrongType('a number for a text', TEXTS, 20260329),
  wrongType('a number for a word', ['word'], 1),
  wrongType('a text for a number', NUMBERS, '12'),
  wrongType('a fraction for a whole number', ['whole number'], 1.5),
  wrongType('a text for yes or no', ['yes or no'], 'true'),
  wrongType('a number for yes or no', ['yes or no'], 1),
  {
    mistake: 'a field that is not part of the message',
    kinds: ['object'],
    rule: 'unknown-field',
    instead: (value) => ({ ...Object(value), colour: 'red' }),
  },
  {
    mistake: 'a word that is not in the list',
    kinds: ['word'],
    rule: 'not-in-list',
    instead: () => 'elsewhere',
  },
  {
    mistake: 'a word in capitals',
    kinds: ['word', 'literal'],
    rule: 'not-in-list',
    instead: text((sent) => `${sent.toUpperCase()} `),
  },
  {
    mistake: 'a number below the least',
    kinds: ['whole number', 'number from'],
    rule: 'out-of-range',
    instead: (_, { node }) => (node.minimum ?? 0) - 1,
  },
  {
    mistake: 'a number at the end that is excluded',
    kinds: ['number above'],
    rule: 'out-of-range',
    instead: (_, { node }) => node.exclusiveMinimum,
  },
  {
    mistake: 'a number above the greatest',
    kinds: NUMBERS,
    rule: 'out-of-range',
    instead: (_, { node }) => (node.maximum ?? 0) + 1,
  },
  {
    mistake: 'a word twice',
    kinds: ['list of words'],
    rule: 'bad-format',
    instead: (_, { node }) => [node.items?.enum?.[0], node.items?.enum?.[0]],
  },
  {
    mistake: 'a list that is too long',
    kinds: ['list'],
    rule: 'wrong-length',
    instead: (value, { node }) => overfull(value, (node.maxItems ?? 0) + 1),
  },
  badText('a text with a blank at its end', TEXTS, (sent) => `${sent} `),
  badText('an empty text', TEXTS, () => ''),
  badText('a control character', TEXTS, (sent) => `${sent}\u0007`),
  badText('half of a character', TEXTS, (sent) => `${sent}\ud83d`),
  badText('a text without end', TEXTS, (sent) => sent.padEnd(400, 'a')),
  badText('an instant without offset', ['instant'], (sent) => sent.slice(0, 19)),
  badText('an instant without seconds', ['instant'], (sent) => `${sent.slice(0, 16)}Z`),
  badText('a leap second', ['instant'], (sent) => `${sent.slice(0, 17)}60Z`),
  badText('an hour that no clock has', ['instant'], (sent) => `${sent.slice(0, 11)}24:00:00Z`),
  badText('an offset of a day', ['instant'], (sent) => `${sent.slice(0, 19)}+24:00`),
  badText('30 February', ['instant', 'date'], (sent) => `2026-02-30${sent.slice(10)}`),
  badText('29 February of a common year', ['instant', 'date'], (s) => `2026-02-29${s.slice(10)}`),
  badText('31 April', ['instant', 'date'], (sent) => `2026-04-31${sent.slice(10)}`),
  badText('a month without day', ['date'], (sent) => sent.slice(0, 7)),
  badText('another century', ['instant', 'date'], (sent) => `1899-12-31${sent.slice(10)}`),
];

/** The list with its first entry again and again; an empty list cannot be filled that way. */
function overfull(value: unknown, length: number): unknown {
  const [first] = Array.isArray(value) ? value : [];
  return first === undefined ? value : Array.from({ length }, () => first);
}
