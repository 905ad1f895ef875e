import { sql } from 'kysely';
import type {
  DeliveryState,
  JournalEntry,
  KeptMessage,
  StoredCase,
  TimelineEvent,
} from '../pipeline/index.js';
import { messageKind, toEntries } from './case-journal.js';
import type { Database } from './database.js';
import { rowsOf } from './rows-of.js';
import type { JournalRow } from './tables.js';

interface CaseRow {
  readonly case_id: string;
  readonly source: string;
  readonly state: number;
  readonly version: string | null;
  readonly status: DeliveryState['name'];
  readonly sending_state: number | null;
  readonly since: Date;
  readonly due_at: Date | null;
  readonly attempts: number;
  readonly reason: string | null;
  readonly messages: readonly MessageRow[] | null;
  readonly timeline: readonly TimelineRow[];
}

type MessageRow = Omit<JournalRow, 'position' | 'case_id' | 'hash' | 'bytes'>;

interface TimelineRow {
  readonly at: string;
  readonly event: TimelineEvent['event'];
  readonly state: number;
  readonly detail: string | null;
}

/** One statement, so that all of it is of one moment. */
export async function readCase(
  { db, pool }: Database,
  caseId: string,
): Promise<StoredCase | undefined> {
  const query = sql<CaseRow>`
    select o.case_id, o.source, o.state, s.version, o.status, o.sending_state, o.since, o.due_at,
      o.attempts, o.reason,
      (select json_agg(json_build_object(
          'kind', j.kind, 'source', j.source, 'natural_key', j.natural_key,
          'revision', j.revision, 'sent_at', j.sent_at, 'received_at', j.received_at)
          order by j.position)
        from journal j where j.case_id = o.case_id) as messages,
      (select json_agg(json_build_object(
          'at', t.at, 'event', t.event, 'state', t.state, 'detail', t.detail) order by t.position)
        from timeline t where t.case_id = o.case_id) as timeline
    from outbox o
    left join states s on s.case_id = o.case_id and s.state = o.state
    where o.case_id = ${caseId}`.compile(db);
  const [row] = await rowsOf(pool, query);
  return row === undefined ? undefined : toStoredCase(row);
}

const toStoredCase = (row: CaseRow): StoredCase => ({
  caseId: row.case_id,
  source: row.source,
  state: row.state,
  messages: (row.messages ?? []).map(toKept),
  ...(row.version === null ? {} : { version: row.version }),
  delivery: toDeliveryState(row),
  timeline: row.timeline.map(({ at, event, state, detail }) => ({
    at: new Date(at).toISOString(),
    event,
    state,
    ...(detail === null ? {} : { detail }),
  })),
});

function toDeliveryState(row: CaseRow): DeliveryState {
  const planned = row.status === 'queued' || row.status === 'waiting-patient';
  return {
    name: row.status,
    state: row.status === 'sending' ? (row.sending_state ?? row.state) : row.state,
    since: row.since.toISOString(),
    attempts: row.attempts,
    ...(planned && row.due_at !== null ? { nextAttemptAt: row.due_at.toISOString() } : {}),
    ...(row.reason === null ? {} : { reason: row.reason }),
  };
}

const toKept = (row: MessageRow): KeptMessage => ({
  kind: messageKind(row.kind),
  source: row.source,
  naturalKey: row.natural_key,
  revision: row.revision,
  sentAt: row.sent_at,
  receivedAt: row.received_at,
});

/** Every message of a case, oldest first. */
export async function readEntries(
  { pool }: Database,
  caseId: string,
): Promise<readonly JournalEntry[]> {
  const { rows } = await pool.query<JournalRow>(
    'select * from journal where case_id = $1 order by position',
    [caseId],
  );
  return toEntries(rows);
}
