import type { CaseFields, EventFields, ExaminationFields } from '../../contract/index.js';
import { determined, type Finding, indeterminate, minutesBetween } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { ReviewRemark } from '../assessment.js';
import { remarksOn } from '../review/check.js';
import { AFTER_CHECKS } from './after-checks.table.js';
import { daysAfter, startOfDay } from './after-days.js';
import type { Afterwards } from './afterwards.js';
import { type Course, findBleeding, hbDropGPerDl } from './bleeding-findings.js';
import { gradeEvent } from './event-grades.js';
import { GRADED_KINDS, LAST_DAY, UNTOWARD_KINDS } from './kinds.table.js';
import { findRecurrence } from './recurrences.js';

const WINDOW = [
  cite('agree2022', 'within 30 days, whatever the likelihood of a link', 'published'),
];

/**
 * What the events after a dissection mean.
 *
 * Source: the gradings and definitions that it asks.
 * Indeterminate: as long as nobody has said that nothing else happened. Time alone, as of which
 * the record is read, closes the window and is no answer.
 *
 * @param asOf instant as of which the record is read, where time itself was recorded
 */
export function assessEvents(
  fields: CaseFields,
  events: readonly EventFields[],
  examinations: readonly ExaminationFields[],
  asOf?: string,
): Afterwards {
  const { scopeOutAt } = fields.times;
  const dayOf = (on: string): number => daysAfter(scopeOutAt, on);
  const course: Course = {
    events,
    causedBy: (event) => events.filter(({ causedBy }) => isSame(causedBy, event.event)),
    knownToDay: Math.max(
      -1,
      ...events.flatMap(({ status }) => (status === undefined ? [] : [dayOf(status.untilOn)])),
    ),
  };
  const days = [
    ...events.map(({ occurredOn }) => dayOf(occurredOn)),
    ...examinations.map(({ examinedOn }) => dayOf(examinedOn)),
  ];
  return {
    grades: events
      .filter(({ kind }) => GRADED_KINDS.includes(kind))
      .map((event) => gradeEvent(event, course.causedBy(event), dayOf(event.occurredOn))),
    delayedBleeding: findBleeding(fields, course),
    adverseEvent30d: adverseEvent30d(course, dayOf),
    windowIsClosed:
      days.some((day) => day > LAST_DAY) ||
      (asOf !== undefined && minutesBetween(startOfDay(scopeOutAt, LAST_DAY + 1), asOf) >= 0),
    recurrences: examinations.map(findRecurrence),
    review: reviewEvents(events, dayOf),
  };
}

function adverseEvent30d(
  { events, knownToDay }: Course,
  dayOf: (on: string) => number,
): Finding<'yes' | 'no'> {
  const happened = events.some((event) => isUntoward(event) && dayOf(event.occurredOn) <= LAST_DAY);
  if (happened) return determined('yes', WINDOW);
  return knownToDay >= LAST_DAY ? determined('no', WINDOW) : indeterminate(['status.untilOn']);
}

const isUntoward = ({ kind, surgery }: EventFields): boolean =>
  UNTOWARD_KINDS.includes(kind) || surgery?.reason === 'adverse-event';

function reviewEvents(
  events: readonly EventFields[],
  dayOf: (on: string) => number,
): readonly ReviewRemark[] {
  const bleedingTold = events.some(({ kind }) => kind === 'delayed-bleeding');
  return events.flatMap((event) =>
    remarksOn(AFTER_CHECKS, {
      days: dayOf(event.occurredOn),
      hbDropGPerDl: hbDropGPerDl(event),
      bleedingTold,
    }),
  );
}

const isSame = (a: EventFields['causedBy'], b: EventFields['event']): boolean =>
  a !== undefined && a.system === b.system && a.value === b.value;
