import { StoreUnavailable } from '../kernel/index.js';
import { foldRecord, type RecordVersion, readVersion, verdictText } from '../record/index.js';
import { writeAsOf } from './as-of.js';
import { type ComputedChange, computedChange } from './computed-change.js';
import { toMessage } from './parse-record-message.js';
import type { ReceiveDeps } from './receive-message.js';

/** A case that was looked at. */
export interface Reassessed {
  readonly caseId: string;
  /** `changed`: the present rules and settings say something else than is stored. */
  readonly kind: 'same' | 'changed' | 'failed';
  /** Of a changed one: what. */
  readonly change?: ComputedChange;
  /** Whether the new state was written. */
  readonly applied: boolean;
  /** Of a failed one: a fault of ours. */
  readonly error?: unknown;
}

export interface ReassessOptions {
  /** Writes the new states, with this word in their journal; absent: nothing is written. */
  readonly reason?: string;
}

const CASES_AT_ONCE = 100;

/**
 * Looks at every case that has come, in the order of ids: whether its verdict or a score differs
 * under the present rules and settings.
 *
 * @throws StoreUnavailable; what was written until then stays
 */
export async function* reassess(
  deps: ReceiveDeps,
  options: ReassessOptions = {},
): AsyncGenerator<Reassessed> {
  let after: string | undefined;
  for (;;) {
    const hits = await deps.store.search({
      searchKeys: {},
      limit: CASES_AT_ONCE,
      ...(after === undefined ? {} : { after }),
    });
    for (const { caseId, delivery } of hits) {
      if (delivery !== 'waiting-case') yield await lookAt(caseId, deps, options);
    }
    after = hits.at(-1)?.caseId;
    if (hits.length < CASES_AT_ONCE) return;
  }
}

async function lookAt(
  caseId: string,
  deps: ReceiveDeps,
  { reason }: ReassessOptions,
): Promise<Reassessed> {
  try {
    const text = (await deps.store.read(caseId))?.version;
    if (text === undefined) return { caseId, kind: 'same', applied: false };
    const stored = readVersion(text);
    const change = changeOf(stored, deps);
    if (change === undefined) return { caseId, kind: 'same', applied: false };
    const applied = reason !== undefined && (await apply(stored, reason, deps));
    return { caseId, kind: 'changed', change, applied };
  } catch (error) {
    if (error instanceof StoreUnavailable) throw error;
    return { caseId, kind: 'failed', error, applied: false };
  }
}

/** What is stored of a withdrawn case counts for nothing. */
function changeOf(stored: RecordVersion, { settings }: ReceiveDeps): ComputedChange | undefined {
  const isWithdrawn = stored.messages.some(({ kind }) => kind === 'withdrawal');
  const now = foldRecord(stored.caseId, stored.messages, settings.unit);
  if (isWithdrawn || now === undefined) return undefined;
  return computedChange(stored.assessment, now.assessment);
}

/** @returns false where a message has come meanwhile: it was assessed by the present rules */
function apply(
  stored: RecordVersion,
  reason: string,
  { store, settings, now }: ReceiveDeps,
): Promise<boolean> {
  const { caseId, assessment, setAside } = stored;
  return store.inCase(caseId, async (journal) => {
    const messages = (await journal.entries()).map(toMessage);
    if (messages.length !== stored.state) return false;
    const told = { caseId, now: now(), reason, messages, verdictWas: verdictText(assessment) };
    const before = { assessment, setAside: setAside.length };
    await writeAsOf(journal, { ...told, before }, settings);
    return true;
  });
}
