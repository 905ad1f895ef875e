import { InvariantError, type Problem } from '../kernel/index.js';
import { foldRecord, isOfLine, type RecordMessage, type SentKind } from '../record/index.js';
import { admit } from './admit.js';
import { toAnswer, toWaiting } from './answer.js';
import { isFromFuture, isOfAnother, SENT_IN_FUTURE, SOURCE_OF_ANOTHER } from './door.js';
import { caseIdOf } from './naming.js';
import { parseRecordMessage, toMessage } from './parse-record-message.js';
import type { JournalEntry } from './ports.js';
import { prepare } from './prepare.js';
import { problemsBeside, toEntry } from './receive-message.js';
import { refusal } from './refusal.js';
import type { Caller, DryRun } from './service.js';
import type { PipelineSettings } from './settings.js';

/** What a dry run is held against. */
export interface CheckDeps {
  readonly settings: PipelineSettings;
  readonly caller: Caller;
  /** UTC instant; without it no message is from the future. */
  readonly now?: string;
  readonly entriesOf: (caseId: string) => Promise<readonly JournalEntry[]>;
}

/** Runs a message through everything that a push does, and keeps nothing. */
export async function checkMessage(
  kind: SentKind,
  bytes: Uint8Array,
  deps: CheckDeps,
): Promise<DryRun> {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const message = parsed.value;
  const atDoor = problemAtDoor(message, deps);
  if (atDoor !== undefined) return { kind: 'invalid', problems: [atDoor] };
  const caseId = caseIdOf(deps.settings.secret, message.fields.case);
  const entries = await deps.entriesOf(caseId);
  const admission = admit(entries, toEntry(caseId, bytes, message, message.fields.sentAt));
  if (admission.kind === 'conflict' || admission.kind === 'stale') {
    return { kind: 'invalid', problems: [admission.problem] };
  }
  return dryRun(caseId, entries.map(toMessage), message, deps.settings);
}

function problemAtDoor(message: RecordMessage, { caller, now }: CheckDeps): Problem | undefined {
  if (isOfAnother(message, caller)) return SOURCE_OF_ANOTHER;
  return now !== undefined && isFromFuture(message, now) ? SENT_IN_FUTURE : undefined;
}

/**
 * What would become of a message beside those that are kept.
 *
 * @throws InvariantError when the record that it makes is no good one: our bug
 */
function dryRun(
  caseId: string,
  kept: readonly RecordMessage[],
  message: RecordMessage,
  settings: PipelineSettings,
): DryRun {
  const earlier = kept.filter(
    (other) => !isOfLine(other, message) || other.fields.revision !== message.fields.revision,
  );
  // A repetition was held against the case when it came; it is no new message.
  const isNew = earlier.length === kept.length;
  const problems = isNew ? problemsBeside(earlier, message) : [];
  if (problems.length > 0) return { kind: 'invalid', problems };
  const messages = [...earlier, message];
  const version = foldRecord(caseId, messages, settings.unit);
  if (version === undefined) {
    return { kind: 'valid', view: toWaiting(messages.length), warnings: [] };
  }
  const prepared = prepare(version, settings);
  if (!prepared.ok) throw new InvariantError(`record breaks ${rulesOf(prepared.problems)}`);
  const { bundle, warnings } = prepared.value;
  return { kind: 'valid', view: toAnswer(version), warnings, bundle };
}

function rulesOf(problems: readonly { readonly rule: string }[]): string {
  return [...new Set(problems.map(({ rule }) => rule))].join(', ');
}
