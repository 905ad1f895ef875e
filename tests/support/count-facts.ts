import {
  type Asked,
  type CubeCell,
  type Dimension,
  INDICATOR_IDS,
  INDICATOR_WORDS,
  type OutcomeCounts,
  type Quartiles,
} from '../../src/outcomes/index.js';
import type { StateToStore } from '../../src/pipeline/index.js';

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

/** Values in their order, and the value at a share of it: between two ranks by its distance. */
function at(sorted: readonly number[], share: number): number | null {
  const rank = share * (sorted.length - 1);
  const [below, above] = [sorted[Math.floor(rank)], sorted[Math.ceil(rank)]];
  if (below === undefined || above === undefined) return null;
  return below + (rank - Math.floor(rank)) * (above - below);
}

function quartilesOf(values: readonly (number | null)[]): Quartiles {
  const sorted = values.flatMap((each) => (each === null ? [] : [each])).sort((a, b) => a - b);
  const [q1, median, q3] = [at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75)];
  return { n: sorted.length, missing: values.length - sorted.length, q1, median, q3 };
}

function quantitiesOf(rows: readonly Facts[]) {
  const begun = rows.filter(({ enBloc }) => enBloc !== 'not-applicable');
  const examined = rows.filter(({ r0 }) => r0 !== 'not-applicable');
  return {
    speedCm2PerH: quartilesOf(begun.map(({ speedCm2PerH }) => speedCm2PerH)),
    sizeMm: quartilesOf(begun.map(({ lesionLongAxisMm }) => lesionLongAxisMm)),
    procedureMin: quartilesOf(begun.map(({ procedureMin }) => procedureMin)),
    pathologyDays: quartilesOf(examined.map(({ pathologyDays }) => pathologyDays)),
  };
}

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

/** Counts by looking at each row: what a store must agree with. */
export function countFacts(all: readonly Facts[]): OutcomeCounts {
  const within = (asked: Asked) => all.filter((facts) => isAsked(asked, facts));
  return {
    cells: async (asked, by, byYear) => {
      const rows = within(asked);
      if (by.length === 0 && !byYear) return [{ stratum: {}, ...cellOf(rows) }];
      const yearOf = ({ resectedOn }: Facts) => (byYear ? { year: resectedOn.slice(0, 4) } : {});
      return groups(rows, (facts) => ({ stratum: stratumOf(facts, by), ...yearOf(facts) })).map(
        ([place, some]) => ({ ...place, ...cellOf(some) }),
      );
    },
    quartiles: async (asked, by) => [
      { stratum: {}, quantities: quantitiesOf(within(asked)) },
      ...(by.length === 0 ? [] : groups(within(asked), (facts) => stratumOf(facts, by))).map(
        ([stratum, some]) => ({ stratum, quantities: quantitiesOf(some) }),
      ),
    ],
    firstChecks: async (asked) =>
      groups(within(asked), ({ firstCheckState, firstCheckTiming, firstCheckLatestOn }) => ({
        ...{ firstCheckState, firstCheckTiming },
        firstCheckLatestOn: firstCheckState === 'open' ? firstCheckLatestOn : null,
      })).map(([check, some]) => ({ ...check, cases: some.length })),
    watched: async (asked) =>
      groups(
        within(asked).filter(
          ({ resectedOn, recurrenceOn, lastCheckOn }) =>
            (recurrenceOn ?? lastCheckOn ?? '') >= resectedOn,
        ),
        ({ resectedOn, recurrenceOn, lastCheckOn }) => ({
          days: daysFrom(resectedOn, recurrenceOn ?? lastCheckOn ?? ''),
          recurred: recurrenceOn !== null,
        }),
      ).map(([watched, some]) => ({ ...watched, lesions: some.length })),
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
