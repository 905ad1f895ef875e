import type { Problem } from '../kernel/index.js';
import type { CubeCell, Stratum } from './counts.js';
import type { OutcomeQuery, Period, SmallCellPolicy } from './question.js';
import { type CubeEntry, cubeOf, keyOf, type Place, subsetsOf } from './small-cells/cube.js';
import { hiddenPlaces } from './small-cells/hide.js';
import { DIMENSIONS, type Dimension, INDICATOR_IDS, type IndicatorId } from './words.js';

/** Dimensions of a cube at most: finer cells are nearly all small. */
const MOST_DIMENSIONS = 3;

/** What a cell shows. */
export type Measure = 'cases' | IndicatorId;

/** Says of each cell whether it may be shown. */
export interface Shown {
  readonly isShown: (stratum: Stratum, measure: Measure) => boolean;
}

export const ALL_SHOWN: Shown = { isShown: () => true };

/** Dimensions by which a question tells cases apart, in a fixed order. */
export const dimensionsOf = ({
  filters,
  by,
}: Pick<OutcomeQuery, 'filters' | 'by'>): readonly Dimension[] =>
  DIMENSIONS.filter((each) => filters[each] !== undefined || by.includes(each));

/**
 * Why a question cannot be answered with small counts hidden: two periods that differ by some days
 * give away the cases of these days, and cells of many dimensions are nearly all small.
 */
export function hiddenProblems(
  query: Pick<OutcomeQuery, 'from' | 'to' | 'filters' | 'by'>,
  { smallCells }: SmallCellPolicy,
): readonly Problem[] {
  if (smallCells === 'show') return [];
  const isFrom = query.from === undefined || query.from.endsWith('-01-01');
  const isTo = query.to === undefined || query.to.endsWith('-12-31');
  const count = dimensionsOf(query).length + Number(hasPeriod(query));
  return [
    ...(isFrom ? [] : [notWholeYears('/from', 'the first day of a year')]),
    ...(isTo ? [] : [notWholeYears('/to', 'the last day of a year')]),
    ...(count <= MOST_DIMENSIONS ? [] : [TOO_FINE]),
  ];
}

const notWholeYears = (pointer: string, expected: string): Problem => ({
  rule: 'period-too-fine',
  pointer,
  message: 'Where small counts are hidden, a period is made of whole years.',
  expected,
});

const TOO_FINE: Problem = {
  rule: 'question-too-fine',
  pointer: '/by',
  message: 'Where small counts are hidden, so many filters and strata leave small cells alone.',
  expected: `at most ${MOST_DIMENSIONS} of filters, strata and a period together`,
};

const hasPeriod = ({ from, to }: Period): boolean => from !== undefined || to !== undefined;

/** What is shown or hidden as a whole. */
export const MEASURES: readonly Measure[] = ['cases', ...INDICATOR_IDS];

type Asked = Pick<OutcomeQuery, 'from' | 'to' | 'filters' | 'by'>;

/** Keys of the places at which a measure is hidden. */
export type Hidden = ReadonlyMap<Measure, ReadonlySet<string>>;

/**
 * What of an answer may be shown. Several years are shown where each of them is, for then their
 * sum tells nothing new; a period of all years that have cases is no period, and says what the
 * answer without one says.
 *
 * @param cube of the dimensions of the question, all years and each of them
 */
export const shownIn = (query: Asked, cube: readonly CubeCell[], threshold: number): Shown =>
  shownBut(
    new Map(MEASURES.map((measure) => [measure, hiddenIn(query, cube, threshold, measure)])),
    query,
    cube,
  );

/** Where one measure is hidden: the longest part of the work, to be done in steps. */
export function hiddenIn(
  query: Asked,
  cube: readonly CubeCell[],
  threshold: number,
  measure: Measure,
): ReadonlySet<string> {
  const names = [...dimensionsOf(query), ...(hasPeriod(query) ? ['year'] : [])];
  const entries = cellsFor(query, cube).map((cell) => entryOf(cell, measure));
  return hiddenPlaces(cubeOf(names, entries), threshold);
}

/** @param hidden of every measure, for this question and cube */
export function shownBut(hidden: Hidden, query: Asked, cube: readonly CubeCell[]): Shown {
  const known = yearsOf(cellsFor(query, cube));
  const years = known.filter((year) => isYearOf(query, year));
  const isOfSome = hasPeriod(query) && years.length < known.length;
  return {
    isShown: (stratum, measure) => {
      const place: Place = { ...query.filters, ...stratum };
      const places = isOfSome ? years.map((year) => ({ ...place, year })) : [place];
      const keys = hidden.get(measure) ?? new Set();
      return places.every((each) => !isInHidden(each, keys));
    },
  };
}

const cellsFor = (query: Asked, cube: readonly CubeCell[]): readonly CubeCell[] =>
  hasPeriod(query) ? cube : cube.filter(({ year }) => year === undefined);

/**
 * What may not be small: of an indicator the outcomes "yes" and "no". How many are missing or have
 * their days open is shown beside them though it be small: it tells of records, not of what came
 * of a patient, and readers need it to know what a rate is worth. It gives no outcome away, for it
 * is told at the places alone at which "yes" and "no" are told: there, cases less missing, open and
 * not applicable are "yes" and "no" together; where these are hidden, nothing of it is told, so
 * that no sum of cases can be solved for them, not even by who knows how many are not applicable.
 *
 * Source: derived, by linear algebra and by the bounds of tables with given sums; the tests do both.
 */
function entryOf(cell: CubeCell, measure: Measure): CubeEntry {
  const place = { ...cell.stratum, ...(cell.year === undefined ? {} : { year: cell.year }) };
  if (measure === 'cases') return { place, counts: [cell.cases] };
  const { yes, no } = cell.indicators[measure];
  return { place, counts: [yes, no] };
}

const yearsOf = (cells: readonly CubeCell[]): readonly string[] => [
  ...new Set(cells.flatMap(({ year }) => (year === undefined ? [] : [year]))),
];

const isYearOf = ({ from, to }: Period, year: string): boolean =>
  (from === undefined || from.slice(0, 4) <= year) && (to === undefined || year <= to.slice(0, 4));

/** A cell without a case lies in no table; it is hidden where it lies in a hidden one. */
const isInHidden = (place: Place, hidden: ReadonlySet<string>): boolean =>
  subsetsOf(Object.keys(place)).some((names) =>
    hidden.has(keyOf(Object.fromEntries(names.map((name) => [name, place[name] ?? ''])))),
  );
