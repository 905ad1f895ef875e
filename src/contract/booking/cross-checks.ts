import { minutesBetween } from '../../kernel/index.js';
import { isBefore, isSame } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadableBooking } from './readable-booking.js';

/** Far above what any visit takes, far below a wrong day or year. Source: project definition. */
const LONGEST_MINUTES = 24 * 60;

/** Contradictions within one booking. Project rules. */
export const BOOKING_CHECKS: readonly CrossCheck<ReadableBooking>[] = [
  {
    rule: 'booked-without-time',
    message: 'An appointment that is booked has a begin and an end.',
    expected: 'startsAt and endsAt with the statuses booked and moved',
    broken: ({ status, startsAt, endsAt }) =>
      status === 'booked' || status === 'moved' ? missing({ startsAt, endsAt }) : [],
  },
  {
    rule: 'half-a-time',
    message: 'One end of the appointment is told and the other is not.',
    expected: 'both startsAt and endsAt, or neither of them',
    broken: ({ status, startsAt, endsAt }) =>
      (status === 'cancelled' || status === 'did-not-attend') &&
      (startsAt === undefined) !== (endsAt === undefined)
        ? missing({ startsAt, endsAt })
        : [],
  },
  {
    rule: 'ends-before-start',
    message: 'The appointment ends before or as it starts.',
    expected: 'endsAt after startsAt',
    broken: ({ startsAt, endsAt }) =>
      isBefore(endsAt, startsAt) || isSame(endsAt, startsAt) ? ['/endsAt'] : [],
  },
  {
    rule: 'longer-than-a-day',
    message: 'A visit of an examination does not go on so long; one of the dates is another.',
    expected: 'endsAt at most 24 hours after startsAt',
    broken: ({ startsAt, endsAt }) =>
      startsAt !== undefined &&
      endsAt !== undefined &&
      minutesBetween(startsAt, endsAt) > LONGEST_MINUTES
        ? ['/endsAt']
        : [],
  },
  {
    rule: 'reason-of-another-status',
    message: 'A reason is that of a cancelled appointment alone.',
    expected: 'reason with the status cancelled, or none',
    broken: ({ status, reason }) =>
      status !== undefined && status !== 'cancelled' && reason !== undefined ? ['/reason'] : [],
  },
  {
    rule: 'missed-before-start',
    message: 'Nobody has missed an appointment that has not begun.',
    expected: 'sentAt at or after startsAt with the status did-not-attend',
    broken: ({ status, startsAt, sentAt }) =>
      status === 'did-not-attend' && isBefore(sentAt, startsAt) ? ['/sentAt'] : [],
  },
  {
    rule: 'repeated-follow-up',
    message: 'The same follow-up is named twice.',
    expected: 'each id once',
    broken: ({ alsoFor = [] }) =>
      alsoFor.flatMap((id, i) => (alsoFor.indexOf(id) < i ? [`/alsoFor/${i}`] : [])),
  },
];

const missing = (told: {
  readonly startsAt: string | undefined;
  readonly endsAt: string | undefined;
}): readonly string[] => [
  ...(told.startsAt === undefined ? ['/startsAt'] : []),
  ...(told.endsAt === undefined ? ['/endsAt'] : []),
];
