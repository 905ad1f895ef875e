import { isBefore, isSame } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadableCase } from './readable-case.js';

/** The steps of a procedure in the order in which they happen. */
const STEPS = [
  'scopeInAt',
  'firstInjectionAt',
  'firstIncisionAt',
  'dissectionEndAt',
  'scopeOutAt',
] as const;
type Step = (typeof STEPS)[number];

/** Steps between which time must pass; all others may fall together. */
const TIME_MUST_PASS: readonly (readonly [Step, Step])[] = [
  ['scopeInAt', 'scopeOutAt'],
  ['firstIncisionAt', 'dissectionEndAt'],
];

export const timeChecks: readonly CrossCheck<ReadableCase>[] = [
  {
    rule: 'CC-01',
    message: 'The times of the procedure are not in the order in which things happen.',
    expected: `${STEPS.join(' <= ')}, with time between scope in and out, and incision and end`,
    broken: ({ times = {} }) => {
      const present = STEPS.filter((step) => times[step] !== undefined);
      const outOfOrder = present.filter((step, i) => {
        const previous = present[i - 1];
        return previous !== undefined && isBefore(times[step], times[previous]);
      });
      const without = TIME_MUST_PASS.filter(([from, to]) => isSame(times[from], times[to]));
      return [...new Set([...outOfOrder, ...without.map(([, to]) => to)])].map(
        (step) => `/times/${step}`,
      );
    },
  },
  {
    rule: 'CC-01',
    message: 'This happened outside of the time from scope in to scope out.',
    expected: 'an instant from times.scopeInAt to times.scopeOutAt',
    broken: ({ times = {}, ...rest }) =>
      instantsWithin(rest)
        .filter(([at]) => isBefore(at, times.scopeInAt) || isBefore(times.scopeOutAt, at))
        .map(([, pointer]) => pointer),
  },
  {
    rule: 'sent-before-end',
    message: 'The case was sent before the procedure ended.',
    expected: 'sentAt at or after times.scopeOutAt',
    broken: ({ sentAt, times = {} }) => (isBefore(sentAt, times.scopeOutAt) ? ['/sentAt'] : []),
  },
  {
    rule: 'born-after-procedure',
    message: 'The date of birth lies after the procedure.',
    expected: 'patient.bornOn on or before the day of times.scopeInAt',
    broken: ({ patient = {}, times = {} }) =>
      patient.bornOn !== undefined &&
      times.scopeInAt !== undefined &&
      patient.bornOn > times.scopeInAt.slice(0, 10)
        ? ['/patient/bornOn']
        : [],
  },
];

type Timed = readonly [at: string | undefined, pointer: string];

/** Every instant that lies between scope in and scope out by its meaning. */
function instantsWithin({ specimen, safety, dissection }: Omit<ReadableCase, 'times'>): Timed[] {
  return [
    [specimen?.retrievedAt, '/specimen/retrievedAt'],
    [safety?.siteInspection?.inspectedAt, '/safety/siteInspection/inspectedAt'],
    [safety?.perforation?.at, '/safety/perforation/at'],
    ...(safety?.vessels ?? []).map(({ at }, i): Timed => [at, `/safety/vessels/${i}/at`]),
    ...(dissection?.incidents ?? []).map(
      ({ at }, i): Timed => [at, `/dissection/incidents/${i}/at`],
    ),
  ];
}
