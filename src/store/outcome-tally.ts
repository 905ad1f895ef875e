import { invariant } from '../kernel/index.js';
import type {
  FirstCheckCount,
  QuantityId,
  StratumValues,
  Tally,
  ToldApart,
  WatchedFor,
} from '../outcomes/index.js';
import { createCells, keyAt, numberOf, type Row, stratumAt } from './outcome-cells.js';
import { checkIn, TALLIED } from './outcome-statements.js';

/** The rows of `tallyStatement` as what they tell. */
export function toTally(rows: readonly Row[], by: ToldApart): Tally {
  const cells = createCells(by.cells, false, 1);
  const told = 1 + by.cells.length;
  const values = createValues(by);
  const checks = new Map<FirstCheckCount['check'], number>();
  const openUntil: FirstCheckCount[] = [];
  const watched: WatchedFor[] = [];
  for (const row of rows) {
    const value = row[told];
    const cases = numberOf(row[row.length - 1]);
    const sort = sortOf(row);
    switch (sort) {
      case 'words': {
        const number = numberOf(row[told + 1]);
        cells.add(row, number, cases);
        const check = checkIn(number);
        checks.set(check, (checks.get(check) ?? 0) + cases);
        break;
      }
      case 'watched':
        watched.push(...watchedIn(value, cases));
        break;
      case 'openUntil':
        openUntil.push(...openIn(row[told + 2], cases));
        break;
      default:
        if (typeof value === 'number') values.add(row, sort, value, cases);
    }
  }
  return {
    ...{ cells: cells.cells(), values: values.all(), watched },
    firstChecks: firstChecksOf(checks, openUntil),
  };
}

/** A column that is told apart has no bit in `grouping`; the last column has the lowest one. */
const SORTS = new Map(
  TALLIED.map((sort, place) => [2 ** TALLIED.length - 1 - 2 ** (TALLIED.length - 1 - place), sort]),
);

function sortOf(row: Row): (typeof TALLIED)[number] {
  const sort = SORTS.get(numberOf(row[0]));
  invariant(sort !== undefined, 'a row of a tally is of one sort');
  return sort;
}

const openIn = (until: unknown, cases: number): readonly FirstCheckCount[] =>
  typeof until === 'string' ? [{ check: 'open', openUntil: until, cases }] : [];

/**
 * Twice the days, and one more where neoplasia was found. A check before the resection, which no
 * record should tell, watches nothing.
 */
function watchedIn(watched: unknown, lesions: number): readonly WatchedFor[] {
  if (typeof watched !== 'number' || watched < 0) return [];
  return [{ days: Math.floor(watched / 2), recurred: watched % 2 === 1, lesions }];
}

/** Those that are open are told by their days; what is left has none. */
function firstChecksOf(
  checks: ReadonlyMap<FirstCheckCount['check'], number>,
  openUntil: readonly FirstCheckCount[],
): readonly FirstCheckCount[] {
  const dated = openUntil.reduce((sum, { cases }) => sum + cases, 0);
  const others = [...checks].map(([check, cases]) => ({
    ...{ check, openUntil: null, cases: check === 'open' ? cases - dated : cases },
  }));
  return [...others, ...openUntil].filter(({ cases }) => cases > 0);
}

type Values = { readonly [Id in QuantityId]: { value: number; count: number }[] };

function createValues(by: ToldApart) {
  const strata = new Map<string, StratumValues & { readonly values: Values }>();
  const places = by.values.map((each) => 1 + by.cells.indexOf(each));
  return {
    add: (row: Row, id: QuantityId, value: number, count: number): void => {
      const key = keyAt(row, places);
      const stratum = strata.get(key) ?? {
        stratum: stratumAt(row, by.values, places),
        values: none(),
      };
      stratum.values[id].push({ value, count });
      strata.set(key, stratum);
    },
    all: (): readonly StratumValues[] => [...strata.values()],
  };
}

const none = (): Values => ({ speedCm2PerH: [], sizeMm: [], procedureMin: [], pathologyDays: [] });
