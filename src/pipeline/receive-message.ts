import {
  foldRecord,
  knowledgeOf,
  naturalKeyOf,
  problemsOf,
  type RecordMessage,
  type SentKind,
  type SentMessage,
} from '../record/index.js';
import { admit } from './admit.js';
import { toAnswer, toWaiting } from './answer.js';
import { isFromFuture, isOfAnother, SENT_IN_FUTURE, SOURCE_OF_ANOTHER } from './door.js';
import { caseIdOf } from './naming.js';
import { parseRecordMessage, toMessage } from './parse-record-message.js';
import type { CaseJournal, JournalEntry, RecordStore } from './ports.js';
import { refusal } from './refusal.js';
import { beforeOf, saveRecord } from './save-record.js';
import type { Caller, MessageReceipt, Receipt } from './service.js';
import type { PipelineSettings } from './settings.js';

/** What receiving needs of the world. */
export interface ReceiveDeps {
  readonly store: RecordStore;
  readonly settings: PipelineSettings;
  /** The present, UTC instant. */
  readonly now: () => string;
}

/** Checks a message, and keeps journal, record, facts and outbox in one commit. */
export async function receiveMessage(
  kind: SentKind,
  bytes: Uint8Array,
  caller: Caller,
  deps: ReceiveDeps,
): Promise<Receipt> {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const message = parsed.value;
  if (isOfAnother(message, caller)) return { kind: 'forbidden', problem: SOURCE_OF_ANOTHER };
  const receivedAt = deps.now();
  if (isFromFuture(message, receivedAt)) return { kind: 'invalid', problems: [SENT_IN_FUTURE] };
  const caseId = caseIdOf(deps.settings.secret, message.fields.case);
  const entry = toEntry(caseId, bytes, message, receivedAt);
  return deps.store.inCase(caseId, (journal) => keep(journal, entry, message, deps));
}

async function keep(
  journal: CaseJournal,
  entry: JournalEntry,
  message: SentMessage,
  { settings }: ReceiveDeps,
): Promise<Receipt> {
  const entries = await journal.entries();
  const earlier = entries.map(toMessage);
  const admission = admit(entries, entry);
  switch (admission.kind) {
    case 'conflict':
      return { kind: 'conflict', problem: admission.problem };
    case 'repeat': {
      const view = viewOf(entry.caseId, earlier, settings);
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
  const { caseId } = entry;
  const messages = [...earlier, message];
  const before = beforeOf(earlier, settings);
  const version = await saveRecord(journal, { caseId, messages, before }, settings);
  if (admission.kind === 'stale') return { kind: 'conflict', problem: admission.problem };
  const view = version === undefined ? toWaiting(messages.length) : toAnswer(version);
  return { kind: 'accepted', receipt: toReceipt(entry, message), view };
}

/** What a new message contradicts in the case as it is known; nothing while there is no case. */
export function problemsBeside(earlier: readonly RecordMessage[], message: RecordMessage) {
  const known = knowledgeOf(earlier);
  return known === undefined ? [] : problemsOf(message, known.esdCase);
}

function viewOf(caseId: string, messages: readonly RecordMessage[], settings: PipelineSettings) {
  const version = foldRecord(caseId, messages, settings.unit);
  return version === undefined ? toWaiting(messages.length) : toAnswer(version);
}

/** A message as the journal keeps it. */
export function toEntry(
  caseId: string,
  bytes: Uint8Array,
  message: RecordMessage,
  receivedAt: string,
): JournalEntry {
  const { fields } = message;
  return {
    caseId,
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

function toReceipt(entry: JournalEntry, { kind, fields }: SentMessage): MessageReceipt {
  return {
    caseId: entry.caseId,
    case: { system: fields.case.system, value: fields.case.value },
    kind,
    revision: entry.revision,
    sha256: entry.hash,
    receivedAt: entry.receivedAt,
  };
}
