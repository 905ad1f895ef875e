/** What a field of a question holds once it is known. */
export type Value = string | number | boolean;

/** A border of a number; its unit is the field's. */
export type Border =
  | { readonly above: number }
  | { readonly atLeast: number }
  | { readonly below: number }
  | { readonly atMost: number };

/** One of some words, beyond a border, or between two. */
export type Test<V extends Value = Value> =
  | { readonly is: readonly V[] }
  | (number extends V ? Border | readonly [Border, Border] : never);

/** All tests must hold; without a test it always holds. */
export type Condition = Readonly<Record<string, Test | undefined>>;

/** A condition over the fields of one kind of question: a wrong name or word does not compile. */
export type ConditionOn<Q> = {
  readonly [F in keyof Q]?: Test<Extract<Q[F], Value>>;
};

/** A field without which something cannot be said. */
export interface Needs {
  readonly needs: string;
}

/** The value of a field, or what must be known before it can be read. */
export type Read = (field: string) => Value | Needs;

/** @returns whether a result says that a field is needed first */
export const isNeeds = (result: unknown): result is Needs =>
  typeof result === 'object' && result !== null && 'needs' in result;

/** Whether a condition holds. One test that fails makes it false, whatever else is not known. */
export function truthOf(condition: Condition, read: Read): boolean | Needs {
  let needs: Needs | undefined;
  for (const field in condition) {
    const test = condition[field];
    if (test === undefined) continue;
    const value = read(field);
    if (isNeeds(value)) needs ??= value;
    else if (!passes(test, value)) return false;
  }
  return needs ?? true;
}

/** The borders that a test draws; none for words. */
export function bordersOf(test: Test): readonly Border[] {
  if (isPair(test)) return test;
  return 'is' in test ? [] : [test];
}

const isPair = (test: Test): test is readonly [Border, Border] => Array.isArray(test);

function passes(test: Test, value: Value): boolean {
  if (!isPair(test) && 'is' in test) return test.is.includes(value);
  return typeof value === 'number' && bordersOf(test).every((border) => isWithin(border, value));
}

function isWithin(border: Border, value: number): boolean {
  if ('above' in border) return value > border.above;
  if ('atLeast' in border) return value >= border.atLeast;
  if ('below' in border) return value < border.below;
  return value <= border.atMost;
}
