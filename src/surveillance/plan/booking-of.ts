import { compareInstants } from '../../kernel/index.js';
import type { Booking } from './follow-up-plan.js';
import type { BookingWord } from './plan-facts.js';

/** Begin and end of an appointment, instants. */
interface Times {
  readonly startsAt: string;
  readonly endsAt: string;
}

/** What was said of the appointment for one item, from the first word to the last. */
export interface BookingCourse {
  readonly status: Booking['status'];
  /** As it stands; absent while nobody has told a time. */
  readonly booking?: Booking;
  /** Days on which it was ever booked, YYYY-MM-DD. */
  readonly bookedOn: readonly string[];
  /** Day of the last word in its own offset. */
  readonly toldOn: string;
}

/**
 * What the words say together: the last one counts, and an appointment that was cancelled or
 * missed is the one that was told before.
 *
 * Source: project definition.
 *
 * @param words of one item, at least one, in the order in which they were said
 */
export function bookingCourse(words: readonly BookingWord[]): BookingCourse | undefined {
  const last = words.at(-1);
  if (last === undefined) return undefined;
  const status = last.status === 'moved' ? 'booked' : last.status;
  const booked = words.filter(isBooked).flatMap(timesOf);
  const times = words.flatMap(timesOf).at(-1);
  const toldOn = dayOf(last.toldAt);
  const course = { status, bookedOn: booked.map(({ startsAt }) => dayOf(startsAt)), toldOn };
  if (times === undefined) return course;
  const appointment = ofLastVisit(words)
    .flatMap((word) => word.appointment ?? [])
    .at(-1);
  const isElsewhen = booked.some(({ startsAt }) => compareInstants(startsAt, times.startsAt) !== 0);
  return {
    ...course,
    booking: {
      status,
      ...times,
      on: dayOf(times.startsAt),
      moved: last.status === 'moved' || isElsewhen,
      toldAt: last.toldAt,
      ...(last.reason === undefined ? {} : { reason: last.reason }),
      heldBy: appointment === undefined ? 'service' : 'server',
      ...(appointment === undefined ? {} : { appointment }),
    },
  };
}

/** Who books again after a visit was cancelled or missed has another Appointment for it, or none. */
function ofLastVisit(words: readonly BookingWord[]): readonly BookingWord[] {
  const begins = words.findLastIndex((word, i) => {
    const before = words[i - 1];
    return isBooked(word) && before !== undefined && !isBooked(before);
  });
  return words.slice(Math.max(begins, 0));
}

const isBooked = ({ status }: BookingWord): boolean => status === 'booked' || status === 'moved';

const timesOf = ({ startsAt, endsAt }: BookingWord): readonly Times[] =>
  startsAt === undefined || endsAt === undefined ? [] : [{ startsAt, endsAt }];

/** The calendar day of an instant in its own offset. */
const dayOf = (at: string): string => at.slice(0, 10);
