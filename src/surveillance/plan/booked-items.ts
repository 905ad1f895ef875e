import { type BookingCourse, bookingCourse } from './booking-of.js';
import type { PlanItem } from './follow-up-plan.js';
import { isToCome, reason, TIMED_RULE, withReasons } from './item.js';
import type { BookingWord, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { BOOKING_CHECK_ROW } from './timed-items.table.js';

/**
 * The items with what schedulers said of them. A booking changes neither state nor window of an
 * item, and what is booked stays booked whatever becomes of the item: the reasons say where the two
 * do not fit. A booking of an item that no plan of the present rules has stands on one of its own.
 *
 * Source: project definition.
 */
export function bookedItems(facts: PlanFacts, items: readonly PlanItem[]): readonly PlanItem[] {
  const words = wordsByItem(facts);
  const keys = new Set(items.map(({ key }) => key));
  const unknown = facts.supposed === true ? [] : [...words.keys()].filter((key) => !keys.has(key));
  return [...items, ...unknown.sort().map((key) => standIn(key, facts))].map((item) => {
    const course = bookingCourse(words.get(item.key) ?? []);
    return course === undefined ? item : withCourse(item, course);
  });
}

/**
 * Words of each item, in their order; the check of a booking is not booked itself.
 *
 * Source: project definition.
 */
export function wordsByItem({
  bookings = [],
}: PlanFacts): ReadonlyMap<string, readonly BookingWord[]> {
  const words = new Map<string, readonly BookingWord[]>();
  for (const word of bookings) {
    if (word.item.startsWith(BOOKING_CHECK_ROW)) continue;
    words.set(word.item, [...(words.get(word.item) ?? []), word]);
  }
  return words;
}

/**
 * Why an appointment on a day does not fit an item.
 *
 * Source: project definition; the window is that of the rule.
 *
 * @returns undefined where it fits
 */
export function mismatchOf(item: PlanItem, on: string): ReasonCode | undefined {
  const { state, doneBy } = item;
  const window = item.room ?? item.due;
  switch (state) {
    case 'superseded':
    case 'revoked':
      return 'booking-not-wanted';
    case 'done':
      return doneBy !== undefined && on > doneBy.on ? 'booking-after-done' : undefined;
    case 'provisional':
    case 'open':
    case 'to-confirm':
      return window !== undefined && (on < window.earliest || on > window.latest)
        ? 'booking-outside-window'
        : undefined;
  }
}

function withCourse(item: PlanItem, { status, booking }: BookingCourse): PlanItem {
  const told = booking === undefined ? item : { ...item, booking };
  switch (status) {
    case 'booked': {
      const mismatch = booking === undefined ? undefined : mismatchOf(item, booking.on);
      return mismatch === undefined ? told : withReasons(told, mismatch);
    }
    case 'cancelled':
      return isToCome(item) ? withReasons(told, 'booking-cancelled') : told;
    case 'did-not-attend':
      return isToCome(item) ? withReasons(told, 'did-not-attend') : told;
  }
}

/** Stands for an item that was planned by rules or settings of before. */
function standIn(key: string, { esdOn, route }: PlanFacts): PlanItem {
  const dot = key.lastIndexOf('.');
  return {
    key,
    kind: 'endoscopy',
    row: key.slice(0, dot),
    sequence: Number(key.slice(dot + 1)),
    first: false,
    ...TIMED_RULE,
    route,
    look: 'No plan of the present rules has it.',
    says: ['it was booked'],
    cites: [],
    basis: 'derived',
    inputs: {},
    anchorOn: esdOn,
    countsFrom: esdOn,
    follows: '',
    urgency: 'routine',
    state: 'superseded',
    reasons: [reason('not-planned-now')],
    overlaps: [],
  };
}
