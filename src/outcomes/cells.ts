import { NO_CASES } from './cell-results.js';
import type {
  Asked,
  CountedCell,
  CubeCell,
  FinestCells,
  MeasuredCell,
  Stratum,
  StratumValues,
  WordCounts,
} from './counts.js';
import { quantitiesOf } from './quantities.js';
import { keyOf, type Place, subsetsOf } from './small-cells/cube.js';
import { type Dimension, INDICATOR_IDS, type IndicatorId } from './words.js';

type Sums = Pick<CountedCell, 'cases' | 'indicators'>;

/** Every cell of every subset of the dimensions, the year among them where cells have one. */
export function rollUp(finest: FinestCells, dimensions: readonly Dimension[]): readonly CubeCell[] {
  const names = [...dimensions, ...(finest.some(({ year }) => year !== undefined) ? ['year'] : [])];
  return subsetsOf(names).flatMap((subset) =>
    groupsBy(finest, subset).map(({ place: { year, ...stratum }, sums }) => ({
      stratum,
      ...(year === undefined ? {} : { year }),
      ...sums,
    })),
  );
}

/** All cases together, and each stratum of the question, with the quartiles of each. */
export function measuredCells(
  finest: FinestCells,
  by: readonly Dimension[],
  values: readonly StratumValues[],
): { readonly all: MeasuredCell; readonly strata: readonly MeasuredCell[] } {
  const found = new Map(values.map((each) => [keyOf(each.stratum), [each]]));
  return {
    all: measured({}, sumOf(finest), values),
    strata:
      by.length === 0
        ? []
        : groupsBy(finest, by).map(({ place, sums }) =>
            measured(place, sums, found.get(keyOf(place)) ?? []),
          ),
  };
}

const measured = (
  stratum: Stratum,
  sums: Sums,
  values: readonly StratumValues[],
): MeasuredCell => ({ stratum, ...sums, quantities: quantitiesOf(sums.indicators, values) });

/** Cells summed until they are told apart by these dimensions alone. */
export const summedBy = (finest: FinestCells, by: readonly Dimension[]): FinestCells =>
  groupsBy(finest, by).map(({ place, sums }) => ({ stratum: place, ...sums }));

/** The cells that a question is about, out of cells of whole years; days beside years do not count. */
export const withinAsked = (
  finest: FinestCells,
  { filters, from, to }: Asked,
): readonly CubeCell[] =>
  finest.filter(
    ({ stratum, year }) =>
      Object.entries<string | undefined>(filters).every(
        ([name, value]) => value === undefined || placeOf(stratum)[name] === value,
      ) &&
      (year === undefined ||
        ((from === undefined || from.slice(0, 4) <= year) &&
          (to === undefined || year <= to.slice(0, 4)))),
  );

interface Group {
  readonly place: Place;
  readonly sums: Sums;
}

/** In the order of their values. */
function groupsBy(finest: FinestCells, names: readonly string[]): readonly Group[] {
  const groups = new Map<string, { readonly place: Place; readonly cells: CubeCell[] }>();
  for (const cell of finest) {
    const { year } = cell;
    const all: Place = { ...cell.stratum, ...(year === undefined ? {} : { year }) };
    const place = Object.fromEntries(
      names.flatMap((name): readonly [string, string][] => {
        const value = all[name];
        return value === undefined ? [] : [[name, value]];
      }),
    );
    const key = keyOf(place);
    const group = groups.get(key) ?? { place, cells: [] };
    group.cells.push(cell);
    groups.set(key, group);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { place, cells }]) => ({ place, sums: sumOf(cells) }));
}

const placeOf = (stratum: Stratum): Readonly<Record<string, string>> => ({ ...stratum });

function sumOf(cells: readonly CountedCell[]): Sums {
  const indicators: { [Id in IndicatorId]: WordCounts } = { ...NO_CASES.indicators };
  for (const id of INDICATOR_IDS) {
    indicators[id] = cells.map((cell) => cell.indicators[id]).reduce(plus, indicators[id]);
  }
  return { cases: cells.reduce((sum, { cases }) => sum + cases, 0), indicators };
}

const plus = (a: WordCounts, b: WordCounts): WordCounts => ({
  yes: a.yes + b.yes,
  no: a.no + b.no,
  missing: a.missing + b.missing,
  'window-open': a['window-open'] + b['window-open'],
  'not-applicable': a['not-applicable'] + b['not-applicable'],
});
