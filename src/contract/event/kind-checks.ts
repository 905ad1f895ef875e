import type { CrossCheck } from '../cross-check.js';
import { EVENT_PARTS } from './parts.table.js';
import type { ReadableEvent } from './readable-event.js';

/** What is said fits the kind of the event. */
export const kindChecks: readonly CrossCheck<ReadableEvent>[] = [
  {
    rule: 'part-of-another-kind',
    message: 'This part does not belong to an event of this kind.',
    expected: 'the parts that the published schema gives to the kind',
    broken: (sent) => {
      const { kind } = sent;
      if (kind === undefined) return [];
      return EVENT_PARTS.filter(
        ({ part, kinds }) => sent[part] !== undefined && !kinds.includes(kind),
      ).map(({ part }) => `/${part}`);
    },
  },
  {
    rule: 'part-missing',
    message: 'An event of this kind says nothing without this part.',
    expected: 'surgery, meeting or status with the kind of event that is told there',
    broken: (sent) => {
      const { kind } = sent;
      if (kind === undefined) return [];
      return EVENT_PARTS.filter(
        ({ part, kinds, required }) => required && kinds.includes(kind) && sent[part] === undefined,
      ).map(({ part }) => `/${part}`);
    },
  },
  {
    rule: 'kind-denied',
    message: 'The course denies what the kind of the event says.',
    expected: 'course.readmitted and course.emergencyVisit true or absent where the kind says so',
    broken: ({ kind, course = {} }) => [
      ...(kind === 'readmission' && course.readmitted === false ? ['/course/readmitted'] : []),
      ...(kind === 'emergency-visit' && course.emergencyVisit === false
        ? ['/course/emergencyVisit']
        : []),
    ],
  },
  {
    rule: 'own-cause',
    message: 'The event is named as its own cause.',
    expected: 'the identifier of another event in causedBy',
    broken: ({ event = {}, causedBy = {} }) =>
      event.system !== undefined &&
      event.value !== undefined &&
      event.system === causedBy.system &&
      event.value === causedBy.value
        ? ['/causedBy']
        : [],
  },
];
