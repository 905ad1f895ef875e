import { roundTo } from '../kernel/index.js';
import { kaplanMeier, type SurvivalStep } from '../statistics/index.js';
import { LEVEL } from './cell-results.js';
import type { WatchedFor } from './counts.js';
import type { SmallCellPolicy } from './question.js';
import type { SurvivalCurve, SurvivalPoint } from './report.js';

const DAYS_PER_MONTH = 30.4375;
/** Decimals of a share that is not to give away when each event was. */
const COARSE_DECIMALS = 2;
/** More points than a picture can show; a curve with more of them has one a month. */
const MOST_POINTS = 240;

/**
 * Share of lesions without neoplasia at the scar. A recurrence is dated to the check that found
 * it, though it came some time before: the curve falls late.
 *
 * Source: kaplanMeier1958, see the statistics.
 *
 * @returns undefined where no lesion was checked, or where they are too few to be shown
 */
export function recurrenceCurve(
  watched: readonly WatchedFor[],
  { smallCells, threshold }: SmallCellPolicy,
): SurvivalCurve | undefined {
  const lesions = watched.reduce((sum, each) => sum + each.lesions, 0);
  const steps = kaplanMeier(
    watched.map(({ days, recurred, lesions: count }) => ({ time: days, event: recurred, count })),
    LEVEL,
  );
  if (lesions === 0) return undefined;
  const points = toPoints(steps, lesions);
  const isByMonth = smallCells === 'show' && points.length > MOST_POINTS;
  const isCoarsened = smallCells === 'hide';
  if (isCoarsened && lesions < threshold) return undefined;
  const told = isCoarsened ? coarsened(points, threshold) : points;
  return {
    ...{ lesions, events: eventsIn(told), level: LEVEL },
    ...{ points: isByMonth ? byMonth(told) : told, isByMonth, isCoarsened },
  };
}

function toPoints(steps: readonly SurvivalStep[], lesions: number): readonly SurvivalPoint[] {
  let last = { lower: 1, upper: 1 };
  const start = { months: 0, atRisk: lesions, events: 0, censored: 0, survival: 1, ...last };
  const points = steps.map(({ time, atRisk, events, censored, survival, interval }) => {
    last = interval ?? (survival === 0 ? { lower: 0, upper: last.upper } : last);
    return { months: time / DAYS_PER_MONTH, atRisk, events, censored, survival, ...last };
  });
  return points[0]?.months === 0 ? points : [start, ...points];
}

/** Joins the points of each month: what is left after it is exact, and falls at its last point. */
function byMonth(points: readonly SurvivalPoint[]): readonly SurvivalPoint[] {
  const joined = new Map<number, SurvivalPoint>();
  for (const point of points) {
    const month = Math.ceil(point.months);
    const before = joined.get(month) ?? { ...point, events: 0, censored: 0 };
    joined.set(month, {
      ...point,
      atRisk: before.atRisk,
      events: before.events + point.events,
      censored: before.censored + point.censored,
    });
  }
  return [...joined.values()];
}

/**
 * Joins points until each holds enough events, and ends where few lesions are left. All events are
 * told elsewhere: those after a point are none or not few either, else they are joined to it.
 */
function coarsened(points: readonly SurvivalPoint[], threshold: number): readonly SurvivalPoint[] {
  const shown: SurvivalPoint[] = [];
  let [events, censored, later] = [0, 0, eventsIn(points)];
  for (const point of points) {
    events += point.events;
    censored += point.censored;
    later -= point.events;
    const left = point.atRisk - point.events - point.censored;
    if (left < threshold) break;
    const isStart = point === points[0] && events === 0;
    const isTold = events >= threshold && (later === 0 || later >= threshold);
    if (!isStart && !isTold) continue;
    shown.push({
      months: roundTo(point.months, 1),
      atRisk: left + events + censored,
      events,
      censored,
      survival: roundTo(point.survival, COARSE_DECIMALS),
      lower: roundTo(point.lower, COARSE_DECIMALS),
      upper: roundTo(point.upper, COARSE_DECIMALS),
    });
    [events, censored] = [0, 0];
  }
  return shown;
}

const eventsIn = (points: readonly SurvivalPoint[]): number =>
  points.reduce((sum, { events }) => sum + events, 0);
