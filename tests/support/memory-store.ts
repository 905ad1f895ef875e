import { compareInstants } from '../../src/kernel/index.js';
import type {
  CaseJournal,
  DeliveryState,
  JournalEntry,
  RecordStore,
  StateToStore,
  StoredCase,
  StoredFollowUp,
  TimelineEvent,
} from '../../src/pipeline/index.js';

interface Kept {
  readonly entries: readonly JournalEntry[];
  readonly stored?: StateToStore;
  readonly waiting?: { readonly state: number; readonly source: string };
  readonly timeline: readonly TimelineEvent[];
  readonly deadlineAt?: string;
}

/** A store in memory, for tests of what the pipeline decides: one program, nothing fails. */
export function memoryStore(now: () => string): RecordStore {
  const cases = new Map<string, Kept>();
  const nothing = () => Promise.reject(new Error('the store in memory does not do this'));
  const keptOf = (caseId: string): Kept => cases.get(caseId) ?? { entries: [], timeline: [] };
  const journalOf = (caseId: string): CaseJournal => {
    const change = (change: Partial<Kept>) => {
      cases.set(caseId, { ...keptOf(caseId), ...change });
      return Promise.resolve();
    };
    const arrive = (entry: JournalEntry, event: 'received' | 'received-stale', why = '') => {
      const { entries, timeline } = keptOf(caseId);
      const detail = `${entry.kind}, revision ${entry.revision}${why && `: ${why}`}`;
      const come = { at: entry.receivedAt, event, state: entries.length + 1, detail };
      return change({ entries: [...entries, entry], timeline: [...timeline, come] });
    };
    return {
      entries: () => Promise.resolve(keptOf(caseId).entries),
      append: (entry, why) => arrive(entry, 'received', why),
      appendStale: (entry) => arrive(entry, 'received-stale'),
      saveState: (stored) => {
        const { changed: detail, deadlineAt, state } = stored;
        const { waiting: _over, deadlineAt: _old, timeline, ...rest } = keptOf(caseId);
        const assessed = { at: now(), event: 'assessed' as const, state };
        cases.set(caseId, {
          ...rest,
          timeline: [...timeline, { ...assessed, ...(detail === undefined ? {} : { detail }) }],
          stored,
          ...(deadlineAt === undefined ? {} : { deadlineAt }),
        });
        return Promise.resolve();
      },
      saveWaiting: ({ state, source }) =>
        change({ waiting: { state, source: keptOf(caseId).waiting?.source ?? source } }),
      saveDeadline: (deadlineAt) => {
        const { deadlineAt: _old, ...rest } = keptOf(caseId);
        cases.set(caseId, { ...rest, ...(deadlineAt === undefined ? {} : { deadlineAt }) });
        return Promise.resolve();
      },
      saveFollowUps: nothing,
    };
  };
  const followUps = {
    find: (id: string) => Promise.resolve(followUpIn([...cases.values()], id)),
    ...{ list: nothing, now: nothing, changes: nothing, toCome: nothing, events: nothing },
    unfilled: () => Promise.resolve([]),
  };
  return {
    followUps,
    feeds: { create: nothing, list: nothing, revoke: nothing, findByHash: nothing },
    outcomes: { read: nothing },
    facts: () => {
      throw new Error('the store in memory does not do this');
    },
    inCase: (caseId, work) => work(journalOf(caseId)),
    read: (caseId) =>
      Promise.resolve(cases.has(caseId) ? toStored(caseId, keptOf(caseId)) : undefined),
    entries: (caseId) => Promise.resolve(keptOf(caseId).entries),
    pastDeadline: (at, limit, after = '') =>
      Promise.resolve(
        [...cases]
          .filter(([id, { deadlineAt }]) => id > after && isPast(deadlineAt, at))
          .map(([id]) => id)
          .sort()
          .slice(0, limit),
      ),
    search: nothing,
    countWaiting: nothing,
    alone: (work) => work().then(() => true),
    dailyTurn: nothing,
    ready: () => Promise.resolve(),
  };
}

/** An item of the newest plan of some case. */
function followUpIn(kept: readonly Kept[], id: string): StoredFollowUp | undefined {
  for (const { stored } of kept) {
    const row = stored?.followUps.rows.find((each) => each.id === id);
    if (stored === undefined || row === undefined) continue;
    const { itemKey, itemState, document } = row;
    const { caseId, state, followUps } = stored;
    const { patientKey } = followUps;
    return { id, caseId, itemKey, itemState, patientKey, state, changedAt: '', document };
  }
  return undefined;
}

const isPast = (deadlineAt: string | undefined, now: string): boolean =>
  deadlineAt !== undefined && compareInstants(deadlineAt, now) <= 0;

function toStored(caseId: string, { entries, stored, waiting, timeline }: Kept): StoredCase {
  const state = stored?.state ?? waiting?.state ?? 0;
  const name: DeliveryState['name'] = stored === undefined ? 'waiting-case' : 'queued';
  const since = entries[0]?.receivedAt ?? '';
  return {
    caseId,
    source: stored?.source ?? waiting?.source ?? '',
    state,
    messages: entries,
    ...(stored === undefined ? {} : { version: stored.version }),
    delivery: { name, state, since, attempts: 0 },
    timeline,
  };
}
