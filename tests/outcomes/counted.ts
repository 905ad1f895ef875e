import {
  type Counted,
  type CubeCell,
  countFollowUps,
  DIMENSIONS,
  type Dimension,
  INDICATOR_IDS,
  INDICATOR_WORDS,
  type IndicatorId,
  type IndicatorWord,
  type MeasuredCell,
  NO_CASES,
  type OutcomeQuery,
  type WordCounts,
} from '../../src/outcomes/index.js';

/** A case as its facts tell it, as far as it is counted here. */
export interface Row {
  readonly resectedOn: string;
  readonly place: { readonly [D in Dimension]?: string };
  readonly words: { readonly [Id in IndicatorId]?: IndicatorWord };
}

export const QUERY: OutcomeQuery = { filters: {}, by: [], interval: 'wilson', asOf: '2026-12-31' };

export function isAsked({ filters, from, to }: OutcomeQuery, row: Row): boolean {
  return (
    DIMENSIONS.every((each) => filters[each] === undefined || row.place[each] === filters[each]) &&
    (from === undefined || from <= row.resectedOn) &&
    (to === undefined || row.resectedOn <= to)
  );
}

function wordsOf(rows: readonly Row[]): Pick<MeasuredCell, 'cases' | 'indicators'> {
  const countsOf = (id: IndicatorId): WordCounts => {
    const counts = { yes: 0, no: 0, missing: 0, 'window-open': 0, 'not-applicable': 0 };
    for (const word of INDICATOR_WORDS) {
      counts[word] = rows.filter(({ words }) => (words[id] ?? 'not-applicable') === word).length;
    }
    return counts;
  };
  const indicators: { [Id in IndicatorId]: WordCounts } = { ...NO_CASES.indicators };
  for (const id of INDICATOR_IDS) indicators[id] = countsOf(id);
  return { cases: rows.length, indicators };
}

const valuesOf = (rows: readonly Row[], dimension: Dimension): readonly string[] => [
  ...new Set(rows.map(({ place }) => place[dimension] ?? 'not-told')),
];

/** Every combination of values that occurs, each dimension told or not. */
function placesOf(rows: readonly Row[], dimensions: readonly Dimension[]) {
  return dimensions.reduce<readonly Row['place'][]>(
    (places, dimension) =>
      places.flatMap((place) => [
        place,
        ...valuesOf(rows, dimension).map((value) => ({ ...place, [dimension]: value })),
      ]),
    [{}],
  );
}

const within = (rows: readonly Row[], place: Row['place']): readonly Row[] =>
  rows.filter((row) => isAsked({ ...QUERY, filters: place }, row));

function cubeOf(rows: readonly Row[], dimensions: readonly Dimension[]): readonly CubeCell[] {
  const years = [...new Set(rows.map(({ resectedOn }) => resectedOn.slice(0, 4)))];
  const cells = placesOf(rows, dimensions).flatMap((stratum): readonly CubeCell[] => {
    const all = within(rows, stratum);
    const ofYear = (year: string) => all.filter(({ resectedOn }) => resectedOn.startsWith(year));
    return [
      { stratum, ...wordsOf(all) },
      ...years.map((year) => ({ stratum, year, ...wordsOf(ofYear(year)) })),
    ];
  });
  return cells.filter(({ cases }) => cases > 0);
}

/** Counts rows by looking at each of them. */
export function counted(
  rows: readonly Row[],
  query: OutcomeQuery,
  more: Partial<Counted> = {},
): Counted {
  const asked = rows.filter((row) => isAsked(query, row));
  const told = DIMENSIONS.filter(
    (each) => query.filters[each] !== undefined || query.by.includes(each),
  );
  const strata = placesOf(asked, query.by).filter(
    (place) => Object.keys(place).length === query.by.length,
  );
  const measured = (stratum: Row['place'], cell: readonly Row[]): MeasuredCell => ({
    ...NO_CASES,
    stratum,
    ...wordsOf(cell),
  });
  return {
    all: measured({}, asked),
    strata: strata.map((stratum) => measured(stratum, within(asked, stratum))),
    cube: cubeOf(rows, told),
    followUps: countFollowUps([], '2026-01-01'),
    watched: [],
    judgedBy: [],
    ...more,
  };
}
