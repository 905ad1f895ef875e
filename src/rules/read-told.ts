import { type Checked, failed, isCalendarDate, type Problem, passed } from '../kernel/index.js';
import { type Condition, type ConditionOn, type Read, truthOf, type Value } from './condition.js';
import type { Field, Fields } from './field.js';
import type { Told } from './question.js';
import { wordText } from './word-text.js';

/** What a question must not tell at once: all of its tests hold. */
export interface Contradiction<When = Condition> {
  readonly rule: string;
  readonly field: string;
  readonly when: When;
  readonly message: string;
  readonly expected: string;
}

/** Contradictions of one kind of question. */
export type ContradictionsOf<Q> = readonly (Contradiction<ConditionOn<Q>> & {
  readonly field: keyof Q;
})[];

/**
 * Reads the bare fields of a question as they came from outside.
 *
 * @returns the fields, or every problem at once: an unknown name, a wrong type, a value outside
 * the list or range, fields that contradict each other
 */
export function readTold(
  fields: Fields,
  contradictions: readonly Contradiction[],
  document: unknown,
): Checked<Told> {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return failed([{ ...WRONG_TYPE, pointer: '', expected: 'an object of fields' }]);
  }
  const told = document as Told;
  const problems = Object.keys(told).flatMap((name) => problemsOf(fields, told, name));
  if (problems.length > 0) return failed(problems);
  const broken = contradictions.filter(({ when }) => truthOf(when, readOnly(told)) === true);
  return broken.length > 0 ? failed(broken.map(toProblem)) : passed(told);
}

const WRONG_TYPE = { rule: 'wrong-type', message: 'This value has the wrong type.' };

/** The fields as told, nothing supposed. */
const readOnly =
  (told: Told): Read =>
  (name) =>
    told[name] ?? { needs: name };

function problemsOf(fields: Fields, told: Told, name: string): readonly Problem[] {
  const pointer = pointerTo(name);
  const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
  if (field === undefined) {
    const expected = `only the fields: ${Object.keys(fields).join(', ')}`;
    return [
      { rule: 'unknown-field', message: 'There is no field of this name.', pointer, expected },
    ];
  }
  const value = told[name];
  const fault = value === null ? undefined : faultOf(field, wordsOf(field, told), value);
  return fault === undefined ? [] : [{ ...fault, pointer, expected: expectedOf(field, told) }];
}

function faultOf(field: Field, words: readonly unknown[], value: unknown) {
  switch (field.type) {
    case 'flag':
      return typeof value === 'boolean' ? undefined : WRONG_TYPE;
    case 'date':
      return typeof value === 'string' && isCalendarDate(value)
        ? undefined
        : { rule: 'bad-format', message: 'This value is no day of the calendar.' };
    case 'word':
      return words.includes(value)
        ? undefined
        : { rule: 'not-in-list', message: 'This value is not one of the allowed words.' };
    case 'number':
      if (typeof value !== 'number' || (field.whole && !Number.isInteger(value))) return WRONG_TYPE;
      return field.from <= value && value <= field.to
        ? undefined
        : { rule: 'out-of-range', message: 'This number is out of range.' };
  }
}

/** The words that are possible beside what else was told. */
function wordsOf(field: Field, told: Told): readonly Value[] {
  if (field.type !== 'word') return [];
  const only = field.only?.find(({ when }) => truthOf(when, readOnly(told)) === true);
  return [...(only?.words ?? field.words), ...(field.unknown ?? [])];
}

function expectedOf(field: Field, told: Told): string {
  switch (field.type) {
    case 'flag':
      return 'true, false or null';
    case 'date':
      return 'a day as YYYY-MM-DD, or null';
    case 'word':
      return `one of: ${[...new Set(wordsOf(field, told))].map(wordText).join(', ')}, or null`;
    case 'number':
      return `a ${field.whole ? 'whole ' : ''}number from ${field.from} to ${field.to}, in ${field.unit}, or null`;
  }
}

const toProblem = ({ rule, field, message, expected }: Contradiction): Problem => ({
  rule,
  pointer: pointerTo(field),
  message,
  expected,
});

const pointerTo = (name: string): string => `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
