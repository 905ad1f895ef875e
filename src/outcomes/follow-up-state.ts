import { daysBetween } from '../kernel/index.js';
import type { FollowUpCounts } from './counts.js';

/** What the facts of a record tell of the first check. */
export interface FirstCheck {
  readonly firstCheckState: 'done' | 'open' | 'provisional' | 'lost' | 'ended' | 'not-planned';
  readonly firstCheckTiming: 'early' | 'in-window' | 'late' | null;
  /** Last calendar day of its window. */
  readonly firstCheckLatestOn: string | null;
}

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
  notPlanned: 'no day is planned: pathology is not final, or nothing follows',
};

/**
 * Where the first check after a resection stands.
 *
 * Source: derived from the windows of the follow-up plan.
 *
 * @param asOf calendar day
 */
export function followUpStateOf(first: FirstCheck, asOf: string): keyof FollowUpCounts {
  const { firstCheckState: state, firstCheckTiming: timing, firstCheckLatestOn: latest } = first;
  switch (state) {
    case 'done':
      return timing === 'late' ? 'late' : 'onTime';
    case 'lost':
    case 'ended':
      return state;
    case 'provisional':
    case 'not-planned':
      return 'notPlanned';
    case 'open':
      return latest === null ? 'notPlanned' : openState(daysBetween(latest, asOf));
  }
}

function openState(daysOver: number): keyof FollowUpCounts {
  if (daysOver <= 0) return 'notYetDue';
  return daysOver <= LOST_AFTER_DAYS ? 'overdue' : 'lost';
}
