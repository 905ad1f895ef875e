import { type CompiledQuery, sql } from 'kysely';
import type pg from 'pg';
import { invariant } from '../kernel/index.js';
import type {
  DeliveryState,
  SearchHit,
  SearchQuery,
  StoredCase,
  TimelineEvent,
} from '../pipeline/index.js';
import type { Database } from './database.js';

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
  readonly timeline: readonly TimelineRow[];
}

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

/** In the order of case ids, a page at a time. */
export async function searchCases(
  { db, pool }: Database,
  { searchKeys, delivery, source, limit, after }: SearchQuery,
): Promise<readonly SearchHit[]> {
  invariant(Number.isInteger(limit) && limit > 0, 'a page of search has a length');
  let query = db
    .selectFrom('outbox as o')
    .select((eb) => [
      'o.case_id',
      'o.state',
      'o.status',
      eb
        .selectFrom('journal as j')
        .select('j.received_at')
        .whereRef('j.case_id', '=', 'o.case_id')
        .orderBy('j.position')
        .limit(1)
        .as('received_at'),
    ])
    .orderBy('o.case_id')
    .limit(limit);
  for (const [name, value] of Object.entries(searchKeys)) {
    query = query.where((eb) =>
      eb.exists(
        eb
          .selectFrom('search_keys as k')
          .select('k.case_id')
          .whereRef('k.case_id', '=', 'o.case_id')
          .where('k.name', '=', name)
          .where('k.value', '=', value),
      ),
    );
  }
  if (delivery !== undefined) query = query.where('o.status', '=', delivery);
  if (after !== undefined) query = query.where('o.case_id', '>', after);
  if (source !== undefined) query = query.where('o.source', '=', source);
  return (await rowsOf(pool, query.compile())).map((row) => ({
    caseId: row.case_id,
    state: row.state,
    delivery: row.status,
    receivedAt: row.received_at ?? '',
  }));
}

/**
 * Runs what Kysely has put into words. The pool parts with a connection on which a query failed;
 * Kysely itself would give it back, though nothing may come through it any more.
 */
async function rowsOf<Row extends pg.QueryResultRow>(
  pool: pg.Pool,
  { sql: text, parameters }: CompiledQuery<Row>,
): Promise<readonly Row[]> {
  return (await pool.query<Row>(text, [...parameters])).rows;
}
