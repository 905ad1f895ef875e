import {
  asOfSchema,
  type BookingFields,
  bookingSchema,
  caseSchema,
  eventSchema,
  examinationSchema,
  type Message,
  parseCase,
  parseEvent,
  parseExamination,
  parsePathology,
  parseWithdrawal,
  pathologySchema,
  readJson,
  readMessage,
  withdrawalSchema,
} from '../contract/index.js';
import { type Checked, failed, invariant, passed, sha256 } from '../kernel/index.js';
import {
  type BookingMessage,
  type RecordMessage,
  SENT_KINDS,
  type SentKind,
  type SentMessage,
} from '../record/index.js';
import type { JournalEntry } from './ports.js';

/** Reads the bytes of a message of a kind; all its problems at once. */
export function parseRecordMessage(kind: SentKind, bytes: Uint8Array): Checked<SentMessage> {
  switch (kind) {
    case 'case':
      return kept('case', parseCase(bytes), bytes);
    case 'pathology':
      return kept('pathology', parsePathology(bytes), bytes);
    case 'event':
      return kept('event', parseEvent(bytes), bytes);
    case 'examination':
      return kept('examination', parseExamination(bytes), bytes);
    case 'withdrawal':
      return kept('withdrawal', parseWithdrawal(bytes), bytes);
  }
}

/**
 * A message of the journal. It passed the contract when it came, so its form alone is read: a rule
 * that became stricter since must not keep a case from being corrected.
 *
 * @throws InvariantError when it has not the form of its schema: what is published stays readable
 */
export function toMessage(entry: JournalEntry): RecordMessage {
  const read = readKept(entry);
  invariant(read.ok, 'what the journal holds has the form of its schema');
  return read.value;
}

function readKept({ kind, bytes, source, naturalKey }: JournalEntry): Checked<RecordMessage> {
  switch (kind) {
    case 'case':
      return kept('case', readMessage(caseSchema, bytes), bytes);
    case 'pathology':
      return kept('pathology', readMessage(pathologySchema, bytes), bytes);
    case 'event':
      return kept('event', readMessage(eventSchema, bytes), bytes);
    case 'examination':
      return kept('examination', readMessage(examinationSchema, bytes), bytes);
    case 'withdrawal':
      return kept('withdrawal', readMessage(withdrawalSchema, bytes), bytes);
    case 'booking':
      return booked(readMessage(bookingSchema, bytes), bytes, { source, item: naturalKey });
    case 'as-of':
      return kept('as-of', readMessage(asOfSchema, bytes), bytes);
  }
}

/** The kind that a document says it is; one that says none is read as a case, and refused so. */
export function kindOf(bytes: Uint8Array): SentKind {
  const document = readJson(bytes);
  const value: unknown = document.ok ? document.value.value : undefined;
  const schema =
    typeof value === 'object' && value !== null && 'schema' in value ? value.schema : undefined;
  const name = typeof schema === 'string' ? schema.split('/')[0] : undefined;
  return SENT_KINDS.find((kind) => kind === name) ?? 'case';
}

/**
 * A booking, which names neither its sender nor its item, as a message of the record.
 *
 * @param named the sender, and the key of the item
 */
export function booked(
  parsed: Checked<Message<BookingFields>>,
  bytes: Uint8Array,
  named: { readonly source: string; readonly item: string },
): Checked<BookingMessage> {
  if (!parsed.ok) return failed(parsed.problems);
  const { fields, decimals } = parsed.value;
  return passed({
    kind: 'booking',
    fields: { ...fields, ...named },
    decimals,
    sha256: sha256(bytes),
  });
}

function kept<Kind, Fields>(kind: Kind, parsed: Checked<Message<Fields>>, bytes: Uint8Array) {
  if (!parsed.ok) return failed<never>(parsed.problems);
  const { fields, decimals } = parsed.value;
  return passed({ kind, fields, decimals, sha256: sha256(bytes) });
}
