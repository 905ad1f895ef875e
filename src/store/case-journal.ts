import type pg from 'pg';
import { invariant } from '../kernel/index.js';
import type { CaseJournal, JournalEntry, MessageKind } from '../pipeline/index.js';
import { saveStaleEntry, saveState } from './save-statements.js';
import type { JournalRow } from './tables.js';

/** The journal of one case within one transaction. */
export interface OpenJournal extends CaseJournal {
  /** Writes what was appended and not yet written. @returns whether a state was queued */
  finish(): Promise<boolean>;
}

/**
 * Appended messages wait for `saveState`, so that both are one round trip. One that no state
 * follows has changed nothing and goes into the timeline as stale.
 */
export function openJournal(client: pg.PoolClient, caseId: string): OpenJournal {
  let pending: readonly JournalEntry[] = [];
  let queued = false;

  const writePending = async (): Promise<void> => {
    const entries = pending;
    pending = [];
    for (const entry of entries) await client.query(saveStaleEntry(entry));
  };
  return {
    entries: async () => {
      const { rows } = await client.query<JournalRow>(entriesOf(caseId));
      return [...rows.map(toEntry), ...pending];
    },
    append: async (entry) => {
      invariant(entry.caseId === caseId, 'a message is appended to the case that is locked');
      pending = [...pending, entry];
    },
    saveState: async (state) => {
      invariant(state.caseId === caseId, 'a state is saved of the case that is locked');
      const entry = pending.at(-1);
      pending = pending.slice(0, -1);
      await writePending();
      await client.query(saveState(state, entry));
      queued = true;
    },
    finish: async () => {
      await writePending();
      return queued;
    },
  };
}

const entriesOf = (caseId: string): pg.QueryConfig => ({
  name: 'entries-of-case',
  text: 'select * from journal where case_id = $1 order by position',
  values: [caseId],
});

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

function messageKind(kind: string): MessageKind {
  invariant(kind === 'case', 'the journal holds known kinds of message');
  return kind;
}
