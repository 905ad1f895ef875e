import { invariant } from '../kernel/index.js';
import {
  type CubeCell,
  type Dimension,
  INDICATOR_IDS,
  type IndicatorId,
  type IndicatorWord,
  NO_CASES,
  NOT_TOLD,
  type Stratum,
} from '../outcomes/index.js';
import { wordsIn } from './outcome-statements.js';

/** Cases of one cell by their words; the number of words is read in one go for all that share it. */
interface Sum {
  readonly stratum: Stratum;
  readonly year: string | undefined;
  cases: number;
  readonly byWords: Map<number, number>;
}

/** Sums up cells out of cases that share all of their words. */
export function createCells(by: readonly Dimension[], byYear: boolean) {
  const sums = new Map<string, Sum>();
  return {
    /** @param row the dimensions, and the year where it is told apart, from its place on */
    add: (row: readonly unknown[], from: number, words: number, cases: number): void => {
      const place = row.slice(from, from + by.length + Number(byYear));
      const key = JSON.stringify(place);
      const sum = sums.get(key) ?? {
        ...{ stratum: stratumOf(row, by, from), cases: 0, byWords: new Map() },
        year: byYear ? String(row[from + by.length]) : undefined,
      };
      sum.cases += cases;
      sum.byWords.set(words, (sum.byWords.get(words) ?? 0) + cases);
      sums.set(key, sum);
    },
    cells: (): readonly CubeCell[] => [...sums.values()].map(toCell),
  };
}

const toCell = ({ stratum, year, cases, byWords }: Sum): CubeCell => ({
  stratum,
  ...(year === undefined ? {} : { year }),
  cases,
  indicators: countsOf(byWords),
});

function countsOf(byWords: ReadonlyMap<number, number>): CubeCell['indicators'] {
  const counts: { [Id in IndicatorId]: { [Word in IndicatorWord]: number } } = {
    ...NO_CASES.indicators,
  };
  for (const id of INDICATOR_IDS) counts[id] = { ...counts[id] };
  for (const [number, cases] of byWords) {
    for (const [id, word] of wordsIn(number)) counts[id][word] += cases;
  }
  return counts;
}

/** A fact that is open has a word of its own. */
export const stratumOf = (
  row: readonly unknown[],
  by: readonly Dimension[],
  from: number,
): Stratum =>
  Object.fromEntries(by.map((dimension, i) => [dimension, String(row[from + i] ?? NOT_TOLD)]));

export function numberAt(row: readonly unknown[], at: number): number {
  const value = row[at];
  invariant(typeof value === 'number', 'the database counts in numbers');
  return value;
}
