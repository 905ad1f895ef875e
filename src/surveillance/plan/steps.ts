import { addMonths, invariant } from '../../kernel/index.js';
import { ESGE_PPS_2020 } from '../esge-pps-2020.table.js';
import { FOLLOW_UPS, type FollowUpRow } from '../follow-ups.table.js';
import type { FollowUp, Then } from '../schedule.js';
import type { PlanTask, Window } from './follow-up-plan.js';
import { monthsAfter } from './item.js';
import type { ExaminationFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { askTrack, type Track } from './track.js';

/** Where a series stands: at an examination to come, or at its end. */
export type Step = ExaminationStep | EndStep;

export interface ExaminationStep {
  readonly kind: 'examination';
  readonly track: Track;
  readonly due: Window;
  /** The day that the window counts from. */
  readonly countsFrom: string;
  readonly thens: readonly Then[];
  /** Days from the anchor that are still to come, of a fixed calendar. */
  readonly calendar: readonly string[];
  readonly first: boolean;
  readonly reasons: readonly ReasonCode[];
}

export interface EndStep {
  readonly kind: 'end';
  readonly track: Track;
  readonly task: PlanTask;
  readonly countsFrom: string;
  readonly reasons: readonly ReasonCode[];
}

const TABLE: Readonly<Record<FollowUpRow, FollowUp>> = FOLLOW_UPS;

/**
 * The first step of a series.
 *
 * Source: the row of the follow-up table.
 */
export function firstStep(track: Track): Step {
  const { anchorOn } = track;
  const { schedule } = TABLE[track.row];
  switch (schedule.kind) {
    case 'window': {
      const { min, target, max, then } = schedule;
      return examination(track, monthsAfter(anchorOn, min, target, max), {
        thens: then,
        first: true,
      });
    }
    case 'calendar':
      return onCalendar(
        track,
        anchorOn,
        schedule.at.map((at) => addMonths(anchorOn, at)),
        true,
      );
    case 'none':
      return end(track, 'return-to-screening', anchorOn, []);
    case 'task':
      return end(track, schedule.task, anchorOn, []);
  }
}

/**
 * The step after an examination.
 *
 * Source: the row of the follow-up table.
 */
export function nextStep(step: ExaminationStep, done: ExaminationFacts): Step {
  const { track } = step;
  if (step.calendar.length > 0 || TABLE[track.row].schedule.kind === 'calendar') {
    const left = step.calendar.filter((day) => day > done.on);
    return onCalendar(track, done.on, left, false);
  }
  if (track.row === 'COL-1' || track.row === 'COL-1-clear') return afterFindings(step, done);
  return following(step, done.on, step.thens);
}

function following(step: ExaminationStep, on: string, thens: readonly Then[]): Step {
  const { track } = step;
  const [then, ...rest] = thens;
  if (then === undefined) return end(track, 'clinician-decision', on, ['schedule-complete']);
  if (then === 'by-findings') return end(track, 'clinician-decision', on, ['by-findings']);
  if (then === 'screening') return end(track, 'return-to-screening', on, []);
  if (then === 'COL-1') {
    return { ...asFirst({ ...track, row: 'COL-1', anchorOn: on }), first: false };
  }
  if (typeof then === 'number') {
    return examination(track, oneDay(addMonths(on, then)), { thens: rest, countsFrom: on });
  }
  const day = addMonths(on, then.every);
  if (then.until !== undefined && day > addMonths(track.anchorOn, then.until)) {
    return following(step, on, rest);
  }
  return examination(track, oneDay(day), { thens, countsFrom: on });
}

/** Who needs surveillance is asked at each examination after a polyp, not at the resection. */
function afterFindings(step: ExaminationStep, done: ExaminationFacts): Step {
  const { track } = step;
  const needing = done.findings === 'needing-surveillance';
  if (track.row === 'COL-1-clear' && !needing) return following(step, done.on, step.thens);
  const next = askTrack({
    rule: ESGE_PPS_2020,
    told: {
      stage: 'later',
      firstSurveillance: done.on,
      findings: needing ? 'needing-surveillance' : 'none',
    },
    anchorOn: done.on,
    local: false,
  });
  return { ...asFirst(next), first: false };
}

function asFirst(track: Track): ExaminationStep {
  const { schedule } = TABLE[track.row];
  const { anchorOn } = track;
  invariant(schedule.kind === 'window', 'a row that follows another has a window');
  const { min, target, max, then: thens } = schedule;
  return examination(track, monthsAfter(anchorOn, min, target, max), { thens });
}

function onCalendar(
  track: Track,
  countsFrom: string,
  days: readonly string[],
  first: boolean,
): Step {
  const [day, ...calendar] = days;
  if (day === undefined) {
    return end(track, 'clinician-decision', countsFrom, ['schedule-complete']);
  }
  return { ...examination(track, oneDay(day), { thens: [], countsFrom, first }), calendar };
}

interface More {
  readonly thens: readonly Then[];
  readonly countsFrom?: string;
  readonly first?: boolean;
}

function examination(track: Track, due: Window, more: More): ExaminationStep {
  const { thens, countsFrom = track.anchorOn, first = false } = more;
  return { kind: 'examination', track, due, countsFrom, thens, calendar: [], first, reasons: [] };
}

const end = (
  track: Track,
  task: PlanTask,
  countsFrom: string,
  reasons: readonly ReasonCode[],
): EndStep => ({ kind: 'end', track, task, countsFrom, reasons });

const oneDay = (day: string): Window => ({ earliest: day, target: day, latest: day });
