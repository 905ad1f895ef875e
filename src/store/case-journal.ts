import type pg from 'pg';
import { invariant } from '../kernel/index.js';
import type { CaseJournal, JournalEntry } from '../pipeline/index.js';
import { saveFollowUps } from './follow-up-statements.js';
import {
  type Arrival,
  saveArrival,
  saveDeadline,
  saveState,
  saveWaiting,
} from './save-statements.js';
import type { JournalRow } from './tables.js';

/** The journal of one case within one transaction. */
export interface OpenJournal extends CaseJournal {
  /** Writes what was appended and not yet written. @returns whether a state was queued */
  finish(): Promise<boolean>;
}

/**
 * Appended messages wait for `saveState`, so that both are one round trip.
 *
 * @param before the messages of the case, read under its lock
 */
export function openJournal(
  client: pg.PoolClient,
  caseId: string,
  before: readonly JournalEntry[],
): OpenJournal {
  let entries = before;
  let pending: readonly Arrival[] = [];
  let queued = false;

  const writePending = async (state?: number): Promise<void> => {
    const unwritten = pending;
    pending = [];
    for (const arrival of unwritten) await client.query(saveArrival(arrival, state));
  };
  const arrive = async (arrival: Arrival): Promise<void> => {
    const { entry } = arrival;
    invariant(entry.caseId === caseId, 'a message is appended to the case that is locked');
    pending = [...pending, arrival];
    entries = [...entries, entry];
  };
  return {
    entries: async () => entries,
    append: (entry, why) => arrive({ entry, event: 'received', ...(why && { why }) }),
    appendStale: (entry) => arrive({ entry, event: 'received-stale' }),
    saveState: async (state) => {
      invariant(state.caseId === caseId, 'a state is saved of the case that is locked');
      const arrival = pending.at(-1);
      pending = pending.slice(0, -1);
      await writePending();
      await client.query(saveState(state, arrival));
      queued = true;
    },
    saveWaiting: async (waiting) => {
      invariant(waiting.caseId === caseId, 'what waits belongs to the case that is locked');
      await writePending(waiting.state);
      await client.query(saveWaiting(waiting));
    },
    saveDeadline: async (at) => {
      await client.query(saveDeadline(caseId, at));
    },
    saveFollowUps: async (state, followUps) => {
      await client.query(saveFollowUps(caseId, state, followUps));
    },
    finish: async () => {
      await writePending();
      return queued;
    },
  };
}

/** @param rows of the table `journal` */
export const toEntries = (rows: readonly JournalRow[]): readonly JournalEntry[] =>
  rows.map(toEntry);

const toEntry = (row: JournalRow): JournalEntry => ({
  caseId: row.case_id,
  kind: messageKind(row.kind),
  source: row.source,
  naturalKey: row.natural_key,
  revision: row.revision,
  sentAt: row.sent_at,
  hash: row.hash,
  bytes: row.bytes,
  receivedAt: row.received_at,
});

export function messageKind(kind: string): JournalEntry['kind'] {
  invariant(isKind(kind), 'the journal holds known kinds of message');
  return kind;
}

const KINDS: Readonly<Record<JournalEntry['kind'], true>> = {
  case: true,
  pathology: true,
  event: true,
  examination: true,
  withdrawal: true,
  booking: true,
  'as-of': true,
};

const isKind = (kind: string): kind is JournalEntry['kind'] => Object.hasOwn(KINDS, kind);
