import { parseCase } from '../contract/index.js';
import { InvariantError, sha256 } from '../kernel/index.js';
import { foldRecord, type RecordVersion } from '../record/index.js';
import { caseIdOf } from './naming.js';
import { prepare } from './prepare.js';
import { refusal } from './refusal.js';
import type { Answer, DryRun } from './service.js';
import type { PipelineSettings } from './settings.js';

export const CAUTION =
  'Decision support, not a verdict. Confirm against the guideline and local policy; ' +
  'licensed clinicians decide.';

/** Runs a `case` message through everything that a push does, and keeps nothing. */
export function checkCase(bytes: Uint8Array, settings: PipelineSettings): DryRun {
  const parsed = parseCase(bytes);
  if (!parsed.ok) return refusal(parsed.problems);
  const caseId = caseIdOf(settings.secret, parsed.value.fields.case);
  const message = { esdCase: parsed.value, sha256: sha256(bytes) };
  const version = foldRecord(caseId, [message], settings.unit);
  const prepared = prepare(version, settings);
  if (!prepared.ok) throw new InvariantError(`record breaks ${rulesOf(prepared.problems)}`);
  const { bundle, warnings } = prepared.value;
  return { kind: 'valid', view: toAnswer(version), warnings, bundle };
}

export function toAnswer({ state, assessment }: RecordVersion): Answer {
  return { state, assessment, caution: CAUTION };
}

function rulesOf(problems: readonly { readonly rule: string }[]): string {
  return [...new Set(problems.map(({ rule }) => rule))].join(', ');
}
