import { invariant } from '../kernel/index.js';
import type {
  CubeCell,
  Dimension,
  IndicatorId,
  IndicatorWord,
  Stratum,
} from '../outcomes/index.js';
import { eachWord, NOT_TOLD } from './outcome-statements.js';

/** Cases of one cell by their words; the number of words is read in one go for all that share it. */
interface Sum {
  readonly stratum: Stratum;
  readonly year: string | undefined;
  cases: number;
  readonly byWords: Map<number, number>;
}

/**
 * Sums up cells out of cases that share all of their words.
 *
 * @param from where the dimensions begin in a row, and after them the year where it is told apart
 */
export function createCells(by: readonly Dimension[], byYear: boolean, from: number) {
  const sums = new Map<string, Sum>();
  const places = by.map((_, i) => from + i);
  const yearAt = from + by.length;
  const told = byYear ? [...places, yearAt] : places;
  return {
    add: (row: Row, words: number, cases: number): void => {
      const key = keyAt(row, told);
      const sum = sums.get(key) ?? {
        ...{ stratum: stratumAt(row, by, places), cases: 0, byWords: new Map() },
        year: byYear ? String(row[yearAt]) : undefined,
      };
      sum.cases += cases;
      sum.byWords.set(words, (sum.byWords.get(words) ?? 0) + cases);
      sums.set(key, sum);
    },
    cells: (): readonly CubeCell[] => [...sums.values()].map(toCell),
  };
}

export type Row = readonly unknown[];

/** One text for each combination of what stands at some places; of one place what stands there. */
export function keyAt(row: Row, places: readonly number[]): string {
  const [first, ...others] = places;
  if (first === undefined) return '';
  return others.length === 0 ? String(row[first]) : JSON.stringify(places.map((at) => row[at]));
}

const toCell = ({ stratum, year, cases, byWords }: Sum): CubeCell => ({
  stratum,
  ...(year === undefined ? {} : { year }),
  cases,
  indicators: countsOf(byWords),
});

function countsOf(byWords: ReadonlyMap<number, number>): CubeCell['indicators'] {
  const counts: { readonly [Id in IndicatorId]: { [Word in IndicatorWord]: number } } = {
    ...{ enBloc: none(), r0: none(), curative: none() },
    ...{ intraproceduralPerforation: none(), delayedPerforation: none() },
    ...{ bleeding28d: none(), bleeding6h30d: none(), bleeding30dCsdb: none() },
    ...{ stricture: none(), conversionToSurgery: none(), death30d: none() },
    ...{ readmission30d: none(), adverseEvent30d: none(), residualOrRecurrence: none() },
  };
  for (const [number, cases] of byWords) {
    eachWord(number, (id, word) => {
      counts[id][word] += cases;
    });
  }
  return counts;
}

const none = () => ({ yes: 0, no: 0, missing: 0, 'window-open': 0, 'not-applicable': 0 });

export const stratumAt = (row: Row, by: readonly Dimension[], places: readonly number[]): Stratum =>
  Object.fromEntries(
    by.map((dimension, i) => [dimension, String(row[places[i] ?? 0] ?? NOT_TOLD)]),
  );

export function numberOf(value: unknown): number {
  invariant(typeof value === 'number', 'the database counts in numbers');
  return value;
}
