import { isBefore } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import { isStillToCome } from '../days.js';
import { dayOfTime, type Occurrence, sentAfter } from '../occurrence.js';
import type { ReadableEvent } from './readable-event.js';

export const occurrenceOf = (sent: ReadableEvent): Occurrence => ({
  on: sent.occurredOn,
  onAt: '/occurredOn',
  at: sent.occurredAt,
  atAt: '/occurredAt',
});

/** The times of one event in the order in which things happen. */
export const timeChecks: readonly CrossCheck<ReadableEvent>[] = [
  dayOfTime(occurrenceOf),
  sentAfter(occurrenceOf),
  {
    rule: 'course-before-onset',
    message: 'This was done or over before the event began.',
    expected: 'course.intervenedAt and course.resolvedOn at or after the onset',
    broken: ({ occurredOn, occurredAt, course: { intervenedAt, resolvedOn } = {} }) => [
      ...(isBefore(intervenedAt, occurredAt) ||
      (intervenedAt !== undefined && isStillToCome(occurredOn, intervenedAt))
        ? ['/course/intervenedAt']
        : []),
      ...(resolvedOn !== undefined && occurredOn !== undefined && resolvedOn < occurredOn
        ? ['/course/resolvedOn']
        : []),
    ],
  },
  {
    rule: 'sent-before-it-happened',
    message: 'This lies after the message that tells of it.',
    expected: 'a day or an instant at or before sentAt',
    broken: ({ sentAt, course: { intervenedAt, resolvedOn } = {} }) => [
      ...(isBefore(sentAt, intervenedAt) ? ['/course/intervenedAt'] : []),
      ...(isStillToCome(resolvedOn, sentAt) ? ['/course/resolvedOn'] : []),
    ],
  },
  {
    rule: 'status-of-the-future',
    message: 'The status covers days after the one on which it was learnt.',
    expected: 'status.untilOn on or before occurredOn',
    broken: ({ occurredOn, status = {} }) =>
      status.untilOn !== undefined && occurredOn !== undefined && status.untilOn > occurredOn
        ? ['/status/untilOn']
        : [],
  },
];
