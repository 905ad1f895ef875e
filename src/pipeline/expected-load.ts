import {
  type Forecast,
  forecastLoad,
  type PlannedCheck,
  readFollowing,
} from '../capacity/index.js';
import type { FollowUp } from './follow-ups.js';

/** The load to come by the present plans. */
export interface ExpectedLoad extends Forecast {
  /** Examinations that the plans have next, each with what follows it. */
  readonly plans: number;
  /** Of those, how many nobody is sure of: provisional, or to be confirmed. */
  readonly unsure: number;
}

/**
 * The visits to expect when every examination takes place on its target, or on the day that is
 * booked, and finds nothing new. Those of one patient by one route in one month are one visit.
 *
 * @param fromOn first day of the period, YYYY-MM-DD
 * @param months length of the period
 */
export function expectedLoad(
  followUps: readonly FollowUp[],
  fromOn: string,
  months = 36,
): ExpectedLoad {
  const next = followUps.filter(isToCome);
  const checks = next.flatMap(checkOf);
  const unsure = next.filter(({ item }) => item.state !== 'open').length;
  return { ...forecastLoad(checks, fromOn, months), plans: checks.length, unsure };
}

const isToCome = ({ item: { kind, state, due } }: FollowUp): boolean =>
  kind === 'endoscopy' &&
  due !== undefined &&
  (state === 'open' || state === 'to-confirm' || state === 'provisional');

function checkOf({ item, patient }: FollowUp): readonly PlannedCheck[] {
  const { route, due, proposed, booking, anchorOn, follows } = item;
  const booked = booking?.status === 'booked' ? booking.on : undefined;
  const targetOn = booked ?? proposed?.target ?? due?.target;
  if (targetOn === undefined) return [];
  const person = `${patient.system} ${patient.value}`;
  return [{ person, route, targetOn, anchorOn, follows: readFollowing(follows) }];
}
