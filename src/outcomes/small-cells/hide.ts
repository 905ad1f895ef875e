import {
  type Cube,
  type CubeEntry,
  isWithin,
  keyOf,
  plus,
  subsetsOf,
  tableOf,
  without,
} from './cube.js';
import { isDerivable, publish, sumOver } from './derivable.js';

/** A table of more cells is not shown at all: most of its cells would be small. */
const MOST_CELLS = 200;

/** A count that gives nobody away: nobody at all, or enough people. */
export const isSafe = (count: number, threshold: number): boolean =>
  count === 0 || count >= threshold;

/**
 * The cells of a cube that are not shown: small ones, and those that would give away small ones.
 *
 * Whether a cell is shown depends on the cells that hold it and on its neighbours under the same
 * dimensions, never on what was asked, so that all answers together tell no more than each. From
 * the coarse tables to the fine ones, a cell is hidden that
 * 1. lies in a hidden one;
 * 2. has a small count;
 * 3. leaves a small count in a cell that holds it;
 * 4. stands in a line of which the hidden cells are one alone, or together have a small count;
 * 5. with other shown cells gives a small one by adding and subtracting.
 *
 * Source: primary and complementary suppression, Cox LH, J Am Stat Assoc 1980;75:377-385 (from
 * memory). Showing zeros is common practice.
 *
 * @param threshold counts from 1 to one less are small
 * @returns keys of hidden places
 */
export function hiddenPlaces(cube: Cube, threshold: number): ReadonlySet<string> {
  const hidden = new Set<string>();
  for (const dimensions of subsetsOf(cube.dimensions)) {
    const table = tableOf(cube, dimensions);
    const state: State = { cube, dimensions, table, threshold, hidden };
    hideAtOnce(state);
    hideInLines(state);
    hideWhatGivesAway(state);
  }
  return hidden;
}

interface State {
  readonly cube: Cube;
  readonly dimensions: readonly string[];
  readonly table: readonly CubeEntry[];
  readonly threshold: number;
  readonly hidden: Set<string>;
}

const isSmall = ({ counts }: Pick<CubeEntry, 'counts'>, threshold: number): boolean =>
  counts.some((count) => !isSafe(count, threshold));

const isHidden = ({ place }: CubeEntry, { hidden }: Pick<State, 'hidden'>): boolean =>
  hidden.has(keyOf(place));

function hideAtOnce({ cube, dimensions, table, threshold, hidden }: State): void {
  for (const cell of table) {
    const isInHidden = dimensions.some((each) => hidden.has(keyOf(without(cell.place, each))));
    if (
      table.length > MOST_CELLS ||
      isInHidden ||
      isSmall(cell, threshold) ||
      leavesSmall(cell, cube, threshold)
    ) {
      hidden.add(keyOf(cell.place));
    }
  }
}

/** Whether a cell around this one holds few others beside it. */
function leavesSmall({ place, counts }: CubeEntry, { entries }: Cube, threshold: number): boolean {
  return [...entries.values()].some(
    (outer) =>
      isWithin(place, outer.place) &&
      isSmall({ counts: outer.counts.map((count, i) => count - (counts[i] ?? 0)) }, threshold),
  );
}

/** Hides the smallest neighbour until what is hidden of every shown sum is several, and enough. */
function hideInLines(state: State): void {
  const lines = linesOf(state);
  let changed = true;
  while (changed) {
    changed = lines.map((line) => hideInLine(line, state)).includes(true);
  }
}

function linesOf({ cube, dimensions, table, hidden }: State): readonly (readonly CubeEntry[])[] {
  return dimensions.flatMap((dimension) => {
    const outerOf = ({ place }: CubeEntry): string => keyOf(without(place, dimension));
    const outers = [...new Set(table.map(outerOf))];
    return outers
      .filter((outer) => !hidden.has(outer) && cube.entries.has(outer))
      .map((outer) => table.filter((cell) => outerOf(cell) === outer));
  });
}

function hideInLine(line: readonly CubeEntry[], state: State): boolean {
  let changed = false;
  for (;;) {
    const held = line.filter((cell) => isHidden(cell, state));
    const sum = held.map(({ counts }) => counts).reduce<readonly number[]>(plus, ZERO(line));
    if (held.length === 0 || (held.length > 1 && !isSmall({ counts: sum }, state.threshold))) break;
    const next = smallestShown(line, state)[0];
    if (next === undefined) break;
    state.hidden.add(keyOf(next.place));
    changed = true;
  }
  return changed;
}

const ZERO = (line: readonly CubeEntry[]): readonly number[] =>
  (line[0]?.counts ?? []).map(() => 0);

/** The key decides between equals, so that the choice is always the same. */
function smallestShown(cells: readonly CubeEntry[], state: State): readonly CubeEntry[] {
  const size = ({ counts }: CubeEntry) => counts.reduce((sum, count) => sum + count, 0);
  return cells
    .filter((cell) => !isHidden(cell, state))
    .toSorted((a, b) => size(a) - size(b) || (keyOf(a.place) < keyOf(b.place) ? -1 : 1));
}

/** Looks at what all shown sums of these dimensions give together, not at one line at a time. */
function hideWhatGivesAway(state: State): void {
  for (;;) {
    const given = firstGivenAway(state);
    if (given === undefined) return;
    const around = state.table.filter(({ place }) =>
      state.dimensions.some(
        (each) => keyOf(without(place, each)) === keyOf(without(given.place, each)),
      ),
    );
    const next = smallestShown(around, state)[0] ?? smallestShown(state.table, state)[0];
    if (next === undefined) return;
    state.hidden.add(keyOf(next.place));
    hideInLines(state);
  }
}

function firstGivenAway(state: State): CubeEntry | undefined {
  const { cube, dimensions, table, threshold } = state;
  if (dimensions.length < 2 || table.length > MOST_CELLS) return undefined;
  const small = table.filter((cell) => isSmall(cell, threshold));
  if (small.length === 0) return undefined;
  const sums = subsetsOf(dimensions)
    .flatMap((each) => tableOf(cube, each))
    .filter((cell) => !isHidden(cell, state));
  const published = publish(sums.map((cell) => sumOver(table, cell)));
  return small.find((cell) => isDerivable(sumOver(table, cell), published));
}
