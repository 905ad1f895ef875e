import { type EsdCase, parseCase } from '../contract/index.js';
import { compareInstants, invariant, type Problem, sha256 } from '../kernel/index.js';
import { foldRecord, type RecordVersion, toFacts } from '../record/index.js';
import { type Admission, admit } from './admit.js';
import { toAnswer } from './check-case.js';
import { caseIdOf, keyed, searchKeysOf } from './naming.js';
import type { CaseJournal, JournalEntry, RecordStore } from './ports.js';
import { refusal } from './refusal.js';
import type { Caller, MessageReceipt, Receipt } from './service.js';
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

/** Checks a `case` message, and keeps journal, record, facts and outbox in one commit. */
export async function receiveCase(
  bytes: Uint8Array,
  caller: Caller,
  deps: ReceiveDeps,
): Promise<Receipt> {
  const parsed = parseCase(bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const esdCase = parsed.value;
  if (caller.source !== undefined && caller.source !== esdCase.fields.source) {
    return { kind: 'forbidden', problem: SOURCE_OF_ANOTHER };
  }
  const receivedAt = deps.now();
  if (isBeyond(esdCase.fields.sentAt, receivedAt)) {
    return { kind: 'invalid', problems: [SENT_IN_FUTURE] };
  }
  const entry = toEntry(bytes, esdCase, receivedAt, deps.settings.secret);
  return deps.store.inCase(entry.caseId, (journal) => keep(journal, entry, esdCase, deps));
}

async function keep(
  journal: CaseJournal,
  entry: JournalEntry,
  esdCase: EsdCase,
  { settings }: ReceiveDeps,
): Promise<Receipt> {
  const earlier = await journal.entries();
  const admission = admit(earlier, entry);
  switch (admission.kind) {
    case 'conflict':
      return { kind: 'conflict', problem: admission.problem };
    case 'repeat':
      return {
        kind: 'repeated',
        receipt: toReceipt(admission.first, esdCase),
        view: toAnswer(fold(earlier, settings)),
      };
    case 'new':
    case 'stale': {
      await (admission.kind === 'stale' ? journal.appendStale(entry) : journal.append(entry));
      const version = fold([...earlier, entry], settings);
      await saveState(journal, version, settings);
      return toReceiptOrConflict(admission, entry, esdCase, version);
    }
  }
}

function toReceiptOrConflict(
  admission: Admission & { readonly kind: 'new' | 'stale' },
  entry: JournalEntry,
  esdCase: EsdCase,
  version: RecordVersion,
): Receipt {
  if (admission.kind === 'stale') return { kind: 'conflict', problem: admission.problem };
  return { kind: 'accepted', receipt: toReceipt(entry, esdCase), view: toAnswer(version) };
}

/** The record as the journal tells it; what it holds has passed the contract before. */
function fold(entries: readonly JournalEntry[], settings: PipelineSettings): RecordVersion {
  const [first] = entries;
  invariant(first !== undefined, 'a journal that is folded holds a message');
  const messages = entries.map(({ bytes, hash }) => {
    const parsed = parseCase(bytes);
    invariant(parsed.ok, 'what the journal holds passes the contract');
    return { esdCase: parsed.value, sha256: hash };
  });
  return foldRecord(first.caseId, messages, settings.unit);
}

async function saveState(
  journal: CaseJournal,
  version: RecordVersion,
  { secret }: PipelineSettings,
): Promise<void> {
  await journal.saveState({
    caseId: version.caseId,
    state: version.state,
    version: JSON.stringify(version),
    facts: toFacts(version, (identifier) => keyed(secret, 'pseudonym', identifier)),
    searchKeys: searchKeysOf(secret, version.current.esdCase.fields),
  });
}

function toEntry(
  bytes: Uint8Array,
  { fields }: EsdCase,
  receivedAt: string,
  secret: string,
): JournalEntry {
  return {
    caseId: caseIdOf(secret, fields.case),
    kind: 'case',
    source: fields.source,
    naturalKey: '',
    revision: fields.revision,
    sentAt: fields.sentAt,
    hash: sha256(bytes),
    bytes,
    receivedAt,
  };
}

function toReceipt(entry: JournalEntry, { fields }: EsdCase): MessageReceipt {
  return {
    caseId: entry.caseId,
    case: { system: fields.case.system, value: fields.case.value },
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
