import { addMonths, invariant, isCalendarDate } from '../kernel/index.js';
import type { Route } from './demand.js';
import type { Following } from './following.js';

/** A check of a plan and what comes after it. */
export interface PlannedCheck {
  /** Checks of one person by one route that fall into one month are one visit; absent: unknown. */
  readonly person?: string;
  readonly route: Route;
  /** YYYY-MM-DD */
  readonly targetOn: string;
  /** The date that `until` counts from, YYYY-MM-DD. */
  readonly anchorOn: string;
  readonly follows: readonly Following[];
}

/** Visits expected in a month, by route. */
export type MonthLoad = { readonly month: string } & Readonly<Record<Route, number>>;

export interface Forecast {
  /** Every month of the period, in order. */
  readonly months: readonly MonthLoad[];
  /** Plans that come to a check without a date within the period: the load may well be more. */
  readonly undated: number;
}

/**
 * The load to expect when every check takes place on its target and finds nothing new. A target
 * before the period is due still, so it counts on the first day, and what follows counts from it.
 *
 * @param fromOn first day of the period, YYYY-MM-DD; its month counts from that day
 * @param months length of the period, whole, 1 or more
 * @throws InvariantError when a date is none or an interval is not whole and above 0
 */
export function forecastLoad(
  checks: readonly PlannedCheck[],
  fromOn: string,
  months = 36,
): Forecast {
  invariant(isCalendarDate(fromOn), 'a period begins on a date');
  invariant(Number.isSafeInteger(months) && months > 0, 'a period has whole months, 1 or more');
  const firstOfMonth = `${fromOn.slice(0, 7)}-01`;
  const names = Array.from({ length: months }, (_, i) => addMonths(firstOfMonth, i).slice(0, 7));
  const loads = names.map((month) => ({ month, upper: 0, lower: 0, both: 0 }));
  const loadOf = new Map(loads.map((load) => [load.month, load]));
  const counted = new Set<string>();
  let undated = 0;
  for (const check of checks) {
    for (const on of datesOf(check, fromOn, addMonths(firstOfMonth, months))) {
      if (on === UNDATED) {
        undated += 1;
        continue;
      }
      if (isCounted(check, on, counted)) continue;
      const load = loadOf.get(on.slice(0, 7));
      invariant(load !== undefined, 'a date lies in the period');
      load[check.route] += 1;
    }
  }
  return { months: loads, undated };
}

/** Whether a visit of this month was counted for the same person; from now on it is. */
function isCounted({ person, route }: PlannedCheck, on: string, counted: Set<string>): boolean {
  if (person === undefined) return false;
  const visit = `${on.slice(0, 7)} ${route} ${person}`;
  const was = counted.has(visit);
  counted.add(visit);
  return was;
}

/** Stands for a date that only findings will give. */
const UNDATED = 'undated';

/** When a check and those that follow fall, up to the end of the period. */
function* datesOf(check: PlannedCheck, fromOn: string, endOn: string): Generator<string> {
  invariant([check.targetOn, check.anchorOn].every(isCalendarDate), 'a check has its dates');
  let on = check.targetOn < fromOn ? fromOn : check.targetOn;
  if (on >= endOn) return;
  yield on;
  for (const following of check.follows) {
    if ('word' in following) {
      yield UNDATED;
      return;
    }
    for (;;) {
      const next = nextOf(following, on, check.anchorOn);
      if (next === undefined) break;
      if (next >= endOn) return;
      on = next;
      yield on;
      if (!('every' in following)) break;
    }
  }
}

/** The day that follows another; undefined when a repeated interval is over, or a day is past. */
function nextOf(
  following: Exclude<Following, { readonly word: string }>,
  on: string,
  anchorOn: string,
): string | undefined {
  if ('on' in following) return following.on > on ? following.on : undefined;
  const months = 'every' in following ? following.every : following.after;
  invariant(Number.isSafeInteger(months) && months > 0, 'an interval is whole months, 1 or more');
  const next = addMonths(on, months);
  const until = 'every' in following ? following.until : undefined;
  return until === undefined || next <= addMonths(anchorOn, until) ? next : undefined;
}
