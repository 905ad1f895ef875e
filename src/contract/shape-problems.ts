import type { z } from 'zod';
import type { Problem } from '../kernel/index.js';
import { escapePointer } from './read-json.js';

/** A place in a document. */
export type Path = readonly PropertyKey[];

/** Says what zod found in our own words: rule, pointer, sentence, expected; never the value. */
export function shapeProblems(issues: readonly z.core.$ZodIssue[], raw: unknown): Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, raw));
}

export function toPointer(path: Path): string {
  return path.map((key) => `/${escapePointer(String(key))}`).join('');
}

/** The document without the values at the paths; what remains has its declared type. */
export function without(raw: unknown, paths: readonly Path[]): unknown {
  const here = paths.filter((path) => path.length > 0);
  if (here.length < paths.length) return undefined;
  if (here.length === 0 || raw === null || typeof raw !== 'object') return raw;
  // An array that lost an entry would shift the others: it goes as a whole.
  if (Array.isArray(raw)) return undefined;
  const kept = Object.entries(raw).map(([key, value]) => [
    key,
    without(
      value,
      here.filter(([first]) => first === key).map(([, ...rest]) => rest),
    ),
  ]);
  return Object.fromEntries(kept.filter(([, value]) => value !== undefined));
}

function problemsOf(issue: z.core.$ZodIssue, raw: unknown): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      rule: 'unknown-field',
      pointer: toPointer([...issue.path, key]),
      message: 'This field is not part of the message.',
      expected: 'only the fields of the published schema',
    }));
  }
  const pointer = toPointer(issue.path);
  if (valueAt(raw, issue.path) === undefined) {
    return [
      {
        rule: 'missing-field',
        pointer,
        message: 'A required field is missing.',
        expected: expectedOf(issue),
      },
    ];
  }
  return [{ ...wording(issue), pointer, expected: expectedOf(issue) }];
}

function wording(issue: z.core.$ZodIssue): Pick<Problem, 'rule' | 'message'> {
  switch (issue.code) {
    case 'invalid_type':
      return { rule: 'wrong-type', message: 'This value has the wrong type.' };
    case 'invalid_value':
      return { rule: 'not-in-list', message: 'This value is not one of the allowed words.' };
    case 'too_small':
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int'
        ? { rule: 'out-of-range', message: 'This number is out of range.' }
        : { rule: 'wrong-length', message: 'This value is too short or too long.' };
    default:
      return { rule: 'bad-format', message: 'This value is not written as expected.' };
  }
}

function expectedOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPE_NAMES[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return issue.values.length === 1
        ? String(issue.values[0])
        : `one of: ${issue.values.map(String).join(', ')}`;
    case 'too_small':
      return `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}${unitOf(issue.origin)}`;
    case 'too_big':
      return `${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}${unitOf(issue.origin)}`;
    default:
      return issue.message;
  }
}

const TYPE_NAMES: Readonly<Record<string, string>> = {
  object: 'an object',
  array: 'a list',
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
};

const unitOf = (origin: string): string => (origin === 'array' ? ' entries' : '');

function valueAt(raw: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (node, key) => (node !== null && typeof node === 'object' ? Reflect.get(node, key) : undefined),
    raw,
  );
}
