import { type Read, truthOf, type Value } from '../../src/rules/condition.js';
import type { Told } from '../../src/rules/question.js';
import type { Asking } from './asking.js';
import type { KnownRule } from './known-rules.js';
import type { Axes } from './ways.js';

/** A field that is not told (undefined), or told to be not known (null). */
export interface Hole {
  readonly field: string;
  readonly told: undefined | null;
}

/** A question with holes, and what must be said to it. */
export interface Holed {
  readonly question: Told;
  readonly expected: () => string;
}

/**
 * A question as it is, and with holes in the field, in one other field, or in both. What must be
 * said is found when it is asked for, and then kept.
 *
 * @param bases questions without a hole
 */
export function questionsWithHole(
  known: KnownRule,
  asking: Asking,
  bases: readonly Told[],
  field: string,
): readonly Holed[] {
  const fields = Object.keys(known.rule.fields);
  const others = fields.filter((other) => other !== field);
  return bases.flatMap((base) => {
    const opened = others.map((other) => opening(asking, base, other));
    const open = opening(asking, base, field);
    const patterns: readonly (readonly Hole[])[] = [
      [],
      ...opened.map((hole) => [hole]),
      [{ field, told: null }],
      [{ field, told: undefined }],
      ...opened.map((hole) => [{ field, told: undefined }, hole]),
      ...(open.told === null ? opened.map((hole) => [open, hole]) : []),
    ];
    return patterns
      .filter((holes) => holes.every((hole) => asking.mayBeAbsent(hole, base)))
      .map((holes) => holed(known, asking, base, inOrder(holes, fields)));
  });
}

/** A hole that leaves the question open: null where absence has a meaning or is not possible. */
function opening(asking: Asking, base: Told, field: string): Hole {
  const absent: Hole = { field, told: undefined };
  const isOpen = asking.mayBeAbsent(absent, base) && asking.ifAbsent(field, base) === undefined;
  return isOpen ? absent : { field, told: null };
}

const inOrder = (holes: readonly Hole[], fields: readonly string[]): readonly Hole[] =>
  [...holes].sort((a, b) => fields.indexOf(a.field) - fields.indexOf(b.field));

function holed(known: KnownRule, asking: Asking, base: Told, holes: readonly Hole[]): Holed {
  const told = Object.fromEntries(holes.map((hole) => [hole.field, hole.told]));
  return {
    question: { ...base, ...told },
    expected: once(() => expectedWith(known, asking, base, holes)),
  };
}

function once(find: () => string): () => string {
  let found: string | undefined;
  return () => {
    found ??= find();
    return found;
  };
}

/**
 * What must be said. Without the day to count from there are no dates; all else is known then.
 *
 * @param holes in the order of the fields
 */
function expectedWith(
  known: KnownRule,
  asking: Asking,
  base: Told,
  holes: readonly Hole[],
): string {
  const own = asking.expected?.(base, holes);
  if (own !== undefined) return own;
  const isDay = ({ field }: Hole) => known.rule.fields[field]?.type === 'date';
  const day = holes.find(isDay);
  const others = holes.filter((hole) => !isDay(hole));
  const onADay = byBruteForce(known, asking, base, others, others);
  if (day === undefined) return onADay;
  if (onADay.startsWith('indeterminate')) {
    return byBruteForce(known, asking, base, others, holes);
  }
  const hasDates = onADay.startsWith('min=') || onADay.startsWith('at=');
  return hasDates ? `indeterminate;missing=${day.field}` : onADay;
}

/** Every way to fill the holes, asked of the second writing; `all` holes are named when open. */
function byBruteForce(
  known: KnownRule,
  asking: Asking,
  base: Told,
  holes: readonly Hole[],
  all: readonly Hole[],
): string {
  const values = valuesByField(known);
  const complete = [...filled(asking, values, base, holes)].filter(asking.isPossible);
  const missing = all
    .filter((hole) => complete.some((full) => asking.counts(hole, full)))
    .map(({ field }) => asking.nameOf(field));
  return asking.merge(
    complete.map((full) => known.expected(full)),
    [...new Set(missing)],
  );
}

/** Whether someone could say all of that at once. */
function isPossible({ impossible }: KnownRule, asking: Asking, question: Told): boolean {
  const read: Read = (field) => question[field] ?? { needs: field };
  return asking.isPossible(question) && !impossible.some((when) => truthOf(when, read) === true);
}

/** Every way to fill the holes; what absence means is read from the fields before. */
function* filled(
  asking: Asking,
  values: Axes,
  base: Told,
  holes: readonly Hole[],
): Generator<Told, void> {
  const [hole, ...rest] = holes;
  if (hole === undefined) return yield base;
  const meant = hole.told === undefined ? asking.ifAbsent(hole.field, base) : undefined;
  const each: readonly Value[] = meant === undefined ? (values[hole.field] ?? []) : [meant];
  for (const value of each) yield* filled(asking, values, { ...base, [hole.field]: value }, rest);
}

function valuesByField({ rule, axes }: KnownRule): Axes {
  return Object.fromEntries(
    Object.entries(rule.fields).map(([name, field]) => {
      const asked = axes.flatMap((each) => each[name] ?? []);
      const words = field.type === 'word' ? field.words : [];
      const unknown: readonly Value[] = field.type === 'word' ? (field.unknown ?? []) : [];
      return [name, [...new Set([...asked, ...words])].filter((each) => !unknown.includes(each))];
    }),
  );
}

/** Possible questions of the tests, every so many-th of each space; all where there are few. */
export function someQuestions(known: KnownRule, asking: Asking, most: number): readonly Told[] {
  const { axes } = known;
  const questions = axes.flatMap((space) => {
    const entries = Object.entries(space);
    const size = entries.reduce((product, [, values]) => product * values.length, 1);
    const count = Math.min(size, Math.ceil(most / axes.length));
    return Array.from({ length: count }, (_, i) => {
      let at = count === size ? i : (i * PRIME) % size;
      return Object.fromEntries(
        entries.map(([field, values]) => {
          const value = values[at % values.length];
          at = Math.floor(at / values.length);
          return [field, value];
        }),
      );
    });
  });
  return [...questions, ...asking.bases].filter((question) => isPossible(known, asking, question));
}

/** Far apart, so that the chosen questions differ in every field. */
const PRIME = 7_368_787;
