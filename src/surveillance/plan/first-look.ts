import { daysBetween } from '../../kernel/index.js';
import type { FollowUpPlan, PlanItem } from './follow-up-plan.js';
import { isToCome } from './item.js';
import type { PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';

const DAYS_PER_WEEK = 7;
/** After these nobody expects a look at the scar. */
const ENDED: readonly ReasonCode[] = ['withdrawn', 'death', 'surgery-done'];

/**
 * Weeks from the dissection to the first look that is planned or booked, whole or not.
 *
 * Source: arithmetic of the calendar; an appointment that holds counts more than its window.
 * Indeterminate: undefined once somebody has looked, and where nobody is to look any more.
 *
 * @returns `none` where no look is planned
 */
export function firstLookWeeks(
  { items }: FollowUpPlan,
  { esdOn, route }: Pick<PlanFacts, 'esdOn' | 'route'>,
): number | 'none' | undefined {
  const looks = items.filter((item) => item.kind === 'endoscopy' && item.route === route);
  const isOver = looks.some(({ reasons }) => reasons.some(({ code }) => ENDED.includes(code)));
  if (isOver || looks.some(({ state }) => state === 'done')) return undefined;
  const days = looks.filter(isToCome).flatMap((item) => dayOf(item) ?? []);
  const [first] = [...days].sort();
  return first === undefined ? 'none' : daysBetween(esdOn, first) / DAYS_PER_WEEK;
}

const dayOf = ({ booking, proposed, due }: PlanItem): string | undefined =>
  booking?.status === 'booked' ? booking.on : (proposed ?? due)?.target;
