import { invariant } from '../kernel/index.js';
import {
  assessMessages,
  foldRecord,
  knowledgeOf,
  nextDeadline,
  presentOf,
  type RecordMessage,
  type RecordVersion,
} from '../record/index.js';
import { type Before, changedText } from './changed-text.js';
import { factsOf } from './facts-of.js';
import { searchKeysOf } from './naming.js';
import type { CaseJournal } from './ports.js';
import { rowsOfFollowUps } from './rows-of-follow-ups.js';
import type { PipelineSettings } from './settings.js';

/** The messages of a case, and what was there before the last of them came. */
export interface RecordToSave {
  readonly caseId: string;
  readonly messages: readonly RecordMessage[];
  readonly before: Before | undefined;
}

/**
 * Folds the messages, and stores what they make with everything that is derived of it.
 *
 * @returns undefined while the case itself has not come
 */
export async function saveRecord(
  journal: CaseJournal,
  { caseId, messages, before }: RecordToSave,
  settings: PipelineSettings,
): Promise<RecordVersion | undefined> {
  const version = foldRecord(caseId, messages, settings.unit);
  if (version === undefined) await saveWaiting(journal, caseId, messages, settings);
  else await saveState(journal, version, before, settings);
  return version;
}

/** What the messages of a case said; nothing while the case had not come. */
export function beforeOf(
  messages: readonly RecordMessage[],
  { unit }: PipelineSettings,
): Before | undefined {
  const assessment = assessMessages(messages, unit);
  const setAside = knowledgeOf(messages)?.setAside.length ?? 0;
  return assessment === undefined ? undefined : { assessment, setAside };
}

async function saveState(
  journal: CaseJournal,
  version: RecordVersion,
  before: Before | undefined,
  { secret }: PipelineSettings,
): Promise<void> {
  const now = presentOf(version);
  const { fields } = now.esdCase;
  const changed = changedText(before, version);
  const deadline = nextDeadline(now);
  await journal.saveState({
    caseId: version.caseId,
    source: fields.source,
    state: version.state,
    version: JSON.stringify(version),
    ...(changed === undefined ? {} : { changed }),
    ...(deadline === undefined ? {} : { deadlineAt: deadline.at }),
    facts: factsOf(version, now, secret),
    searchKeys: searchKeysOf(secret, fields),
    followUps: rowsOfFollowUps(version, fields, secret),
  });
}

/** A message that came before its case is found by the numbers that it names itself. */
async function saveWaiting(
  journal: CaseJournal,
  caseId: string,
  messages: readonly RecordMessage[],
  { secret }: PipelineSettings,
): Promise<void> {
  const [first] = messages;
  invariant(
    first !== undefined && first.kind !== 'as-of' && first.kind !== 'booking',
    'what waits was sent by somebody',
  );
  const { case: own, patient, source } = first.fields;
  const searchKeys = searchKeysOf(secret, { case: own, patient });
  await journal.saveWaiting({ caseId, state: messages.length, source, searchKeys });
}
