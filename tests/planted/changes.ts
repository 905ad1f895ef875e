import type { Border, Condition, Test, Value } from '../../src/rules/condition.js';
import type { Field, Fields } from '../../src/rules/field.js';

/** One point of a piece of a rule, changed. */
export interface Changed<T> {
  readonly name: string;
  readonly to: T;
}

/** Every way to change one point of a condition: a border, or a word of a list. */
export function changesOfCondition(fields: Fields, when: Condition): Changed<Condition>[] {
  return Object.entries(when).flatMap(([name, test]) => {
    const field = fields[name];
    if (test === undefined || field === undefined) return [];
    return changesOfTest(field, test).map((change) => ({
      name: `${name} ${change.name}`,
      to: { ...when, [name]: change.to },
    }));
  });
}

function changesOfTest(field: Field, test: Test): Changed<Test>[] {
  if (isPair(test)) {
    const [low, high] = test;
    return [
      ...changesOfBorder(low).map(({ name, to }): Changed<Test> => ({ name, to: [to, high] })),
      ...changesOfBorder(high).map(({ name, to }): Changed<Test> => ({ name, to: [low, to] })),
    ];
  }
  return 'is' in test ? changesOfWords(field, test.is) : changesOfBorder(test);
}

const isPair = (test: Test): test is readonly [Border, Border] => Array.isArray(test);

/** Words that say "not known" are left out: a condition never sees them. */
function changesOfWords(field: Field, is: readonly Value[]): Changed<Test>[] {
  const words = wordsOf(field).filter((word) => !unknownOf(field).includes(word));
  return [
    ...is.map((word) => ({ name: `without ${word}`, to: { is: is.filter((w) => w !== word) } })),
    ...words
      .filter((word) => !is.includes(word))
      .map((word) => ({ name: `with ${word}`, to: { is: [...is, word] } })),
  ];
}

const unknownOf = (field: Field): readonly Value[] =>
  field.type === 'word' ? (field.unknown ?? []) : [];

export const wordsOf = (field: Field): readonly Value[] =>
  field.type === 'word' ? field.words : field.type === 'flag' ? [false, true] : [];

/** One unit up, one down, and the other side of equality. */
function changesOfBorder(border: Border): Changed<Border>[] {
  if ('above' in border) {
    const { above: n } = border;
    return named(border, [{ above: n + 1 }, { above: n - 1 }, { atLeast: n }]);
  }
  if ('atLeast' in border) {
    const { atLeast: n } = border;
    return named(border, [{ atLeast: n + 1 }, { atLeast: n - 1 }, { above: n }]);
  }
  if ('below' in border) {
    const { below: n } = border;
    return named(border, [{ below: n + 1 }, { below: n - 1 }, { atMost: n }]);
  }
  const { atMost: n } = border;
  return named(border, [{ atMost: n + 1 }, { atMost: n - 1 }, { below: n }]);
}

const named = (from: Border, to: readonly Border[]): Changed<Border>[] =>
  to.map((border) => ({ name: `${text(from)} as ${text(border)}`, to: border }));

const text = (border: Border): string => Object.entries(border).flat().join(' ');

/** Replaces one entry of a list. */
export const replaced = <T>(list: readonly T[], at: number, ...by: readonly T[]): readonly T[] => [
  ...list.slice(0, at),
  ...by,
  ...list.slice(at + 1),
];
