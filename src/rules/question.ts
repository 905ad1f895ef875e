import { isNeeds, type Needs, type Read, truthOf, type Value } from './condition.js';
import type { Field, Fields } from './field.js';

/** What was told: a value, `null` for "asked and not known", or nothing. */
export type Told = Readonly<Record<string, Value | null | undefined>>;

/** For number fields: one value on each side of every border that the rules draw. */
export type Samples = Readonly<Record<string, readonly number[]>>;

/** A question to a table: its fields, and what was told of them. */
export interface Question {
  readonly fields: Fields;
  readonly told: Told;
  readonly samples: Samples;
}

/**
 * Every result that the question can have, one for each way to fill in the missing fields that
 * `evaluate` asks for. Fields that it does not ask for are not tried out, nor are values beside
 * which a word that was told is not possible.
 *
 * @param evaluate gives a result, or names a field that it needs
 */
export function* possibleResults<T extends object>(
  question: Question,
  evaluate: (read: Read) => T | Needs,
  supposed: Told = {},
): Generator<T, void> {
  const read = reader(question, supposed);
  const result = evaluate(read);
  if (!isNeeds(result)) return yield result;
  const { field, values } = choices(question, read, result.needs);
  for (const value of values) {
    const next = { ...supposed, [field]: value };
    if (isPossible(question, next)) yield* possibleResults(question, evaluate, next);
  }
}

/** Whether each word that was told is still possible beside what is supposed. */
function isPossible(question: Question, supposed: Told): boolean {
  const read = reader(question, supposed);
  for (const name in question.fields) {
    const field = question.fields[name];
    if (field?.only === undefined) continue;
    const value = question.told[name] ?? undefined;
    if (value === undefined || isUnknownWord(field, value)) continue;
    const only = field.only.find(({ when }) => truthOf(when, read) === true);
    if (only !== undefined && !only.words.includes(value)) return false;
  }
  return true;
}

/** Fields that were asked for and are not known, in the order of the question. */
export function missingFields(question: Question): readonly string[] {
  const read = reader(question, {});
  return Object.entries(question.fields)
    .filter(([name, { askedWhen }]) => {
      const value = read(name);
      if (!isNeeds(value)) return false;
      return askedWhen?.every((when) => truthOf(when, read) === false) !== true;
    })
    .map(([name]) => name);
}

function reader(question: Question, supposed: Told): Read {
  const { fields, told } = question;
  const read: Read = (name) => {
    const known = supposed[name] ?? told[name] ?? undefined;
    const field = fields[name];
    if (known !== undefined && !isUnknownWord(field, known)) return known;
    if (told[name] !== undefined) return { needs: name };
    for (const { when, value } of field?.assumed ?? []) {
      const truth = truthOf(when, read);
      if (truth === true) return value;
      if (truth !== false) return truth;
    }
    return { needs: name };
  };
  return read;
}

/** A field to try out with all its possible values: the one needed, or one that comes before. */
function choices(
  question: Question,
  read: Read,
  name: string,
): { readonly field: string; readonly values: readonly Value[] } {
  const field = question.fields[name];
  for (const { when, words } of field?.only ?? []) {
    const truth = truthOf(when, read);
    if (truth === true) return { field: name, values: words };
    if (truth !== false) return choices(question, read, truth.needs);
  }
  return { field: name, values: valuesOf(field, question.samples[name]) };
}

function valuesOf(field: Field | undefined, samples: readonly number[] = []): readonly Value[] {
  if (field === undefined) return [];
  if (field.type === 'flag') return [false, true];
  if (field.type === 'number') return samples;
  if (field.type === 'date') return ['2000-01-01'];
  return field.words.filter((word) => !isUnknownWord(field, word));
}

const isUnknownWord = (field: Field | undefined, value: Value): boolean =>
  field?.type === 'word' && field.unknown?.includes(value) === true;
