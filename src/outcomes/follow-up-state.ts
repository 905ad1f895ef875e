import { addDays } from '../kernel/index.js';
import type { FirstCheckCount, FollowUpCounts } from './counts.js';

/** Days after the window from which nobody expects the check any more: common practice, no source. */
export const LOST_AFTER_DAYS = 183;

/** For readers. Derived: no source defines them for dissections. */
export const FOLLOW_UP_DEFINITIONS: { readonly [State in keyof FollowUpCounts]: string } = {
  onTime: 'the first check took place by the last day of its window',
  late: 'the first check took place after its window',
  notYetDue: 'not done, and the window is not over',
  overdue: `not done, and the window is over by ${LOST_AFTER_DAYS} days or less`,
  lost: `the patient could not be reached, or the window is over by more than ${LOST_AFTER_DAYS} days`,
  ended: 'not wanted any more: death, surgery or refusal came first',
  unplanned: 'no day was planned, and the scar was looked at all the same',
  notPlanned: 'no day is planned, and nobody looked: no verdict yet, or nothing follows',
};

/**
 * Where first checks after resections stand.
 *
 * Source: derived from the windows of the follow-up plan.
 *
 * @param asOf calendar day
 */
export function countFollowUps(checks: readonly FirstCheckCount[], asOf: string): FollowUpCounts {
  const counts = { ...NOBODY };
  const days: Days = { asOf, overdueFrom: addDays(asOf, -LOST_AFTER_DAYS) };
  for (const check of checks) counts[stateOf(check, days)] += check.cases;
  return counts;
}

/** Calendar days; as text they sort as days. */
interface Days {
  readonly asOf: string;
  /** Last day of a window that is over and not yet lost. */
  readonly overdueFrom: string;
}

function stateOf({ check, openUntil }: FirstCheckCount, days: Days): keyof FollowUpCounts {
  switch (check) {
    case 'done':
      return 'onTime';
    case 'late':
    case 'lost':
    case 'ended':
    case 'unplanned':
      return check;
    case 'provisional':
    case 'not-planned':
      return 'notPlanned';
    case 'open':
      return openUntil === null ? 'notPlanned' : openState(openUntil, days);
  }
}

function openState(until: string, { asOf, overdueFrom }: Days): keyof FollowUpCounts {
  if (until >= asOf) return 'notYetDue';
  return until >= overdueFrom ? 'overdue' : 'lost';
}

const NOBODY: FollowUpCounts = {
  onTime: 0,
  late: 0,
  notYetDue: 0,
  overdue: 0,
  lost: 0,
  ended: 0,
  unplanned: 0,
  notPlanned: 0,
};
