import { invariant } from '../../kernel/index.js';

/** Names of dimensions to values; dimensions that are absent are summed over. */
export type Place = Readonly<Record<string, string>>;

/**
 * Counts of one cell that are shown together or not at all, as events and the rest of a rate.
 * Each of them is a number of cases that no published number may give away while it is small.
 */
export interface CubeEntry {
  readonly place: Place;
  readonly counts: readonly number[];
}

/** Every cell of every subset of some dimensions. */
export interface Cube {
  readonly dimensions: readonly string[];
  readonly entries: ReadonlyMap<string, CubeEntry>;
}

/** One text for one place, whatever the order of its dimensions. */
export const keyOf = (place: Place): string =>
  JSON.stringify(Object.entries(place).sort(([a], [b]) => (a < b ? -1 : 1)));

/** @throws InvariantError for two cells at one place */
export function cubeOf(dimensions: readonly string[], cells: readonly CubeEntry[]): Cube {
  const entries = new Map(cells.map((cell) => [keyOf(cell.place), cell]));
  invariant(entries.size === cells.length, 'a place has one cell');
  return { dimensions, entries };
}

/** Every subset of some dimensions, smaller ones first. */
export function subsetsOf(dimensions: readonly string[]): readonly (readonly string[])[] {
  const count = 2 ** dimensions.length;
  return Array.from({ length: count }, (_, bits) =>
    dimensions.filter((_name, i) => Math.floor(bits / 2 ** i) % 2 === 1),
  ).toSorted((a, b) => a.length - b.length);
}

/** The cells told apart by exactly these dimensions, those without a case left out. */
export function tableOf({ entries }: Cube, dimensions: readonly string[]): readonly CubeEntry[] {
  return [...entries.values()].filter(
    ({ place, counts }) =>
      Object.keys(place).length === dimensions.length &&
      dimensions.every((dimension) => Object.hasOwn(place, dimension)) &&
      counts.some((count) => count > 0),
  );
}

/** The same place without one of its dimensions. */
export function without(place: Place, dimension: string): Place {
  return Object.fromEntries(Object.entries(place).filter(([name]) => name !== dimension));
}

/** Whether a cell lies within another one. */
export const isWithin = (inner: Place, outer: Place): boolean =>
  Object.entries(outer).every(([dimension, value]) => inner[dimension] === value);

export const plus = (a: readonly number[], b: readonly number[]): readonly number[] =>
  a.map((count, i) => count + (b[i] ?? 0));
