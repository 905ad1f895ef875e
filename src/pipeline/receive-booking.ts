import { type BookingFields, checkBookingAgainstCase, parseBooking } from '../contract/index.js';
import { invariant, type Problem } from '../kernel/index.js';
import { type BookingMessage, presentOf, readVersion } from '../record/index.js';
import { admit } from './admit.js';
import type { BookingReceipt, KeptBooking } from './bookings.js';
import { isFromFuture, SENT_IN_FUTURE } from './door.js';
import type { StoredFollowUp } from './follow-up-ports.js';
import { keepBooking } from './keep-booking.js';
import { booked } from './parse-record-message.js';
import type { JournalEntry } from './ports.js';
import { type ReceiveDeps, toEntry } from './receive-message.js';
import { refusal } from './refusal.js';
import { readFollowUpDocument } from './rows-of-follow-ups.js';
import type { Caller } from './service.js';

/** Who says what a key without a source says. */
const SCHEDULER = 'scheduler';

/** A follow-up that a booking is for, and where the booking names it. */
interface Target {
  readonly followUp: StoredFollowUp;
  readonly pointer: string;
  readonly message: BookingMessage;
  readonly entry: JournalEntry;
}

/**
 * Checks a booking and keeps it for its follow-up and all that it names beside, each in one commit
 * with the record of its case. What was kept before a fault is a repetition the next time.
 *
 * @param followUpId of the address
 */
export async function receiveBooking(
  followUpId: string,
  bytes: Uint8Array,
  caller: Caller,
  deps: ReceiveDeps,
): Promise<BookingReceipt> {
  const own = await deps.store.followUps.find(followUpId);
  if (own === undefined) return { kind: 'not-found' };
  const parsed = parseBooking(bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const { alsoFor = [] } = parsed.value.fields;
  const others = await Promise.all(alsoFor.map((id) => deps.store.followUps.find(id)));
  const receivedAt = deps.now();
  const toTarget = (followUp: StoredFollowUp, pointer: string): Target => {
    const { caseId, itemKey: item } = followUp;
    const named = booked(parsed, bytes, { source: caller.source ?? SCHEDULER, item });
    invariant(named.ok, 'what has passed the contract stays so');
    const message = named.value;
    return { followUp, pointer, message, entry: toEntry(caseId, bytes, message, receivedAt) };
  };
  const targets = [own, ...others].flatMap((followUp, i) =>
    followUp === undefined ? [] : [toTarget(followUp, i === 0 ? '' : `/alsoFor/${i - 1}`)],
  );
  const problems = [
    ...others.flatMap((other, i) => problemOfOther(own, other, i)),
    ...targets.flatMap(problemOfItem),
    ...(await problemsBesideCases(parsed.value.fields, targets, deps)),
    ...(isFromFuture(parsed.value, receivedAt) ? [SENT_IN_FUTURE] : []),
  ];
  return problems.length > 0 ? { kind: 'invalid', problems } : keepAll(targets, deps);
}

/** Looks first, so that as a rule either all of them are kept or none. */
async function keepAll(targets: readonly Target[], deps: ReceiveDeps): Promise<BookingReceipt> {
  for (const { entry, pointer } of targets.slice(1)) {
    const admission = admit(await deps.store.entries(entry.caseId), entry);
    if (admission.kind === 'conflict' || admission.kind === 'stale') {
      return { kind: 'conflict', problem: { ...admission.problem, pointer } };
    }
  }
  const kept: KeptBooking[] = [];
  for (const { followUp, pointer, message, entry } of targets) {
    const done = await keepBooking(message, entry, deps);
    if (done.kind === 'conflict') {
      const { problem } = done;
      return { kind: 'conflict', problem: pointer === '' ? problem : { ...problem, pointer } };
    }
    kept.push({ followUpId: followUp.id, ...done });
  }
  const isNew = kept.some(({ kind }) => kind === 'accepted');
  return { kind: isNew ? 'accepted' : 'repeated', kept };
}

function problemOfOther(
  own: StoredFollowUp,
  other: StoredFollowUp | undefined,
  i: number,
): readonly Problem[] {
  const pointer = `/alsoFor/${i}`;
  if (other === undefined) return [{ ...UNKNOWN, pointer }];
  if (other.id === own.id) return [{ ...ITSELF, pointer }];
  return other.patientKey === own.patientKey ? [] : [{ ...OF_ANOTHER_PATIENT, pointer }];
}

/** To look at an appointment is a task; nobody has an appointment for it. */
const problemOfItem = ({ followUp, pointer }: Target): readonly Problem[] =>
  readFollowUpDocument(followUp.document).item.task === 'booking-check'
    ? [{ ...NOT_BOOKED, pointer }]
    : [];

async function problemsBesideCases(
  fields: BookingFields,
  targets: readonly Target[],
  { store }: ReceiveDeps,
): Promise<readonly Problem[]> {
  const caseIds = [...new Set(targets.map(({ followUp }) => followUp.caseId))];
  const found: Problem[] = [];
  for (const caseId of caseIds) {
    const version = (await store.read(caseId))?.version;
    invariant(version !== undefined, 'the case of a follow-up has a record');
    const { esdCase } = presentOf(readVersion(version));
    const problems = checkBookingAgainstCase(fields, esdCase.fields);
    found.push(...problems.filter(({ rule }) => found.every((told) => told.rule !== rule)));
  }
  return found;
}

const UNKNOWN = {
  rule: 'unknown-follow-up',
  message: 'No follow-up has this id.',
  expected: 'the id of a follow-up of the list',
};

const ITSELF = {
  rule: 'repeated-follow-up',
  message: 'The follow-up of the address is named beside itself.',
  expected: 'other follow-ups of the same visit, or none',
};

const OF_ANOTHER_PATIENT = {
  rule: 'follow-up-of-another-patient',
  message: 'This follow-up is one of another patient.',
  expected: 'follow-ups of the same patient',
};

const NOT_BOOKED = {
  rule: 'not-to-be-booked',
  message: 'This is the task to look at an appointment, and has none of its own.',
  expected: 'the follow-up that the task is about',
};
