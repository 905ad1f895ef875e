import { CLOPPER_PEARSON_CITES, KAPLAN_MEIER_CITES, WILSON_CITES } from '../statistics/index.js';
import { BOUNDS_CITES } from './bounds.js';
import { MISSING_IN_NO_RATE, NOT_ADJUSTED } from './cautions.js';
import { indicatorResult, quantityResult } from './cell-results.js';
import type { CubeCell, FollowUpCounts, MeasuredCell, WatchedFor } from './counts.js';
import { FOLLOW_UP_DEFINITIONS } from './follow-up-state.js';
import { INDICATORS, SPEED_BENCHMARKS } from './indicators.table.js';
import { mixedRules } from './judged-by.js';
import type { OutcomeQuery, SmallCellPolicy } from './question.js';
import { recurrenceCurve } from './recurrence-curve.js';
import type { JudgedBy, OutcomeReport, ReportCell } from './report.js';
import { ALL_SHOWN, type Shown, shownIn } from './shown.js';
import { isSafe } from './small-cells/hide.js';
import { INDICATOR_IDS, QUANTITY_IDS } from './words.js';

/** Fewer cases are not ranked. Source: common practice, no source. */
export const LEAST_FOR_RANKING = 10;

/** What a store has counted for a question. */
export interface Counted {
  /** All cases that are asked for, and each stratum. */
  readonly all: MeasuredCell;
  readonly strata: readonly MeasuredCell[];
  /** Of the dimensions of the question; where small counts are shown it is not looked at. */
  readonly cube: readonly CubeCell[];
  readonly followUps: FollowUpCounts;
  readonly watched: readonly WatchedFor[];
  readonly judgedBy: readonly JudgedBy[];
}

const CAUTIONS: readonly string[] = [
  NOT_ADJUSTED,
  MISSING_IN_NO_RATE,
  'An event is told sooner than its absence: where many are missing, rates of adverse outcomes are rather too high.',
  'One finding against a cure is a "no", and a "yes" needs all findings: where many are missing, the rate of curative resections is rather too low.',
  'Cases whose days are not over are in no rate, whatever has happened.',
  'The numbers change while records come in: an answer of another day may differ.',
];
const CAUTION_HIDDEN =
  'Small counts, and others that would give them away, are hidden. Follow-up and recurrence are then shown for all cases together alone. The rate of curative resections may mix verdicts of more rule sets than are named.';

/**
 * Makes the report of counted cells: rates with their intervals, quartiles, follow-up and the
 * curve of recurrence; numbers that may not be shown are left out.
 *
 * Source: each definition in the table of indicators, and the statistics.
 *
 * @param shown where it was found before, in steps
 */
export function toReport(
  query: OutcomeQuery,
  policy: SmallCellPolicy,
  counted: Counted,
  shown: Shown = shownOf(query, policy, counted.cube),
): OutcomeReport {
  const isHiding = policy.smallCells === 'hide';
  const cells = [{ ...counted.all, stratum: {} }, ...(query.by.length === 0 ? [] : counted.strata)];
  const recurrence =
    isHiding && !isAll(query) ? undefined : recurrenceCurve(counted.watched, policy);
  return {
    query,
    policy,
    cells: cells.map((cell) => toCell(cell, query, policy, shown)),
    ...(isHiding && !mayShow(counted.followUps, query, policy)
      ? {}
      : { followUp: counted.followUps }),
    ...(recurrence === undefined ? {} : { recurrence }),
    judgedBy: counted.judgedBy,
    definitions: INDICATORS,
    followUpDefinitions: FOLLOW_UP_DEFINITIONS,
    speedBenchmarks: SPEED_BENCHMARKS,
    sources: [
      ...(query.interval === 'wilson' ? WILSON_CITES : CLOPPER_PEARSON_CITES),
      ...BOUNDS_CITES,
      ...(recurrence === undefined ? [] : KAPLAN_MEIER_CITES),
    ],
    cautions: [...CAUTIONS, ...mixedRules(counted.judgedBy), ...(isHiding ? [CAUTION_HIDDEN] : [])],
    asOf: query.asOf,
  };
}

const shownOf = (
  query: OutcomeQuery,
  { smallCells, threshold }: SmallCellPolicy,
  cube: readonly CubeCell[],
): Shown => (smallCells === 'hide' ? shownIn(query, cube, threshold) : ALL_SHOWN);

/** These counts are in no cube: where they differ by a filter, the difference could be small. */
const isAll = ({ from, to, filters }: OutcomeQuery): boolean =>
  from === undefined &&
  to === undefined &&
  Object.values(filters).every((value) => value === undefined);

const mayShow = (counts: FollowUpCounts, query: OutcomeQuery, { threshold }: SmallCellPolicy) =>
  isAll(query) && Object.values(counts).every((count: number) => isSafe(count, threshold));

function toCell(
  { stratum, cases, indicators, quantities }: MeasuredCell,
  { interval }: OutcomeQuery,
  { smallCells, threshold }: SmallCellPolicy,
  { isShown }: Shown,
): ReportCell {
  const hasCases = isShown(stratum, 'cases');
  const isTold = (n: number): boolean =>
    smallCells === 'show' || (hasCases && isSafe(n, threshold));
  return {
    stratum,
    ...(hasCases ? { cases } : {}),
    isRankable: hasCases && cases >= LEAST_FOR_RANKING,
    indicators: INDICATOR_IDS.map((id) =>
      hasCases && isShown(stratum, id)
        ? indicatorResult(id, indicators[id], interval, threshold)
        : { id, kind: 'suppressed' },
    ),
    quantities: QUANTITY_IDS.map((id) =>
      isTold(quantities[id].n) && hasCases
        ? quantityResult(id, quantities[id])
        : { id, kind: 'suppressed' },
    ),
  };
}
