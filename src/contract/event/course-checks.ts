import type { CrossCheck } from '../cross-check.js';
import type { ReadableEvent } from './readable-event.js';

/** What was done, and that nothing was done, cannot both be said. */
export const courseChecks: readonly CrossCheck<ReadableEvent>[] = [
  {
    rule: 'intervention-denied',
    message: 'An intervention is denied, yet it is described.',
    expected: 'no time, anaesthesia or haemostasis where course.intervention is none',
    broken: ({ course = {}, bleeding = {} }) =>
      course.intervention !== 'none'
        ? []
        : [
            ...(course.intervenedAt !== undefined ? ['/course/intervenedAt'] : []),
            ...(course.underGeneralAnaesthesia === true ? ['/course/underGeneralAnaesthesia'] : []),
            ...(bleeding.haemostasis !== undefined && bleeding.haemostasis.length > 0
              ? ['/bleeding/haemostasis']
              : []),
          ],
  },
];
