import type { CaseInOrder } from './counts.js';
import { SMALL_COUNTS } from './hidden-series.js';
import { casesOver, type RanOver, speaksOf } from './organs.js';
import type { SmallCellPolicy } from './question.js';
import type { HiddenSeries, SpeedOfCase, SpeedSeries } from './series.js';
import { EXPERT_SPEED, hasBegun } from './series.table.js';

/** More points cover each other. Common practice, no source. */
const MOST_POINTS = 500;

/**
 * Speed against the area of the specimen. A dissection that never began has no speed, and is
 * neither a point nor missing. The published level stands beside cases of its organs alone.
 *
 * Source: colorectalLevel2020 for the level beside it.
 *
 * @param cases in the order of resection
 */
export function speedSeries(
  cases: readonly CaseInOrder[],
  { smallCells }: SmallCellPolicy,
  over: RanOver = {},
): SpeedSeries | HiddenSeries {
  if (smallCells === 'hide') return SMALL_COUNTS;
  const begun = casesOver(cases, over).filter(hasBegun);
  const told = begun.flatMap(pointOf);
  const { cites, organs, ...level } = EXPERT_SPEED;
  const isOfThese = speaksOf({ organs }, over.organs);
  return {
    kind: 'speed',
    points: thinned(told),
    told: told.length,
    missing: begun.length - told.length,
    over,
    ...(isOfThese ? { level } : {}),
    cites: isOfThese ? cites : [],
  };
}

function pointOf({ areaCm2, speedCm2PerH, organ }: CaseInOrder): readonly SpeedOfCase[] {
  return areaCm2 === null || speedCm2PerH === null ? [] : [{ areaCm2, speedCm2PerH, organ }];
}

/** Evenly over their order, the first one among them: the same cases whenever it is asked. */
function thinned(points: readonly SpeedOfCase[]): readonly SpeedOfCase[] {
  const isDrawn = (i: number): boolean =>
    Math.floor((i * MOST_POINTS) / points.length) !==
    Math.floor(((i - 1) * MOST_POINTS) / points.length);
  return points.length <= MOST_POINTS ? points : points.filter((_, i) => isDrawn(i));
}
