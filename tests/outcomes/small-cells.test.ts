import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cube,
  type CubeEntry,
  cubeOf,
  isWithin,
  keyOf,
  type Place,
  subsetsOf,
} from '../../src/outcomes/small-cells/cube.js';
import { hiddenPlaces } from '../../src/outcomes/small-cells/hide.js';
import { rankOf } from './rank.js';

const THRESHOLD = 5;

interface Person {
  readonly place: Place;
  readonly event: boolean;
}

/** Counts people by every subset of the dimensions, by looking at each of them. */
function cubeOfPeople(people: readonly Person[], dimensions: readonly string[]): Cube {
  const cells = new Map<string, { place: Place; counts: [number, number] }>();
  for (const { place, event } of people) {
    for (const subset of subsetsOf(dimensions)) {
      const at: Place = Object.fromEntries(subset.map((name) => [name, place[name] ?? '']));
      const cell = cells.get(keyOf(at)) ?? { place: at, counts: [0, 0] };
      cell.counts[event ? 0 : 1] += 1;
      cells.set(keyOf(at), cell);
    }
  }
  return cubeOf(dimensions, [...cells.values()]);
}

const small = (count: number): boolean => count > 0 && count < THRESHOLD;
const shownOf = (cube: Cube, hidden: ReadonlySet<string>): readonly CubeEntry[] =>
  [...cube.entries.values()].filter(({ place }) => !hidden.has(keyOf(place)));

/** All pairs of filters whose answers are shown and one of which lies in the other. */
function smallDifferences(cube: Cube, hidden: ReadonlySet<string>): readonly string[] {
  const shown = shownOf(cube, hidden);
  return shown.flatMap((outer) =>
    shown
      .filter(({ place }) => isWithin(place, outer.place))
      .filter(({ counts }) => counts.some((n, i) => small((outer.counts[i] ?? 0) - n)))
      .map(({ place }) => `${keyOf(outer.place)} - ${keyOf(place)}`),
  );
}

/** All sums of neighbours along one dimension, taken from the cell that holds them. */
function smallRests(cube: Cube, hidden: ReadonlySet<string>): readonly string[] {
  const shown = shownOf(cube, hidden);
  return shown.flatMap((outer) =>
    cube.dimensions
      .filter((dimension) => outer.place[dimension] === undefined)
      .filter((dimension) => {
        const line = shown.filter(
          ({ place }) =>
            isWithin(place, outer.place) &&
            place[dimension] !== undefined &&
            Object.keys(place).length === Object.keys(outer.place).length + 1,
        );
        return [0, 1].some((i) =>
          small(
            (outer.counts[i] ?? 0) - line.reduce((sum, { counts }) => sum + (counts[i] ?? 0), 0),
          ),
        );
      })
      .map((dimension) => `${keyOf(outer.place)} less all ${dimension}`),
  );
}

/** Small cells that adding and subtracting all shown numbers gives, over the whole cube. */
function givenAway(cube: Cube, hidden: ReadonlySet<string>): readonly string[] {
  const cells = [...cube.entries.values()];
  const atoms = cells.filter(({ place }) => Object.keys(place).length === cube.dimensions.length);
  const rowOf = ({ place }: CubeEntry) => atoms.map((atom) => Number(isWithin(atom.place, place)));
  const known = shownOf(cube, hidden).map(rowOf);
  const rank = rankOf(known);
  return cells
    .filter(({ place, counts }) => hidden.has(keyOf(place)) && counts.some(small))
    .filter((cell) => rankOf([...known, rowOf(cell)]) === rank)
    .map(({ place }) => keyOf(place));
}

const attacks = (cube: Cube, hidden: ReadonlySet<string>): readonly string[] => [
  ...smallDifferences(cube, hidden),
  ...smallRests(cube, hidden),
  ...givenAway(cube, hidden),
];

const values = (name: string, count: number) => fc.nat(count - 1).map((i) => `${name}${i}`);

const peopleBy = (sizes: Readonly<Record<string, number>>) =>
  fc.array(
    fc.record({
      place: fc.record(
        Object.fromEntries(
          Object.entries(sizes).map(([name, count]) => [name, values(name, count)]),
        ),
      ),
      event: fc.integer({ min: 0, max: 9 }).map((n) => n < 3),
    }),
    { minLength: 0, maxLength: 160, size: 'max' },
  );

