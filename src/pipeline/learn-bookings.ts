import { parseBooking } from '../contract/index.js';
import { StoreUnavailable } from '../kernel/index.js';
import { presentOf, readVersion } from '../record/index.js';
import { atThePlace, msOf, type ServerAppointment, wordOf } from './appointment-words.js';
import { keepBooking } from './keep-booking.js';
import { booked } from './parse-record-message.js';
import { type ReceiveDeps, toEntry } from './receive-message.js';

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
