import type { z } from 'zod';
import type { Problem } from '../kernel/index.js';
import { allowedFields, expectedAt } from './expected.js';
import { isWithin, type Path, toPointer } from './pointer.js';

type Issue = z.core.$ZodIssue;

/**
 * Says what zod found in our own words: rule, pointer, sentence, expected; never the value. Each
 * place is named once, for what was found first.
 *
 * @param schema that the issues come from
 * @param raw the document as it came
 */
export function shapeProblems(
  schema: z.ZodType,
  issues: readonly Issue[],
  raw: unknown,
): Problem[] {
  // A text too long where a list belongs has the wrong type, and no length beside it.
  const named = new Set<string>();
  return issues
    .flatMap((issue) => problemsOf(schema, issue, raw))
    .filter(({ pointer }) => !named.has(pointer) && named.add(pointer));
}

/** The problems that none of the places explains: each value is named once. */
export const unexplained = (problems: readonly Problem[], places: readonly string[]): Problem[] =>
  problems.filter(({ pointer }) => !places.some((place) => isWithin(pointer, place)));

/** @returns the places that an issue condemns */
export function pathsOf(issue: Issue): Path[] {
  return issue.code === 'unrecognized_keys'
    ? issue.keys.map((key) => [...issue.path, key])
    : [issue.path];
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

function problemsOf(schema: z.ZodType, issue: Issue, raw: unknown): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      rule: 'unknown-field',
      pointer: toPointer([...issue.path, key]),
      message: 'This field is not part of the message.',
      expected: allowedFields(schema, issue.path),
    }));
  }
  const value = valueAt(raw, issue.path);
  return [
    {
      ...(value === undefined ? MISSING : wording(issue, value)),
      pointer: toPointer(issue.path),
      expected: expectedOf(schema, issue),
    },
  ];
}

const WRONG_TYPE = { rule: 'wrong-type', message: 'This value has the wrong type.' };
const MISSING = { rule: 'missing-field', message: 'A required field is missing.' };

function wording(issue: Issue, value: unknown): Pick<Problem, 'rule' | 'message'> {
  switch (issue.code) {
    case 'invalid_type':
      return WRONG_TYPE;
    case 'invalid_value':
      if (typeof value !== typeof issue.values[0]) return WRONG_TYPE;
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

/** A check of our own says itself what it expects. */
const expectedOf = (schema: z.ZodType, issue: Issue): string =>
  (issue.code === 'custom' ? issue.message : expectedAt(schema, issue.path)) ?? issue.message;

function valueAt(raw: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (node, key) => (node !== null && typeof node === 'object' ? Reflect.get(node, key) : undefined),
    raw,
  );
}
