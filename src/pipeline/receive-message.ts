import { compareInstants, invariant, type Problem } from '../kernel/index.js';
import {
  foldRecord,
  knowledgeOf,
  type MessageKind,
  naturalKeyOf,
  problemsOf,
  type RecordMessage,
  type RecordVersion,
  toFacts,
  viewRecord,
} from '../record/index.js';
import { type Admission, admit } from './admit.js';
import { toAnswer, toWaiting } from './answer.js';
import { changedText } from './changed-text.js';
import { caseIdOf, keyed, searchKeysOf } from './naming.js';
import { parseRecordMessage } from './parse-record-message.js';
import type { CaseJournal, JournalEntry, RecordStore } from './ports.js';
import { refusal } from './refusal.js';
import type { Answer, Caller, MessageReceipt, Receipt, WaitingAnswer } from './service.js';
import type { PipelineSettings } from './settings.js';

/** What receiving needs of the world. */
export interface ReceiveDeps {
  readonly store: RecordStore;
  readonly settings: PipelineSettings;
  /** The present, UTC instant. */
  readonly now: () => string;
}

/** Clocks of two systems may differ by so much. */
const CLOCK_TOLERANCE_MS = 5 * 60_000;

/** Checks a message, and keeps journal, record, facts and outbox in one commit. */
export async function receiveMessage(
  kind: MessageKind,
  bytes: Uint8Array,
  caller: Caller,
  deps: ReceiveDeps,
): Promise<Receipt> {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const message = parsed.value;
  if (caller.source !== undefined && caller.source !== message.fields.source) {
    return { kind: 'forbidden', problem: SOURCE_OF_ANOTHER };
  }
  const receivedAt = deps.now();
  if (isBeyond(message.fields.sentAt, receivedAt)) {
    return { kind: 'invalid', problems: [SENT_IN_FUTURE] };
  }
  const entry = toEntry(bytes, message, receivedAt, deps.settings.secret);
  return deps.store.inCase(entry.caseId, (journal) => keep(journal, entry, message, deps));
}

async function keep(
  journal: CaseJournal,
  entry: JournalEntry,
  message: RecordMessage,
  { settings }: ReceiveDeps,
): Promise<Receipt> {
  const entries = await journal.entries();
  const earlier = entries.map(toMessage);
  const admission = admit(entries, entry);
  switch (admission.kind) {
    case 'conflict':
      return { kind: 'conflict', problem: admission.problem };
    case 'repeat': {
      const version = foldRecord(entry.caseId, earlier, settings.unit);
      const view = viewOf(version, earlier);
      return { kind: 'repeated', receipt: toReceipt(admission.first, message), view };
    }
    case 'new': {
      const problems = problemsBeside(earlier, message);
      if (problems.length > 0) return { kind: 'invalid', problems };
      await journal.append(entry);
      break;
    }
    case 'stale':
      await journal.appendStale(entry);
  }
  const messages = [...earlier, message];
  const version = foldRecord(entry.caseId, messages, settings.unit);
  await save(journal, version, messages, settings);
  return toReceiptOrConflict(admission, toReceipt(entry, message), viewOf(version, messages));
}

/** What a new message contradicts in the case as it is known; nothing while there is no case. */
function problemsBeside(
  earlier: readonly RecordMessage[],
  message: RecordMessage,
): readonly Problem[] {
  const known = knowledgeOf(earlier);
  return known === undefined ? [] : problemsOf(message, known.esdCase);
}

function toReceiptOrConflict(
  admission: Admission & { readonly kind: 'new' | 'stale' },
  receipt: MessageReceipt,
  view: Answer | WaitingAnswer,
): Receipt {
  if (admission.kind === 'stale') return { kind: 'conflict', problem: admission.problem };
  return { kind: 'accepted', receipt, view };
}

const viewOf = (version: RecordVersion | undefined, messages: readonly RecordMessage[]) =>
  version === undefined ? toWaiting(messages.length) : toAnswer(version);

/** What the journal holds has passed the contract before. */
function toMessage({ kind, bytes }: JournalEntry): RecordMessage {
  const parsed = parseRecordMessage(kind, bytes);
  invariant(parsed.ok, 'what the journal holds passes the contract');
  return parsed.value;
}

async function save(
  journal: CaseJournal,
  version: RecordVersion | undefined,
  messages: readonly RecordMessage[],
  { secret, unit }: PipelineSettings,
): Promise<void> {
  const [first] = messages;
  invariant(first !== undefined, 'a journal that is folded holds a message');
  const caseId = caseIdOf(secret, first.fields.case);
  if (version === undefined) {
    const { case: own, patient, source } = first.fields;
    const searchKeys = searchKeysOf(secret, { case: own, patient });
    await journal.saveWaiting({ caseId, state: messages.length, source, searchKeys });
    return;
  }
  const view = viewRecord(version, unit);
  const { fields } = view.now.esdCase;
  const changed = changedText(version.change);
  await journal.saveState({
    caseId,
    source: fields.source,
    state: version.state,
    version: JSON.stringify(version),
    ...(changed === undefined ? {} : { changed }),
    facts: toFacts(view, (identifier) => keyed(secret, 'pseudonym', identifier)),
    searchKeys: searchKeysOf(secret, fields),
  });
}

function toEntry(
  bytes: Uint8Array,
  message: RecordMessage,
  receivedAt: string,
  secret: string,
): JournalEntry {
  const { fields } = message;
  return {
    caseId: caseIdOf(secret, fields.case),
    kind: message.kind,
    source: fields.source,
    naturalKey: naturalKeyOf(message),
    revision: fields.revision,
    sentAt: fields.sentAt,
    hash: message.sha256,
    bytes,
    receivedAt,
  };
}

function toReceipt(entry: JournalEntry, { fields }: RecordMessage): MessageReceipt {
  return {
    caseId: entry.caseId,
    case: { system: fields.case.system, value: fields.case.value },
    kind: entry.kind,
    revision: entry.revision,
    sha256: entry.hash,
    receivedAt: entry.receivedAt,
  };
}

function isBeyond(sentAt: string, now: string): boolean {
  const limit = new Date(Date.parse(now) + CLOCK_TOLERANCE_MS).toISOString();
  return compareInstants(sentAt, limit) > 0;
}

const SENT_IN_FUTURE: Problem = {
  rule: 'sent-in-future',
  pointer: '/sentAt',
  message: 'The message claims to be sent in the future.',
  expected: 'an instant of at most five minutes from now',
};

const SOURCE_OF_ANOTHER: Problem = {
  rule: 'source-of-another',
  pointer: '/source',
  message: 'The key of this call belongs to another source.',
  expected: 'the source that the key was given to',
};
