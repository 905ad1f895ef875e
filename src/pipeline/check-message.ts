import { InvariantError } from '../kernel/index.js';
import {
  foldRecord,
  isOfLine,
  knowledgeOf,
  type MessageKind,
  problemsOf,
  type RecordMessage,
} from '../record/index.js';
import { toAnswer, toWaiting } from './answer.js';
import { caseIdOf } from './naming.js';
import { parseRecordMessage } from './parse-record-message.js';
import { prepare } from './prepare.js';
import { refusal } from './refusal.js';
import type { DryRun } from './service.js';
import type { PipelineSettings } from './settings.js';

/** Runs a message through everything that a push does, and keeps nothing. */
export async function checkMessage(
  kind: MessageKind,
  bytes: Uint8Array,
  settings: PipelineSettings,
  keptOf: (caseId: string) => Promise<readonly RecordMessage[]>,
): Promise<DryRun> {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const message = parsed.value;
  const caseId = caseIdOf(settings.secret, message.fields.case);
  return dryRun(caseId, await keptOf(caseId), message, settings);
}

/**
 * What would become of a message beside those that are kept, were it the newest of its line.
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
    (other) => !isOfLine(other, message) || other.fields.revision < message.fields.revision,
  );
  const known = knowledgeOf(earlier);
  const problems = known === undefined ? [] : problemsOf(message, known.esdCase);
  if (problems.length > 0) return { kind: 'invalid', problems };
  const version = foldRecord(caseId, [...earlier, message], settings.unit);
  if (version === undefined) {
    return { kind: 'valid', view: toWaiting(earlier.length + 1), warnings: [] };
  }
  const prepared = prepare(version, settings);
  if (!prepared.ok) throw new InvariantError(`record breaks ${rulesOf(prepared.problems)}`);
  const { bundle, warnings } = prepared.value;
  return { kind: 'valid', view: toAnswer(version), warnings, bundle };
}

function rulesOf(problems: readonly { readonly rule: string }[]): string {
  return [...new Set(problems.map(({ rule }) => rule))].join(', ');
}
