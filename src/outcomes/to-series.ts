import { invariant } from '../kernel/index.js';
import {
  CUSUM_CITES,
  type CusumAims,
  cusumCurve,
  cusumParameters,
  quartiles,
} from '../statistics/index.js';
import type { CaseInOrder } from './counts.js';
import { SMALL_COUNTS } from './hidden-series.js';
import type { SeriesName, SmallCellPolicy } from './question.js';
import type { CusumSeries, HiddenSeries, LearningBlock, LearningCurve } from './series.js';
import { hasBegun, SERIES, THRESHOLDS, type ThresholdRow } from './series.table.js';
import type { IndicatorWord } from './words.js';

/**
 * Both cumulative sums of one outcome, one point a case that tells it.
 *
 * Source: cusumPrograms; the aims of each series, see its table.
 *
 * @param cases in the order of resection
 * @param aims instead of those of the series
 * @throws InvariantError for aims that are none
 */
export function cusumSeries(
  cases: readonly CaseInOrder[],
  name: SeriesName,
  { smallCells }: SmallCellPolicy,
  aims: CusumAims = SERIES[name].aims,
): CusumSeries | HiddenSeries {
  if (smallCells === 'hide') return SMALL_COUNTS;
  const { title, cites, of, hasFailed } = SERIES[name];
  const asked = cases.filter(({ words }) => words[of] !== 'not-applicable');
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
    step: parameters.step,
    lowerLimit: parameters.lowerLimit,
    upperLimit: parameters.upperLimit,
    points: cusumCurve(failures, aims.acceptable, parameters).map((point, i) => ({
      number: i + 1,
      on: told[i]?.on ?? '',
      ...point,
    })),
    missing: asked.length - told.length,
    cites: [...CUSUM_CITES, ...cites],
  };
}

/**
 * Rates and speed in blocks of cases, beside published levels.
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
): LearningCurve | HiddenSeries {
  invariant(Number.isSafeInteger(blockSize) && blockSize > 0, 'a block has a size');
  if (smallCells === 'hide') return SMALL_COUNTS;
  const begun = cases.filter(hasBegun);
  const count = Math.ceil(begun.length / blockSize);
  const blocks = Array.from({ length: count }, (_, i) =>
    blockOf(begun.slice(i * blockSize, (i + 1) * blockSize), i * blockSize),
  );
  const full = blocks.filter(({ fromCase, toCase }) => toCase - fromCase + 1 === blockSize);
  return {
    kind: 'learning-curve',
    blockSize,
    cases: begun.length,
    blocks,
    thresholds: THRESHOLDS.map((row) => {
      const { of: _of, atLeast: _atLeast, ...threshold } = row;
      const reached = reachedAt(full, row);
      return { ...threshold, ...(reached === undefined ? {} : { reachedAtCase: reached }) };
    }),
  };
}

function blockOf(cases: readonly CaseInOrder[], before: number): LearningBlock {
  const enBloc = rateOf(cases.map(({ words }) => words.enBloc));
  const r0 = rateOf(cases.map(({ words }) => words.r0));
  const curative = rateOf(cases.map(({ words }) => words.curative));
  const speed = quartiles(
    cases.flatMap(({ speedCm2PerH }) => (speedCm2PerH === null ? [] : [speedCm2PerH])),
  );
  return {
    fromCase: before + 1,
    toCase: before + cases.length,
    ...(enBloc === undefined ? {} : { enBlocRate: enBloc }),
    ...(r0 === undefined ? {} : { r0Rate: r0 }),
    ...(curative === undefined ? {} : { curativeRate: curative }),
    ...(speed === undefined ? {} : { medianSpeedCm2PerH: speed.median }),
  };
}

function rateOf(words: readonly IndicatorWord[]): number | undefined {
  const told = words.filter((word) => word === 'yes' || word === 'no');
  if (told.length === 0) return undefined;
  return told.filter((word) => word === 'yes').length / told.length;
}

/** The last case of the first block from which on every full block keeps the level. */
function reachedAt(
  full: readonly LearningBlock[],
  { of, atLeast }: ThresholdRow,
): number | undefined {
  const lastBelow = full.findLastIndex((block) => (block[of] ?? 0) < atLeast);
  return full[lastBelow + 1]?.toCase;
}
