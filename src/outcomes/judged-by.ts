import { rollUp, summedBy } from './cells.js';
import type { CubeCell, FinestCells } from './counts.js';
import type { OutcomeQuery, SmallCellPolicy } from './question.js';
import type { JudgedBy } from './report.js';
import { hiddenIn, shownBut } from './shown.js';
import type { Dimension } from './words.js';

/** By what cells are told apart that tell the rule sets. */
export const JUDGED_BY: readonly Dimension[] = ['organ', 'ruleSet'];

/** The sets of a question with their cases. @param cells of the question, by `JUDGED_BY` or finer */
export const judgedBy = (cells: FinestCells): readonly JudgedBy[] =>
  inOrder(summedBy(cells, JUDGED_BY)).flatMap((cell) => {
    const judged = judgedIn(cell);
    return judged === 0 ? [] : [{ ...placeOf(cell), judged }];
  });

/**
 * The sets that may be told where small counts are hidden: those of the records of which the
 * answer by organ and rule set over all kept cases shows the number of cases, here without it. As
 * it is a part of one answer that anybody may ask for, and the same whatever the question, it tells
 * nothing new; a count within the question could be taken from that of another one.
 *
 * @param cells of all cases that are kept, by `JUDGED_BY`
 */
export function judgedByOfAll(
  cells: FinestCells,
  { filters }: Pick<OutcomeQuery, 'filters'>,
  { threshold }: Pick<SmallCellPolicy, 'threshold'>,
): readonly JudgedBy[] {
  const asked = { filters: {}, by: JUDGED_BY };
  const cube = rollUp(cells, JUDGED_BY);
  const hidden = new Map([['cases', hiddenIn(asked, cube, threshold, 'cases')]] as const);
  const { isShown } = shownBut(hidden, asked, cube);
  return inOrder(cells)
    .filter(({ stratum, cases }) => cases > 0 && isShown(stratum, 'cases'))
    .map(placeOf)
    .filter(({ organ }) => filters.organ === undefined || filters.organ === organ)
    .filter(({ ruleSet }) => filters.ruleSet === undefined || filters.ruleSet === ruleSet);
}

/** What a reader has to know of a rate over verdicts of several sets; empty: they are of one. */
export function mixedRules(sets: readonly JudgedBy[]): readonly string[] {
  const organs = [...new Set(sets.map(({ organ }) => organ))];
  const mixed = organs.flatMap((organ) => {
    const names = sets.filter((each) => each.organ === organ).map(({ ruleSet }) => ruleSet);
    return names.length < 2 ? [] : [`${organ}: ${names.join(', ')}`];
  });
  if (mixed.length === 0) return [];
  const isOfAll = sets.some(({ judged }) => judged === undefined);
  const says = isOfAll
    ? 'may mix verdicts by the rule sets of all kept cases'
    : 'mixes verdicts by several rule sets';
  return [
    `The rate of curative resections ${says} (${mixed.join('; ')}): each record keeps the set of the day on which it was judged. by=ruleSet tells them apart.`,
  ];
}

const judgedIn = ({ indicators: { curative } }: CubeCell): number => curative.yes + curative.no;

const placeOf = ({ stratum: { organ = '', ruleSet = '' } }: CubeCell) => ({ organ, ruleSet });

const inOrder = (cells: FinestCells): FinestCells =>
  cells.toSorted((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));

const nameOf = (cell: CubeCell): string => JSON.stringify(placeOf(cell));
