import {
  type Checked,
  compareInstants,
  failed,
  InvariantError,
  invariant,
  passed,
} from '../kernel/index.js';
import { knowledgeOf, nextDeadline, type RecordMessage, type SentKind } from '../record/index.js';
import { admit } from './admit.js';
import { TIME_PASSED, writeAsOf } from './as-of.js';
import { isFromFuture, SENT_IN_FUTURE } from './door.js';
import { caseIdOf } from './naming.js';
import { parseRecordMessage } from './parse-record-message.js';
import type { CaseJournal, JournalEntry, StateToStore } from './ports.js';
import { problemsBeside, toEntry } from './receive-message.js';
import { beforeOf, saveRecord } from './save-record.js';
import type { PipelineSettings } from './settings.js';

/** A message as it was sent. */
export interface SentBytes {
  readonly kind: SentKind;
  readonly bytes: Uint8Array;
}

/** A case that no store holds yet: all its messages, and the one state that they make. */
export interface CaseToStore {
  readonly arrivals: readonly Appended[];
  readonly state: StateToStore;
}

interface Appended {
  readonly entry: JournalEntry;
  readonly why?: string;
}

interface TakeInDeps {
  readonly settings: PipelineSettings;
  /** The present, UTC instant. */
  readonly now: string;
}

/**
 * Takes all messages of a new case in at once. Each is checked as if it came alone, in this order,
 * and time is told if a deadline has passed; of the states between nothing is made.
 *
 * @param sent the case first, no message twice and no revision after a higher one
 * @returns the problems of the first message that would be refused
 */
export async function takeIn(
  sent: readonly SentBytes[],
  { settings, now }: TakeInDeps,
): Promise<Checked<CaseToStore>> {
  const { journal, taken } = collectingJournal();
  let messages: readonly RecordMessage[] = [];
  for (const { kind, bytes } of sent) {
    const parsed = parseRecordMessage(kind, bytes);
    if (!parsed.ok) return failed(parsed.problems);
    const message = parsed.value;
    if (isFromFuture(message, now)) return failed([SENT_IN_FUTURE]);
    const problems = problemsBeside(messages, message);
    if (problems.length > 0) return failed(problems);
    const entry = toEntry(caseIdOf(settings.secret, message.fields.case), bytes, message, now);
    const admission = admit(await journal.entries(), entry);
    if (admission.kind === 'conflict' || admission.kind === 'stale') {
      return failed([admission.problem]);
    }
    invariant(admission.kind === 'new', 'no message of a new case comes twice');
    await journal.append(entry);
    messages = [...messages, message];
  }
  await save(journal, messages, { settings, now });
  return passed(taken());
}

async function save(
  journal: CaseJournal,
  messages: readonly RecordMessage[],
  { settings, now }: TakeInDeps,
): Promise<void> {
  const [first] = await journal.entries();
  const known = knowledgeOf(messages);
  invariant(first !== undefined && known !== undefined, 'the messages of a new case hold the case');
  const { caseId } = first;
  const deadline = nextDeadline(known);
  if (deadline !== undefined && compareInstants(deadline.at, now) <= 0) {
    const before = beforeOf(messages, settings);
    await writeAsOf(journal, { caseId, now, reason: TIME_PASSED, messages, before }, settings);
  } else {
    const before = beforeOf(messages.slice(0, -1), settings);
    await saveRecord(journal, { caseId, messages, before }, settings);
  }
}

/** Keeps what a journal would write. */
function collectingJournal() {
  let arrivals: readonly Appended[] = [];
  let saved: StateToStore | undefined;
  const never = async (): Promise<never> => {
    throw new InvariantError('nothing else is written of a new case');
  };
  const journal: CaseJournal = {
    entries: async () => arrivals.map(({ entry }) => entry),
    append: async (entry, why) => {
      arrivals = [...arrivals, { entry, ...(why === undefined ? {} : { why }) }];
    },
    saveState: async (state) => {
      saved = state;
    },
    appendStale: never,
    saveWaiting: never,
    saveDeadline: never,
    saveFollowUps: never,
  };
  const taken = (): CaseToStore => {
    invariant(saved !== undefined, 'a new case makes a state');
    return { arrivals, state: saved };
  };
  return { journal, taken };
}
