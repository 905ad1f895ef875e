import { compareInstants, inTimeZone } from '../kernel/index.js';
import type { PlanItem } from '../surveillance/index.js';

/** An Appointment that the FHIR server holds for an item of a plan. */
export interface ServerAppointment {
  readonly caseId: string;
  readonly itemKey: string;
  /** Whether it is the one that we write for the item. */
  readonly isOurs: boolean;
  /** `Appointment/id`. */
  readonly reference: string;
  /** Code of FHIR R4, appointmentstatus. */
  readonly status: string;
  readonly start?: string;
  readonly end?: string;
  readonly updatedAt?: string;
}

type Booking = NonNullable<PlanItem['booking']>;

/** What Appointments say of the visit for an item. */
export interface Word {
  readonly status: Booking['status'];
  readonly startsAt?: string;
  readonly endsAt?: string;
  readonly about: ServerAppointment;
}

/** Codes of FHIR R4, appointmentstatus, of a visit that has its time or had it. */
const HELD: readonly string[] = ['booked', 'arrived', 'checked-in', 'fulfilled'];

/** @returns undefined where the Appointments say nothing that is not known */
export function wordOf(
  known: Booking | undefined,
  appointments: readonly ServerAppointment[],
): Word | undefined {
  const held = appointments.filter(isHeld).toSorted(byUpdate).at(-1);
  if (held !== undefined) return isKnown(held, known) ? undefined : wordOn(held, 'booked');
  const own = appointments.find((one) => isTheKnown(one, known));
  const missed = appointments.find(({ status, start }) => status === 'noshow' && start);
  if (missed !== undefined && (known === undefined || missed === own)) {
    return known?.status === 'did-not-attend' ? undefined : wordOn(missed, 'did-not-attend');
  }
  const isGone = own !== undefined && own.status !== 'noshow' && known?.status === 'booked';
  return isGone ? { status: 'cancelled', about: own } : undefined;
}

const isHeld = ({ status, start, end }: ServerAppointment): boolean =>
  HELD.includes(status) && start !== undefined && end !== undefined;

function byUpdate(a: ServerAppointment, b: ServerAppointment): number {
  return (msOf(a.updatedAt) || 0) - (msOf(b.updatedAt) || 0);
}

/** Whether the known booking is this very Appointment; what was told to us stands in ours. */
const isTheKnown = (
  { isOurs, reference }: ServerAppointment,
  known: Booking | undefined,
): boolean =>
  known?.appointment === reference || (isOurs && known !== undefined && known.heldBy === 'service');

function isKnown(held: ServerAppointment, known: Booking | undefined): boolean {
  const { start = '', end = '' } = held;
  return (
    known?.status === 'booked' &&
    isTheKnown(held, known) &&
    isSame(known.startsAt, start) &&
    isSame(known.endsAt, end)
  );
}

const isSame = (known: string, told: string): boolean =>
  !Number.isNaN(Date.parse(told)) && compareInstants(known, told) === 0;

const wordOn = (one: ServerAppointment, status: Word['status']): Word => ({
  status,
  ...(one.start === undefined || one.end === undefined
    ? {}
    : { startsAt: toMicroseconds(one.start), endsAt: toMicroseconds(one.end) }),
  about: one,
});

/** Some servers write more decimals of a second than a message of ours may have. */
const toMicroseconds = (at: string): string => at.replace(/(\.\d{6})\d+/, '$1');

/** Many servers keep instants in UTC, which says nothing of the day that a patient comes. */
export function atThePlace({ startsAt, endsAt, ...word }: Word, timeZone: string): Word {
  const isElsewhere = (at: string): boolean => at.endsWith('Z') && timeZone !== 'UTC';
  const local = (at: string): string => (isElsewhere(at) ? inTimeZone(at, timeZone) : at);
  return {
    ...word,
    ...(startsAt === undefined ? {} : { startsAt: local(startsAt) }),
    ...(endsAt === undefined ? {} : { endsAt: local(endsAt) }),
  };
}

/** @returns not a number where a text is no instant */
export const msOf = (at: string | undefined): number => Date.parse(at ?? '');
