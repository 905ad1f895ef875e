import { addDays, daysBetween } from '../../kernel/index.js';
import type { PlanItem, Window } from './follow-up-plan.js';
import { TOLERATED_SHARE } from './timed-items.table.js';

/**
 * How many days from a day still count as that day, by how long it was waited for.
 *
 * Source: project definition.
 */
export const toleratedDays = (from: string, day: string): number =>
  Math.floor(daysBetween(from, day) * TOLERATED_SHARE);

/**
 * Days around a window of a single day: nobody has a place on just that day, which may be a Sunday.
 * A longer window is its own room.
 *
 * Source: project definition.
 */
export function roomAround(due: Window, countsFrom: string): Window | undefined {
  const { earliest, target, latest } = due;
  const days = toleratedDays(countsFrom, target);
  if (earliest !== latest || days < 1) return undefined;
  return { earliest: addDays(target, -days), target, latest: addDays(target, days) };
}

/**
 * Days on which an appointment for an item raises no question.
 *
 * Source: project definition.
 */
export const daysFor = ({
  room,
  proposed,
  due,
}: Pick<PlanItem, 'room' | 'proposed' | 'due'>): Window | undefined => room ?? proposed ?? due;
