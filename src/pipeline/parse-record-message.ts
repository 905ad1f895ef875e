import {
  parseCase,
  parseEvent,
  parseExamination,
  parsePathology,
  parseWithdrawal,
  readJson,
} from '../contract/index.js';
import { type Checked, failed, passed, sha256 } from '../kernel/index.js';
import { MESSAGE_KINDS, type MessageKind, type RecordMessage } from '../record/index.js';

interface Parsed<Fields> {
  readonly fields: Fields;
  readonly decimals: Readonly<Record<string, number>>;
}

/** Reads the bytes of a message of a kind; all its problems at once. */
export function parseRecordMessage(kind: MessageKind, bytes: Uint8Array): Checked<RecordMessage> {
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

/** The kind that a document says it is; one that says none is read as a case, and refused so. */
export function kindOf(bytes: Uint8Array): MessageKind {
  const document = readJson(bytes);
  const value: unknown = document.ok ? document.value.value : undefined;
  const schema =
    typeof value === 'object' && value !== null && 'schema' in value ? value.schema : undefined;
  const name = typeof schema === 'string' ? schema.split('/')[0] : undefined;
  return MESSAGE_KINDS.find((kind) => kind === name) ?? 'case';
}

function kept<Kind, Fields>(kind: Kind, parsed: Checked<Parsed<Fields>>, bytes: Uint8Array) {
  if (!parsed.ok) return failed<never>(parsed.problems);
  const { fields, decimals } = parsed.value;
  return passed({ kind, fields, decimals, sha256: sha256(bytes) });
}
