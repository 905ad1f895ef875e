import { invariant, type Problem } from '../kernel/index.js';
import { type BookingMessage, foldRecord, type RecordVersion } from '../record/index.js';
import { bookingFits } from '../surveillance/index.js';
import { admit } from './admit.js';
import type { KeptBooking } from './bookings.js';
import { toMessage } from './parse-record-message.js';
import type { CaseJournal, JournalEntry } from './ports.js';
import type { ReceiveDeps } from './receive-message.js';
import { beforeOf, saveRecord } from './save-record.js';

type Done =
  | Omit<KeptBooking, 'followUpId'>
  | { readonly kind: 'conflict'; readonly problem: Problem };

/** Keeps a booking in the case of its item, in one commit with the record that it makes. */
export const keepBooking = (
  message: BookingMessage,
  entry: JournalEntry,
  deps: ReceiveDeps,
): Promise<Done> =>
  deps.store.inCase(entry.caseId, (journal) => keep(journal, entry, message, deps));

async function keep(
  journal: CaseJournal,
  entry: JournalEntry,
  message: BookingMessage,
  { settings }: ReceiveDeps,
): Promise<Done> {
  const entries = await journal.entries();
  const earlier = entries.map(toMessage);
  const admission = admit(entries, entry);
  const { caseId } = entry;
  switch (admission.kind) {
    case 'conflict':
      return { kind: 'conflict', problem: admission.problem };
    case 'repeat':
      return done('repeated', admission.first, message, foldRecord(caseId, earlier, settings.unit));
    case 'new':
      await journal.append(entry);
      break;
    case 'stale':
      await journal.appendStale(entry);
  }
  const messages = [...earlier, message];
  const before = beforeOf(earlier, settings);
  const version = await saveRecord(journal, { caseId, messages, before }, settings);
  if (admission.kind === 'stale') return { kind: 'conflict', problem: admission.problem };
  return done('accepted', entry, message, version);
}

function done(
  kind: KeptBooking['kind'],
  { revision, hash, receivedAt }: JournalEntry,
  { fields }: BookingMessage,
  version: RecordVersion | undefined,
): Done {
  invariant(version !== undefined, 'what is booked has a case');
  const fits = bookingFits(version.plan.items, fields.item);
  return { kind, revision, sha256: hash, receivedAt, fits };
}