// Source of the demand: threshold on events and the rest, secondary suppression, the same over
// all filters: the project's must-have list. The attacks are laws of arithmetic.
describe('small cells of all tables together', () => {
  it.each([[{ a: 3, b: 3 }], [{ a: 5, b: 2 }], [{ a: 3, b: 2, c: 2 }]])(
    'give nobody away by any pair or sum of filters, over %o',
    (sizes) => {
      const dimensions = Object.keys(sizes);
      fc.assert(
        fc.property(peopleBy(sizes), (people) => {
          const cube = cubeOfPeople(people, dimensions);
          expect(attacks(cube, hiddenPlaces(cube, THRESHOLD))).toEqual([]);
        }),
        { numRuns: 60 },
      );
    },
  );

  it('hide the same cell whatever else is asked with it', () => {
    fc.assert(
      fc.property(peopleBy({ a: 3, b: 2, c: 2 }), (people) => {
        const wide = hiddenPlaces(cubeOfPeople(people, ['a', 'b', 'c']), THRESHOLD);
        const narrow = hiddenPlaces(cubeOfPeople(people, ['a', 'b']), THRESHOLD);
        const within = [...wide].filter((key) => !key.includes('"c"'));
        expect(new Set(within)).toEqual(narrow);
      }),
      { numRuns: 40 },
    );
  });

  const group = (place: Place, events: number, others: number): readonly Person[] => [
    ...Array.from({ length: events }, () => ({ place, event: true })),
    ...Array.from({ length: others }, () => ({ place, event: false })),
  ];
  /** 2 events at the rectum are small; the stomach is the smaller of the others. */
  const SAMPLE = [
    ...group({ organ: 'colon' }, 20, 80),
    ...group({ organ: 'stomach' }, 10, 40),
    ...group({ organ: 'rectum' }, 2, 38),
  ];

  it('hide a second cell beside a single small one, and the total stays', () => {
    const cube = cubeOfPeople(SAMPLE, ['organ']);
    const hidden = hiddenPlaces(cube, THRESHOLD);
    expect(hidden).toEqual(new Set([keyOf({ organ: 'rectum' }), keyOf({ organ: 'stomach' })]));
  });

  it('show zeros, and what is large enough', () => {
    const sample = [...group({ organ: 'colon' }, 5, 80), ...group({ organ: 'rectum' }, 0, 5)];
    expect(hiddenPlaces(cubeOfPeople(sample, ['organ']), THRESHOLD)).toEqual(new Set());
  });

  it('would be found by each attack, were they hidden alone', () => {
    const cube = cubeOfPeople(SAMPLE, ['organ']);
    const weak = new Set([keyOf({ organ: 'rectum' })]);
    const two = cubeOfPeople(
      SAMPLE.filter(({ place }) => place['organ'] !== 'stomach'),
      ['organ'],
    );
    expect(smallDifferences(two, weak)).toEqual([`[] - ${keyOf({ organ: 'colon' })}`]);
    expect(smallRests(cube, weak)).toEqual(['[] less all organ']);
    expect(givenAway(cube, weak)).toEqual([keyOf({ organ: 'rectum' })]);
  });

  it('would nearly always be found, were small cells hidden alone', () => {
    const found = fc
      .sample(peopleBy({ a: 3, b: 3 }), { numRuns: 60, seed: 1 })
      .map((people) => cubeOfPeople(people, ['a', 'b']))
      .filter((cube) => cube.entries.size > 0)
      .map((cube) => {
        const cells = [...cube.entries.values()].filter(({ counts }) => counts.some(small));
        return attacks(cube, new Set(cells.map(({ place }) => keyOf(place)))).length > 0;
      });
    expect(found.filter(Boolean).length).toBeGreaterThan(found.length / 2);
  });

  it('leave most cells of large tables to be seen', () => {
    const shares = fc
      .sample(peopleBy({ a: 3, b: 3 }), { numRuns: 60, seed: 2 })
      .map((people) => cubeOfPeople([...people, ...people, ...people, ...people], ['a', 'b']))
      .filter((cube) => cube.entries.size === 16)
      .map((cube) => 1 - hiddenPlaces(cube, THRESHOLD).size / 16);
    expect(Math.max(...shares)).toBe(1);
  });

  it('would be found through the other dimension, though another cell is hidden, too', () => {
    const counts: Readonly<Record<string, readonly [number, number]>> = {
      a0b0: [2, 9],
      a0b1: [9, 9],
      a1b0: [9, 9],
      a1b1: [9, 9],
    };
    const people = Object.entries(counts).flatMap(([name, [events, others]]) =>
      group({ a: name.slice(0, 2), b: name.slice(2) }, events, others),
    );
    const cube = cubeOfPeople(people, ['a', 'b']);
    const weak = new Set([keyOf({ a: 'a0', b: 'b0' }), keyOf({ a: 'a1', b: 'b1' })]);
    expect(givenAway(cube, weak)).toEqual([keyOf({ a: 'a0', b: 'b0' })]);
  });
});
