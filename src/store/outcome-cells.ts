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

export const stratumOf = (
  row: readonly unknown[],
  by: readonly Dimension[],
  from: number,
): Stratum =>
  Object.fromEntries(by.map((dimension, i) => [dimension, String(row[from + i] ?? NOT_TOLD)]));

export function numberOf(value: unknown): number {
  invariant(typeof value === 'number', 'the database counts in numbers');
  return value;
}
