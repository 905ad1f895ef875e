import { type UnitSettings, WEEKDAYS } from '../../contract/index.js';
import { addDays, daysBetween, weekdayOf } from '../../kernel/index.js';
import type { PlanItem, Window } from './follow-up-plan.js';

type Calendar = Pick<UnitSettings, 'closedWeekdays' | 'closedDays' | 'publicHolidays'>;

/**
 * A window on open days alone: its ends move inwards, its target to the nearest open day, of two
 * the earlier. It never leaves the window that it was.
 *
 * Source: project definition; the window is that of the rule.
 *
 * @returns undefined when every day of it is closed
 */
export function openWindow(due: Window, unit: Calendar): Window | undefined {
  const earliest = nextOpen(due.earliest, 1, due, unit);
  const latest = nextOpen(due.latest, -1, due, unit);
  if (earliest === undefined || latest === undefined) return undefined;
  const before = nextOpen(due.target, -1, due, unit);
  const after = nextOpen(due.target, 1, due, unit);
  return { earliest, target: nearer(due.target, before, after) ?? earliest, latest };
}

/**
 * The item with its window on open days, or a word that there is none.
 *
 * Source: project definition; the window is that of the rule.
 */
export function offClosedDays(item: PlanItem, unit: Calendar): PlanItem {
  if (item.due === undefined) return item;
  const proposed = openWindow(item.due, unit);
  return proposed === undefined ? { ...item, noOpenDay: true } : { ...item, proposed };
}

/** Whether the unit examines anybody on a day. */
function isOpen(day: string, unit: Calendar): boolean {
  const weekday = WEEKDAYS[weekdayOf(day) - 1];
  return !(
    unit.closedDays.includes(day) ||
    unit.publicHolidays.includes(day) ||
    unit.closedWeekdays.some((closed) => closed === weekday)
  );
}

function nextOpen(
  from: string,
  step: 1 | -1,
  { earliest, latest }: Window,
  unit: Calendar,
): string | undefined {
  for (let day = from; earliest <= day && day <= latest; day = addDays(day, step)) {
    if (isOpen(day, unit)) return day;
  }
  return undefined;
}

function nearer(
  target: string,
  before: string | undefined,
  after: string | undefined,
): string | undefined {
  if (before === undefined || after === undefined) return before ?? after;
  return daysBetween(before, target) <= daysBetween(target, after) ? before : after;
}
