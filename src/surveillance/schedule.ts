import type { Citation } from '../kernel/index.js';
import { addMonths } from '../kernel/index.js';

/**
 * What follows an examination: months from it, once or again and again, a row, or a word. What is
 * repeated goes on for ever, or as long as it falls no later than so many months after the anchor.
 */
export type Then =
  | number
  | { readonly every: number; readonly until?: number }
  | 'by-findings'
  | 'screening'
  | 'COL-1';

/** A task for a person, where no date can be given. */
export type FollowUpTask =
  | 'multidisciplinary-meeting'
  | 'expert-centre'
  | 'clinician-decision'
  | 'await-pathology';

/** When to look again; months are calendar months from the anchor, each next from the one before. */
export type Schedule =
  | {
      readonly kind: 'window';
      readonly min: number;
      readonly target: number;
      readonly max: number;
      readonly then: readonly Then[];
    }
  /** Months from the anchor. */
  | { readonly kind: 'calendar'; readonly at: readonly number[] }
  | { readonly kind: 'none' }
  | { readonly kind: 'task'; readonly task: FollowUpTask };

/** A row of the follow-up table: its schedule, how to look, and who says so. */
export interface FollowUp {
  readonly schedule: Schedule;
  /** How and for what to look, in own words. */
  readonly look: string;
  readonly cites: readonly Citation[];
}

/**
 * A schedule as dates, in the short form of an answer.
 *
 * Source: arithmetic of the calendar.
 *
 * @param anchorOn the date it counts from; undefined when it is not known
 * @returns undefined when the schedule has dates and the anchor is not known
 */
export function inDates(schedule: Schedule, anchorOn: string | undefined): string | undefined {
  if (schedule.kind === 'none') return 'none';
  if (schedule.kind === 'task') return `task=${schedule.task}`;
  if (anchorOn === undefined) return undefined;
  const on = (months: number) => addMonths(anchorOn, months);
  if (schedule.kind === 'calendar') return `at=${schedule.at.map(on).join(',')}`;
  const { min, target, max, then } = schedule;
  const next = then.map(thenText).join(',');
  return `min=${on(min)};target=${on(target)};max=${on(max)};then=${next}`;
}

/**
 * @returns as `12`, `12*`, `6*until-36` or a word
 *
 * Source: how the worked examples write it.
 */
export function thenText(then: Then): string {
  if (typeof then !== 'object') return `${then}`;
  return then.until === undefined ? `${then.every}*` : `${then.every}*until-${then.until}`;
}
