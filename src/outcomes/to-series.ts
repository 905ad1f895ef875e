import { invariant } from '../kernel/index.js';
import {
  CUSUM_CITES,
  type CusumAims,
  cusumCurve,
  cusumParameters,
  quartiles,
  wilsonInterval,
} from '../statistics/index.js';
import { LEVEL } from './cell-results.js';
import type { CaseInOrder } from './counts.js';
import { aimsOfOthers, SMALL_COUNTS } from './hidden-series.js';
import { casesOver, type RanOver, ranOver, speaksOf } from './organs.js';
import type { Filters, SeriesName, SmallCellPolicy } from './question.js';
import type { CusumSeries, HiddenSeries, LearningBlock, LearningCurve } from './series.js';
import { hasBegun, SERIES, THRESHOLDS, type ThresholdRow } from './series.table.js';
import type { IndicatorWord } from './words.js';

/** What a question says of a curve. */
export interface CurveAsked {
  readonly filters: Filters;
  /** Instead of those of the series. */
  readonly aims: Partial<CusumAims>;
}

/**
 * Both cumulative sums of one outcome, one point a case that tells it. It runs over the organs of
 * which its aims speak, unless the question brings both rates or is about one organ; of another
 * organ there is no curve. A level in what fails is of its organs whatever the rates are.
 *
 * Source: cusumPrograms; the aims of each series, see its table.
 *
 * @param cases in the order of resection
 * @throws InvariantError for aims that are none
 */
export function cusumSeries(
  cases: readonly CaseInOrder[],
  name: SeriesName,
  { smallCells }: SmallCellPolicy,
  { filters, aims: other }: CurveAsked = { filters: {}, aims: {} },
): CusumSeries | HiddenSeries {
  if (smallCells === 'hide') return SMALL_COUNTS;
  const { title, cites, levelCites, of, hasFailed } = SERIES[name];
  const aims = { ...SERIES[name].aims, ...other };
  const hasOwn = other.acceptable !== undefined && other.unacceptable !== undefined;
  const isLevel = levelCites.length > 0;
  const { organs: aimsOf } = hasOwn && !isLevel ? {} : SERIES[name];
  const over = ranOver(filters, aimsOf);
  if (aimsOf !== undefined && !speaksOf({ organs: aimsOf }, over.organs)) {
    return aimsOfOthers(aimsOf, isLevel);
  }
  const applicable = cases.filter(({ words }) => words[of] !== 'not-applicable');
  const asked = casesOver(applicable, over);
  const told = asked.flatMap((one) => {
    const failed = hasFailed(one);
    return failed === undefined ? [] : [{ on: one.on, failed }];
  });
  const parameters = cusumParameters(aims);
  const failures = told.map(({ failed }) => failed);
  return {
    kind: 'cusum',
    series: name,
    title,
    aims,
    ...(aimsOf === undefined ? {} : { aimsOf }),
    over,
    ofOtherOrgans: applicable.length - asked.length,
    step: parameters.step,
    lowerLimit: parameters.lowerLimit,
    upperLimit: parameters.upperLimit,
    points: cusumCurve(failures, aims.acceptable, parameters).map((point, i) => ({
      number: i + 1,
      on: told[i]?.on ?? '',
      ...point,
    })),
    missing: asked.length - told.length,
    cites: [...CUSUM_CITES, ...levelCites, ...(hasOwn ? [] : cites)],
  };
}

/**
 * Rates and speed in blocks of cases, beside published levels of the same organs.
 *
 * Source: each row of the table of thresholds.
 *
 * @param cases of one operator, in the order of resection; one that never began is no case of it
 * @param blockSize cases of a block, 1 or more; the last one may be smaller
 * @throws InvariantError for a block of no size
 */
export function learningCurve(
  cases: readonly CaseInOrder[],
  { smallCells }: SmallCellPolicy,
  blockSize = 20,
  over: RanOver = {},
): LearningCurve | HiddenSeries {
  invariant(Number.isSafeInteger(blockSize) && blockSize > 0, 'a block has a size');
  if (smallCells === 'hide') return SMALL_COUNTS;
  const begun = casesOver(cases, over).filter(hasBegun);
  const count = Math.ceil(begun.length / blockSize);
  const blocks = Array.from({ length: count }, (_, i) =>
    blockOf(begun.slice(i * blockSize, (i + 1) * blockSize), i * blockSize),
  );
  const full = blocks.filter(({ fromCase, toCase }) => toCase - fromCase + 1 === blockSize);
  return {
    kind: 'learning-curve',
    blockSize,
    cases: begun.length,
    over,
    blocks,
    thresholds: THRESHOLDS.map((row) => {
      const isOfThese = speaksOf(row, over.organs);
      const reached = isOfThese ? reachedAt(full, row) : undefined;
      return {
        ...row,
        isOfThese,
        ...(reached === undefined ? {} : { reachedAtCase: reached }),
      };
    }),
  };
}

function blockOf(cases: readonly CaseInOrder[], before: number): LearningBlock {
  const enBlocRate = countOf(cases.map(({ words }) => words.enBloc));
  const r0Rate = countOf(cases.map(({ words }) => words.r0));
  const curativeRate = countOf(cases.map(({ words }) => words.curative));
  const speed = quartiles(
    cases.flatMap(({ speedCm2PerH }) => (speedCm2PerH === null ? [] : [speedCm2PerH])),
  );
  const told = Object.entries({ enBlocRate, r0Rate, curativeRate }).flatMap(([id, count]) =>
    count === undefined ? [] : [[id, count] as const],
  );
  return {
    fromCase: before + 1,
    toCase: before + cases.length,
    ...Object.fromEntries(told.map(([id, { events, of }]) => [id, events / of])),
    counts: Object.fromEntries(told),
    ...(speed === undefined ? {} : { medianSpeedCm2PerH: speed.median }),
  };
}

/** @returns undefined where nobody told it */
function countOf(words: readonly IndicatorWord[]) {
  const events = words.filter((word) => word === 'yes').length;
  const of = events + words.filter((word) => word === 'no').length;
  const interval = wilsonInterval({ events, of }, LEVEL);
  return interval.kind === 'determined' ? { events, of, ...interval.value } : undefined;
}

/** The last case of the first block from which on every full block keeps the level. */
function reachedAt(
  full: readonly LearningBlock[],
  { of, atLeast }: ThresholdRow,
): number | undefined {
  const lastBelow = full.findLastIndex((block) => (block[of] ?? 0) < atLeast);
  return full[lastBelow + 1]?.toCase;
}
