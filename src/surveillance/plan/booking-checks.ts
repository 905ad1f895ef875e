import type { UnitSettings } from '../../contract/index.js';
import { addDays, laterOf } from '../../kernel/index.js';
import { mismatchOf, wordsByItem } from './booked-items.js';
import { type BookingCourse, bookingCourse } from './booking-of.js';
import { offClosedDays } from './closed-days.js';
import type { PlanItem, Window } from './follow-up-plan.js';
import { isToCome, reason, taskItem } from './item.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { BOOKING_CHECK_ROW, SETTLED_DAYS_BEFORE } from './timed-items.table.js';

/**
 * A task for each item whose booking does not fit: a person moves or cancels the appointment. It is
 * done when the last word on the appointment fits, or when the patient was examined on its day. Its
 * key is that of the item after the name of the task.
 *
 * Source: project definition.
 *
 * @param items with their bookings
 */
export function bookingChecks(
  facts: PlanFacts,
  items: readonly PlanItem[],
  unit: UnitSettings,
): readonly PlanItem[] {
  const words = wordsByItem(facts);
  return items.flatMap((item) => {
    const course = bookingCourse(words.get(item.key) ?? []);
    const check = course === undefined ? undefined : checkOf(item, course, facts);
    return check === undefined ? [] : [offClosedDays(check, unit)];
  });
}

function checkOf(item: PlanItem, course: BookingCourse, facts: PlanFacts): PlanItem | undefined {
  const { status, booking, bookedOn } = course;
  const on = status === 'booked' ? booking?.on : undefined;
  const mismatch = on === undefined ? undefined : mismatchOf(item, on);
  if (on === undefined || mismatch === undefined) {
    const last = bookedOn.filter((day) => didNotFit(item, day)).at(-1);
    if (last === undefined) return undefined;
    const settled = checkItem(item, course, last, facts, 'booking-settled');
    return { ...settled, state: 'done' };
  }
  const task = checkItem(item, course, on, facts, mismatch);
  const came = facts.examinations.find((each) => each.route === item.route && each.on === on);
  return came === undefined ? task : answered(task, came);
}

/** What was done fitted at some time before: then its window alone was held against the booking. */
const didNotFit = (item: PlanItem, day: string): boolean =>
  mismatchOf(item.state === 'done' ? { ...item, state: 'open' } : item, day) !== undefined;

function checkItem(
  item: PlanItem,
  { toldOn }: BookingCourse,
  bookedOn: string,
  { esdOn }: PlanFacts,
  code: ReasonCode,
): PlanItem {
  const countsFrom = toldOn < esdOn ? esdOn : toldOn;
  const task = taskItem({
    task: 'booking-check',
    row: BOOKING_CHECK_ROW,
    sequence: item.sequence,
    route: item.route,
    countsFrom,
    says: `booked on ${bookedOn}: ${item.key}`,
    reasons: [code],
  });
  const key = `${BOOKING_CHECK_ROW}-${item.key}`;
  return { ...task, key, about: item.key, due: daysToSettle(countsFrom, bookedOn, item) };
}

/**
 * Whether the appointment for an item needs nobody to look at it.
 *
 * Source: project definition.
 */
export const bookingFits = (items: readonly PlanItem[], key: string): boolean =>
  !items.some((item) => item.about === key && isToCome(item));

/**
 * Before the day of the appointment, and so early that the place can be given to somebody else.
 * Where the day lies after the window, while another one in it can still be had; where that is over,
 * soon: the day may be wrong, and whoever has an appointment is in no list of those without one.
 */
function daysToSettle(from: string, bookedOn: string, { room, due }: PlanItem): Window {
  const last = (room ?? due)?.latest ?? bookedOn;
  const soon = addDays(from, SETTLED_DAYS_BEFORE);
  const inTime = addDays(laterOf(last, soon), 1);
  const end = last < bookedOn && inTime < bookedOn ? inTime : bookedOn;
  return {
    earliest: from,
    target: laterOf(addDays(end, -SETTLED_DAYS_BEFORE), from),
    latest: laterOf(addDays(end, -1), from),
  };
}

const answered = (task: PlanItem, { id, on }: ExaminationFacts): PlanItem => ({
  ...task,
  state: 'done',
  reasons: [reason('examined-again')],
  doneBy: { kind: 'examination', id, on, timing: 'in-window' },
});
