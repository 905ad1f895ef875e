import { compareInstants, invariant, StoreUnavailable, sha256 } from '../kernel/index.js';
import {
  type AsOfMessage,
  knowledgeOf,
  nextDeadline,
  type RecordMessage,
} from '../record/index.js';
import type { Before } from './changed-text.js';
import { toMessage } from './parse-record-message.js';
import type { CaseJournal } from './ports.js';
import { type ReceiveDeps, toEntry } from './receive-message.js';
import { beforeOf, saveRecord } from './save-record.js';
import type { PipelineSettings } from './settings.js';

/** Who writes these messages; no case belongs to it. */
const OURSELVES = 'dissection-records';
/** Why most of them are written. */
export const TIME_PASSED = 'time-passed';
const CASES_AT_ONCE = 100;

/** What came of a look for cases that time has changed. */
export interface TimeTold {
  /** How many cases were told how late it is. */
  readonly told: number;
  /** Ids of cases that could not be told, with why: faults of ours. */
  readonly failed: readonly { readonly caseId: string; readonly error: unknown }[];
}

/**
 * Tells every case whose deadline has come how late it is: a message of our own in its journal,
 * in one commit with the state that it makes. A case that was told is not told again.
 *
 * @throws StoreUnavailable; what was told until then stays told
 */
export async function tellTime(deps: ReceiveDeps): Promise<TimeTold> {
  const now = deps.now();
  const failed: { caseId: string; error: unknown }[] = [];
  let told = 0;
  let after: string | undefined;
  for (;;) {
    const caseIds = await deps.store.pastDeadline(now, CASES_AT_ONCE, after);
    for (const caseId of caseIds) {
      try {
        if (await tellOne(caseId, now, deps)) told += 1;
      } catch (error) {
        if (error instanceof StoreUnavailable) throw error;
        failed.push({ caseId, error });
      }
    }
    after = caseIds.at(-1);
    if (caseIds.length < CASES_AT_ONCE) return { told, failed };
  }
}

/** Looks again under the lock of the case: another program may have told it meanwhile. */
function tellOne(caseId: string, now: string, { store, settings }: ReceiveDeps): Promise<boolean> {
  return store.inCase(caseId, async (journal) => {
    const messages = (await journal.entries()).map(toMessage);
    const known = knowledgeOf(messages);
    const deadline = known === undefined ? undefined : nextDeadline(known);
    if (deadline === undefined || compareInstants(deadline.at, now) > 0) {
      await journal.saveDeadline(deadline?.at);
      return false;
    }
    const before = beforeOf(messages, settings);
    await writeAsOf(journal, { caseId, now, reason: TIME_PASSED, messages, before }, settings);
    return true;
  });
}

interface ToTell {
  readonly caseId: string;
  readonly now: string;
  readonly reason: string;
  readonly messages: readonly RecordMessage[];
  readonly before: Before | undefined;
  /** The verdict as rules of before made it. */
  readonly verdictWas?: string;
}

/** Appends our own message to the journal that is held, and saves the state that it makes. */
export async function writeAsOf(
  journal: CaseJournal,
  { caseId, now, reason, messages, before, verdictWas }: ToTell,
  settings: PipelineSettings,
): Promise<void> {
  const [first] = messages;
  invariant(
    first !== undefined && first.kind !== 'booking',
    'a case that is told something has a message of before',
  );
  const { system, value } = first.fields.case;
  const fields: AsOfMessage['fields'] = {
    schema: 'as-of/1',
    source: OURSELVES,
    case: { system, value },
    revision: 1 + messages.filter(({ kind }) => kind === 'as-of').length,
    sentAt: now,
    asOf: now,
    reason,
    ...(verdictWas === undefined ? {} : { verdictWas }),
  };
  const bytes = new TextEncoder().encode(JSON.stringify(fields));
  const message: AsOfMessage = { kind: 'as-of', fields, decimals: {}, sha256: sha256(bytes) };
  await journal.append(toEntry(caseId, bytes, message, now), reason);
  await saveRecord(journal, { caseId, messages: [...messages, message], before }, settings);
}
