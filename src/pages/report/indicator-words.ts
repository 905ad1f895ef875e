import { trimmedText } from '../../kernel/index.js';
import type {
  IndicatorResult,
  IntervalMethod,
  MissingBounds,
  OutcomeReport,
} from '../../outcomes/index.js';
import { type Content, element, together } from '../markup.js';
import { percentText, rangeText } from '../words.js';
import type { Column, Row } from './table.js';

/** What a table says where numbers are hidden: small ones, or others that would give them away. */
export const NOT_SHOWN = 'not shown: small numbers';

const METHOD_WORDS: { readonly [M in IntervalMethod]: string } = {
  wilson: 'Wilson score',
  'clopper-pearson': 'Clopper-Pearson',
};

const SMALL = together([' ', element('abbr', { title: 'small number' }, '!')]);

/** How intervals were made: `95 % interval (Wilson score)`. */
export function intervalText({ cells, query }: OutcomeReport): string {
  const [level] = cells.flatMap(({ indicators }) =>
    indicators.flatMap((result) => (result.kind === 'rate' ? [result.interval.level] : [])),
  );
  return level === undefined
    ? `interval (${METHOD_WORDS[query.interval]})`
    : intervalWords({ level, method: query.interval });
}

/** `95 % interval (Wilson score)`. */
export const intervalWords = ({
  level,
  method,
}: {
  readonly level: number;
  readonly method: IntervalMethod;
}): string => `${trimmedText(100 * level, 1)} % interval (${METHOD_WORDS[method]})`;

/** Columns of a table of rates, after the column of its heads. */
export const rateColumns = (head: string, report: OutcomeReport): readonly Column[] => [
  { title: head },
  { title: 'Rate', isNumber: true },
  { title: intervalText(report), isNumber: true },
  { title: 'Count', isNumber: true },
  { title: 'Out of (n)', isNumber: true },
  { title: 'Missing (rate, were they no to yes)', isNumber: true },
  { title: 'Window open', isNumber: true },
];

/** One result as the cells of such a table: beside what is missing, the ends of the rate. */
export function boundedCells(result: IndicatorResult): Row['cells'] {
  const cells = rateCells(result);
  if (typeof cells === 'string' || result.kind !== 'rate' || result.missing === 0) return cells;
  return cells.map((cell, i) => (i === MISSING ? withBounds(cell, result.bounds) : cell));
}

/** Which cell tells what is missing. */
const MISSING = 4;

const withBounds = (cell: Content, { ifNo, ifYes }: MissingBounds): Content =>
  together([
    cell,
    element('span', { class: 'remark' }, ` (${rangeText({ lower: ifNo, upper: ifYes })})`),
  ]);

/** One result as cells: rate, interval, count, out of, missing, open. */
export function rateCells(result: IndicatorResult): Row['cells'] {
  switch (result.kind) {
    case 'suppressed':
      return NOT_SHOWN;
    case 'no-rate': {
      const { missing, windowOpen } = result;
      return ['no rate', '–', '–', '0', String(missing), String(windowOpen)];
    }
    case 'rate':
      return [
        result.isSmall ? together([percentText(result.rate), SMALL]) : percentText(result.rate),
        rangeText(result.interval),
        String(result.numerator),
        String(result.denominator),
        String(result.missing),
        String(result.windowOpen),
      ];
  }
}
