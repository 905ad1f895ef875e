import { parseBooking } from '../contract/index.js';
import { compareInstants, inTimeZone, StoreUnavailable } from '../kernel/index.js';
import { presentOf, readVersion } from '../record/index.js';
import type { PlanItem } from '../surveillance/index.js';
import { keepBooking } from './keep-booking.js';
import { booked } from './parse-record-message.js';
import { type ReceiveDeps, toEntry } from './receive-message.js';

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

/** What came of Appointments that were found. */
export interface BookingsLearnt {
  /** How many were news, and are kept as bookings. */
  readonly learnt: number;
  /** How many say what no visit can be, such as an end before the start; they are passed over. */
  readonly senseless: number;
  /** Ids of cases of which something could not be kept. */
  readonly failed: readonly { readonly caseId: string; readonly error: unknown }[];
}

/** Who says what we learn from the FHIR server. */
const SOURCE = 'fhir-server';

/**
 * Keeps what Appointments of the FHIR server say as bookings of our own making, where it differs
 * from what is known. One that is booked counts before one that is not, and the later one before
 * the earlier: who moves a visit may cancel one Appointment and book another. What was last changed
 * before a scheduler told us of the visit is no news: it stands there until we have delivered.
 *
 * @throws StoreUnavailable; what was kept until then stays so
 */
export async function learnBookings(
  appointments: readonly ServerAppointment[],
  deps: ReceiveDeps,
): Promise<BookingsLearnt> {
  const failed: { caseId: string; error: unknown }[] = [];
  const count = { learnt: 0, senseless: 0, known: 0 };
  for (const ofItem of byItem(appointments)) {
    const [first] = ofItem;
    if (first === undefined) continue;
    try {
      count[await learnOne(first, ofItem, deps)] += 1;
    } catch (error) {
      if (error instanceof StoreUnavailable) throw error;
      failed.push({ caseId: first.caseId, error });
    }
  }
  const { learnt, senseless } = count;
  return { learnt, senseless, failed };
}

function byItem(all: readonly ServerAppointment[]): readonly (readonly ServerAppointment[])[] {
  const groups = new Map<string, ServerAppointment[]>();
  for (const one of all) {
    const key = `${one.caseId}.${one.itemKey}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()];
}

async function learnOne(
  { caseId, itemKey }: ServerAppointment,
  ofItem: readonly ServerAppointment[],
  deps: ReceiveDeps,
): Promise<'learnt' | 'known' | 'senseless'> {
  const stored = await deps.store.read(caseId);
  if (stored?.version === undefined) return 'known';
  const { plan } = presentOf(readVersion(stored.version));
  const item = plan.items.find(({ key }) => key === itemKey);
  if (item === undefined) return 'known';
  const words = stored.messages.filter(
    ({ kind, naturalKey }) => kind === 'booking' && naturalKey === itemKey,
  );
  const told = words.filter(({ source }) => source !== SOURCE);
  const news = ofItem.filter((one) => told.every((word) => isAfter(one, word)));
  const word = wordOf(item.booking, news);
  if (word === undefined) return 'known';
  const now = deps.now();
  const { about, ...says } = atThePlace(word, deps.settings.unit.timeZone);
  const sentAt = saidAt(about, now);
  const revision = 1 + words.length - told.length;
  const fields = { schema: 'booking/1', revision, sentAt, ...says, appointment: about.reference };
  const bytes = new TextEncoder().encode(JSON.stringify(fields));
  const message = booked(parseBooking(bytes), bytes, { source: SOURCE, item: itemKey });
  if (!message.ok) return 'senseless';
  const done = await keepBooking(message.value, toEntry(caseId, bytes, message.value, now), deps);
  return done.kind === 'accepted' ? 'learnt' : 'known';
}

/** Many servers keep instants in UTC, which says nothing of the day that a patient comes. */
function atThePlace({ startsAt, endsAt, ...word }: Word, timeZone: string): Word {
  const isElsewhere = (at: string): boolean => at.endsWith('Z') && timeZone !== 'UTC';
  const local = (at: string): string => (isElsewhere(at) ? inTimeZone(at, timeZone) : at);
  return {
    ...word,
    ...(startsAt === undefined ? {} : { startsAt: local(startsAt) }),
    ...(endsAt === undefined ? {} : { endsAt: local(endsAt) }),
  };
}

const msOf = (at: string | undefined): number => Date.parse(at ?? '');

/**
 * Whether an Appointment changed after a scheduler told us something. Ours shows what we had told
 * when it was written, so it says nothing of a word that was said before and came later. One of a
 * server that does not say when it changed counts as changed now.
 */
function isAfter({ isOurs, updatedAt }: ServerAppointment, word: KeptWord): boolean {
  const ms = msOf(updatedAt);
  if (Number.isNaN(ms)) return true;
  return ms > msOf(word.sentAt) && (!isOurs || ms > msOf(word.receivedAt));
}

interface KeptWord {
  readonly sentAt: string;
  readonly receivedAt: string;
}

/** By the clock of the server, which is never ahead of ours. */
function saidAt({ updatedAt }: ServerAppointment, now: string): string {
  const ms = Math.min(msOf(updatedAt), msOf(now));
  return Number.isNaN(ms) ? now : new Date(ms).toISOString();
}

type Booking = NonNullable<PlanItem['booking']>;

interface Word {
  readonly status: Booking['status'];
  readonly startsAt?: string;
  readonly endsAt?: string;
  readonly about: ServerAppointment;
}

/** Codes of FHIR R4, appointmentstatus, of a visit that has its time or had it. */
const HELD: readonly string[] = ['booked', 'arrived', 'checked-in', 'fulfilled'];

/** @returns undefined where the Appointments say nothing that is not known */
function wordOf(
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
