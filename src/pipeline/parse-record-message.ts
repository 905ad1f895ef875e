import {
  asOfSchema,
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
  type MessageKind,
  type RecordMessage,
  SENT_KINDS,
  type SentKind,
} from '../record/index.js';
import type { JournalEntry } from './ports.js';

/** Reads the bytes of a message of a kind; all its problems at once. */
export function parseRecordMessage(kind: SentKind, bytes: Uint8Array): Checked<RecordMessage> {
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
export function toMessage({ kind, bytes }: JournalEntry): RecordMessage {
  const read = readKept(kind, bytes);
  invariant(read.ok, 'what the journal holds has the form of its schema');
  return read.value;
}

function readKept(kind: MessageKind, bytes: Uint8Array): Checked<RecordMessage> {
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

function kept<Kind, Fields>(kind: Kind, parsed: Checked<Message<Fields>>, bytes: Uint8Array) {
  if (!parsed.ok) return failed<never>(parsed.problems);
  const { fields, decimals } = parsed.value;
  return passed({ kind, fields, decimals, sha256: sha256(bytes) });
}
