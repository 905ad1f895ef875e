import type { EventKind } from '../../contract/index.js';
import { daysBetween, type Finding } from '../../kernel/index.js';
import { type IndicatorWord, WINDOW_DAYS } from '../../outcomes/index.js';
import type { Assessed } from '../view.js';

/** The course after a procedure as the indicators read it. Days count from the procedure. */
export interface AfterCourse {
  /** Whether the days up to the last one are over, or somebody told until then. */
  readonly isOver: (lastDay: number) => boolean;
  /** Last day until which somebody said that nothing else happened; -1: nobody did. */
  readonly toldToDay: number;
  /** Last day on which the patient was seen or told to be alive; -1: none. */
  readonly aliveToDay: number;
  readonly dayOf: (on: string) => number;
}

/** Kinds that can be told of somebody who is not there any more. */
const WITHOUT_PATIENT: readonly EventKind[] = ['death', 'lost-to-follow-up', 'meeting-decision'];

/** Days are over once an as-of message, or anything of a later day, says so. */
export function courseOf({
  esdCase,
  events,
  examinations,
  afterwards,
}: Pick<Assessed, 'esdCase' | 'events' | 'examinations' | 'afterwards'>): AfterCourse {
  const from = esdCase.fields.times.scopeOutAt.slice(0, 10);
  const dayOf = (on: string): number => daysBetween(from, on);
  const untils = events.flatMap(({ fields: { status } }) =>
    status === undefined ? [] : [dayOf(status.untilOn)],
  );
  const examined = examinations.map(({ fields }) => dayOf(fields.examinedOn));
  const happened = events.map(({ fields }) => dayOf(fields.occurredOn));
  const lived = events
    .filter(({ fields }) => !WITHOUT_PATIENT.includes(fields.kind))
    .map(({ fields }) => dayOf(fields.occurredOn));
  const toldToDay = Math.max(-1, ...untils);
  const last = Math.max(-1, ...examined, ...happened);
  return {
    isOver: (lastDay) =>
      toldToDay >= lastDay ||
      last > lastDay ||
      (lastDay <= WINDOW_DAYS.others && afterwards.windowIsClosed),
    toldToDay,
    aliveToDay: Math.max(toldToDay, ...examined, ...lived),
    dayOf,
  };
}

/**
 * The word of an outcome that has its days. While they are not over it counts for nothing, even
 * where it has happened: else the youngest procedures would add events alone.
 */
export function wordInWindow(
  answer: boolean | undefined,
  { isOver }: AfterCourse,
  lastDay: number,
): IndicatorWord {
  return isOver(lastDay) ? wordOf(answer) : 'window-open';
}

/** @param answer undefined: nobody told */
export function wordOf(answer: boolean | undefined): IndicatorWord {
  if (answer === undefined) return 'missing';
  return answer ? 'yes' : 'no';
}

export const answerOf = (finding: Finding<'yes' | 'no'>): boolean | undefined =>
  finding.kind === 'determined' ? finding.value === 'yes' : undefined;
