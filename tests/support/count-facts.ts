import {
  type Asked,
  type CubeCell,
  type Dimension,
  type FirstCheckCount,
  INDICATOR_IDS,
  INDICATOR_WORDS,
  type OutcomeCounts,
  type StratumValues,
} from '../../src/outcomes/index.js';
import type { StateToStore } from '../../src/pipeline/index.js';
import type { CountedValue } from '../../src/statistics/index.js';

export type Facts = StateToStore['facts'];

const VALUE_OF: { readonly [D in Dimension]: (facts: Facts) => string } = {
  organ: ({ organ }) => organ,
  ruleSet: ({ curabilityRule }) => curabilityRule,
  sizeBand: ({ sizeBand }) => sizeBand,
  fibrosis: ({ fibrosis }) => fibrosis ?? 'not-told',
  technique: ({ technique }) => technique ?? 'not-told',
  operator: ({ operator }) => operator,
  traineeBand: ({ traineeBand }) => traineeBand,
};
const DIMENSIONS: readonly Dimension[] = [
  ...([
    'organ',
    'ruleSet',
    'sizeBand',
    'fibrosis',
    'technique',
    'operator',
    'traineeBand',
  ] as const),
];

/** Whether a case is among those that are asked for. */
export const isAsked = ({ filters, from, to }: Asked, facts: Facts): boolean =>
  !facts.withdrawn &&
  (from === undefined || facts.resectedOn >= from) &&
  (to === undefined || facts.resectedOn <= to) &&
  DIMENSIONS.every(
    (each) => filters[each] === undefined || filters[each] === VALUE_OF[each](facts),
  );

/** Values that occur among the rows, and how often. */
const valuesOf = (values: readonly (number | null)[]): readonly CountedValue[] =>
  [...new Set(values)].flatMap((value) =>
    value === null ? [] : [{ value, count: values.filter((each) => each === value).length }],
  );

function quantitiesOf(rows: readonly Facts[]): StratumValues['values'] {
  const begun = rows.filter(({ enBloc }) => enBloc !== 'not-applicable');
  const examined = rows.filter(({ r0 }) => r0 !== 'not-applicable');
  return {
    speedCm2PerH: valuesOf(begun.map(({ speedCm2PerH }) => toTenths(speedCm2PerH))),
    sizeMm: valuesOf(begun.map(({ lesionLongAxisMm }) => lesionLongAxisMm)),
    procedureMin: valuesOf(begun.map(({ procedureMin }) => toWhole(procedureMin))),
    pathologyDays: valuesOf(examined.map(({ pathologyDays }) => pathologyDays)),
  };
}

const toTenths = (value: number | null): number | null =>
  value === null ? null : Math.round(value * 10) / 10;

/** A half goes to the even neighbour, as in the round of PostgreSQL for binary fractions. */
function toWhole(value: number | null): number | null {
  if (value === null) return null;
  const below = Math.floor(value);
  const isHalf = value - below === 0.5;
  return isHalf ? below + (below % 2) : Math.round(value);
}

const hasValues = ({ values }: StratumValues): boolean =>
  Object.values(values).some((each) => each.length > 0);

function cellOf(rows: readonly Facts[]): Pick<CubeCell, 'cases' | 'indicators'> {
  const counts = INDICATOR_IDS.map((id) => [
    id,
    Object.fromEntries(
      INDICATOR_WORDS.map((word) => [word, rows.filter((facts) => facts[id] === word).length]),
    ),
  ]);
  return { cases: rows.length, indicators: Object.fromEntries(counts) };
}

const stratumOf = (facts: Facts, by: readonly Dimension[]) =>
  Object.fromEntries(by.map((each) => [each, VALUE_OF[each](facts)]));

/** Rows that are alike in something, in groups. */
function groups<T>(
  rows: readonly Facts[],
  alike: (facts: Facts) => T,
): readonly (readonly [T, readonly Facts[]])[] {
  const keys = new Map(rows.map((facts) => [JSON.stringify(alike(facts)), alike(facts)]));
  return [...keys].map(([key, value]) => [
    value,
    rows.filter((facts) => JSON.stringify(alike(facts)) === key),
  ]);
}

const daysFrom = (a: string, b: string): number => (Date.parse(b) - Date.parse(a)) / 86_400_000;

function cellsOf(
  rows: readonly Facts[],
  by: readonly Dimension[],
  byYear: boolean,
): readonly CubeCell[] {
  const yearOf = ({ resectedOn }: Facts) => (byYear ? { year: resectedOn.slice(0, 4) } : {});
  return groups(rows, (facts) => ({ stratum: stratumOf(facts, by), ...yearOf(facts) })).map(
    ([place, some]) => ({ ...place, ...cellOf(some) }),
  );
}

function checkOf({ firstCheckState: state, firstCheckTiming, firstCheckLatestOn }: Facts) {
  const isLate = state === 'done' && firstCheckTiming === 'late';
  const check: FirstCheckCount['check'] = isLate ? 'late' : state;
  return { check, openUntil: state === 'open' ? firstCheckLatestOn : null };
}

const isWatched = ({ resectedOn, recurrenceOn, lastCheckOn }: Facts): boolean =>
  (recurrenceOn ?? lastCheckOn ?? '') >= resectedOn;

/** Counts by looking at each row: what a store must agree with. */
export function countFacts(all: readonly Facts[]): OutcomeCounts {
  const within = (asked: Asked) => all.filter((facts) => isAsked(asked, facts));
  return {
    tally: async (asked, by) => {
      const rows = within(asked);
      return {
        cells: cellsOf(rows, by.cells, false),
        values: groups(rows, (facts) => stratumOf(facts, by.values))
          .map(([stratum, some]) => ({ stratum, values: quantitiesOf(some) }))
          .filter(hasValues),
        firstChecks: groups(rows, checkOf).map(([check, some]) => ({
          ...check,
          cases: some.length,
        })),
        watched: groups(rows.filter(isWatched), ({ resectedOn, recurrenceOn, lastCheckOn }) => ({
          days: daysFrom(resectedOn, recurrenceOn ?? lastCheckOn ?? ''),
          recurred: recurrenceOn !== null,
        })).map(([watched, some]) => ({ ...watched, lesions: some.length })),
      };
    },
    cells: async (asked, by, byYear) => cellsOf(within(asked), by, byYear),
    inOrder: async (asked, limit) =>
      within(asked)
        .toSorted(
          (a, b) =>
            (a.resectedOn < b.resectedOn ? -1 : Number(a.resectedOn > b.resectedOn)) ||
            Date.parse(a.scopeInAt) - Date.parse(b.scopeInAt) ||
            (a.caseId < b.caseId ? -1 : 1),
        )
        .slice(0, limit)
        .map(({ resectedOn: on, operator, organ, speedCm2PerH, specimenAreaCm2, ...words }) => ({
          ...{ on, operator, organ, speedCm2PerH, areaCm2: specimenAreaCm2 },
          words: {
            ...{ enBloc: words.enBloc, r0: words.r0, curative: words.curative },
            intraproceduralPerforation: words.intraproceduralPerforation,
          },
        })),
  };
}
