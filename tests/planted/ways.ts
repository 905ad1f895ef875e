import { isNeeds, type Needs, type Read, truthOf, type Value } from '../../src/rules/condition.js';
import type { Field, Fields } from '../../src/rules/field.js';
import type { Told } from '../../src/rules/question.js';

/** Values of some fields; together they make up a space of questions. */
export type Axes = Readonly<Record<string, readonly Value[]>>;

/** A question as far as something had to be known, and what was found with that. */
export interface Way<T> {
  readonly told: Told;
  readonly result: T;
}

/**
 * Every way to fill in what `look` asks for: together they are the whole space of questions, cut
 * into the parts that `look` does not tell apart.
 *
 * @param axes values of each field that `look` may ask for
 */
export function* waysThrough<T extends object>(
  fields: Fields,
  axes: Axes,
  look: (read: Read) => T | Needs,
  told: Told = {},
): Generator<Way<T>, void> {
  const result = look((field) => told[field] ?? { needs: field });
  if (!isNeeds(result)) return yield { told, result };
  const { field, values } = choicesFor(fields, axes, told, result.needs);
  for (const value of values) {
    yield* waysThrough(fields, axes, look, { ...told, [field]: value });
  }
}

/** The field to try out next: the one needed, or one that says which of its words are possible. */
function choicesFor(
  fields: Fields,
  axes: Axes,
  told: Told,
  name: string,
): { readonly field: string; readonly values: readonly Value[] } {
  const values = axes[name];
  if (values === undefined) throw new Error(`no values for a field that is asked for: ${name}`);
  for (const { when, words } of fields[name]?.only ?? []) {
    const truth = truthOf(when, (field) => told[field] ?? { needs: field });
    if (isNeeds(truth)) return choicesFor(fields, axes, told, truth.needs);
    if (truth) return { field: name, values: values.filter((value) => words.includes(value)) };
  }
  return { field: name, values };
}

/** Every value of a field that a rule may tell from another one. */
export function valuesOf(field: Field, numbers: readonly number[]): readonly Value[] {
  switch (field.type) {
    case 'flag':
      return [false, true];
    case 'date':
      return ['2024-03-15'];
    case 'number':
      return numbers;
    case 'word':
      return field.words.filter((word) => field.unknown?.includes(word) !== true);
  }
}

/**
 * The same question with a value for every field.
 *
 * @param accepts whether a question holds no contradiction
 * @returns undefined when every way to complete it holds one
 */
export function completed(
  fields: Fields,
  axes: Axes,
  told: Told,
  accepts: (question: Told) => boolean,
): Told | undefined {
  const open = Object.keys(fields).filter((name) => told[name] === undefined);
  let full = told;
  for (const name of open) {
    const { values } = choicesFor(fields, axes, full, name);
    full = { ...full, [name]: full[name] ?? values[0] };
  }
  if (accepts(full)) return full;
  for (const name of open) {
    const { values } = choicesFor(fields, axes, full, name);
    const other = values.map((value) => ({ ...full, [name]: value })).find(accepts);
    if (other !== undefined) return other;
  }
  return undefined;
}
