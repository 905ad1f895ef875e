import type { Problem } from '../../kernel/index.js';
import { problemsAgainstCase, samePatient, type WithCase } from '../against-case.js';
import type { CaseFields } from '../case/case.js';
import type { CrossCheck } from '../cross-check.js';
import { isEarlierDay } from '../days.js';
import { placesBefore } from '../occurrence.js';
import type { EventFields } from './event.js';
import { occurrenceOf } from './time-checks.js';

/** Contradictions between an event and its case. Project rules. */
export const EVENT_CASE_CHECKS: readonly CrossCheck<WithCase<EventFields>>[] = [
  samePatient,
  {
    rule: 'before-procedure',
    message: 'This lies before the end of the procedure that it followed.',
    expected: 'a day and an instant at or after times.scopeOutAt of the case',
    broken: ({ sent, esd: { times } }) => [
      // A patient may die while the scope is in; all else comes later by its meaning.
      ...placesBefore(
        occurrenceOf(sent),
        sent.kind === 'death' ? times.scopeInAt : times.scopeOutAt,
      ),
      ...(isEarlierDay(sent.status?.untilOn, times.scopeOutAt) ? ['/status/untilOn'] : []),
    ],
  },
];

/** Holds an event against its case; see `problemsAgainstCase`. */
export function checkEventAgainstCase(sent: EventFields, esd: CaseFields): readonly Problem[] {
  return problemsAgainstCase(EVENT_CASE_CHECKS, sent, esd);
}
