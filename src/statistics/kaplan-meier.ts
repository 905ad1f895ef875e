import { type Citation, invariant } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { checkShare, type Interval } from './counts.js';
import { normalQuantile } from './distributions.js';

export const KAPLAN_MEIER_CITES: readonly Citation[] = [
  cite('kaplanMeier1958', 'product of the shares that go on at each event', 'recalled'),
  cite('greenwood1926', 'standard error of the share', 'recalled'),
  cite('kalbfleischPrentice1980', 'interval by log(-log), which stays within 0 and 1', 'recalled'),
];

/** As many of a group as were watched for the same time, and how that ended. */
export interface Watched {
  /** Time of the event, or of the last look without one; 0 or more, any unit. */
  readonly time: number;
  readonly event: boolean;
  readonly count: number;
}

/** One time at which an event happened or watching ended. */
export interface SurvivalStep {
  readonly time: number;
  /** Watched up to just before. */
  readonly atRisk: number;
  readonly events: number;
  readonly censored: number;
  /** Share of 0 to 1 without an event after this time. */
  readonly survival: number;
  /** Greenwood's standard error of the share. */
  readonly standardError: number;
  /** Absent where the share is 0 or 1: the scale has no such point. */
  readonly interval?: Interval;
}

/**
 * Share that goes on without the event, where watching ends at different times. An event and an
 * end of watching at the same time: the event came first.
 *
 * Source: kaplanMeier1958; standard error by greenwood1926; interval
 * S^exp(-/+ z se / (S ln S)) by kalbfleischPrentice1980 (all from memory).
 *
 * @param level of confidence, above 0 and below 1
 * @returns one step a time, ascending; none where nobody was watched
 * @throws InvariantError for a negative time, a count below 1 or no such level
 */
export function kaplanMeier(watched: readonly Watched[], level: number): readonly SurvivalStep[] {
  checkShare('a level', level);
  const sound = watched.every(
    ({ time, count }) =>
      time >= 0 && Number.isFinite(time) && Number.isSafeInteger(count) && count > 0,
  );
  invariant(sound, 'times are 0 or more, and counts are whole and above 0');
  const z = normalQuantile((1 + level) / 2);
  const times = [...countsByTime(watched)].sort(([a], [b]) => a - b);
  let atRisk = total(watched);
  let survival = 1;
  let variance = 0;
  return times.map(([time, { events, censored }]) => {
    if (events > 0) {
      survival *= (atRisk - events) / atRisk;
      variance += events / (atRisk * (atRisk - events));
    }
    const step = { time, atRisk, events, censored, ...spread(survival, variance, z) };
    atRisk -= events + censored;
    return step;
  });
}

/** In one pass: the times may be as many as days. */
function countsByTime(
  watched: readonly Watched[],
): ReadonlyMap<number, { readonly events: number; readonly censored: number }> {
  const counts = new Map<number, { events: number; censored: number }>();
  for (const { time, event, count } of watched) {
    const at = counts.get(time) ?? { events: 0, censored: 0 };
    at[event ? 'events' : 'censored'] += count;
    counts.set(time, at);
  }
  return counts;
}

const total = (watched: readonly Watched[]): number =>
  watched.reduce((sum, { count }) => sum + count, 0);

/** @param variance Greenwood's sum; infinite once nobody is left */
function spread(survival: number, variance: number, z: number) {
  if (survival === 0) return { survival, standardError: 0 };
  const standardError = survival * Math.sqrt(variance);
  if (survival === 1) return { survival, standardError };
  const width = (z * Math.sqrt(variance)) / Math.abs(Math.log(survival));
  return {
    survival,
    standardError,
    interval: {
      lower: survival ** Math.exp(width),
      upper: survival ** Math.exp(-width),
    },
  };
}
