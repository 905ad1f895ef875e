import type { FeedEvent, FollowUpStore, StoredFollowUp } from '../pipeline/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import { changesSince, presentPoint } from './follow-up-changes.js';
import { listFollowUps, SHOWN_TEXT, type ShownRow, toStored } from './list-follow-ups.js';

/** The follow-ups of all cases, in PostgreSQL. */
export function createFollowUpStore(database: Database): FollowUpStore {
  return {
    find: (id) => sorting(() => findFollowUp(database, id)),
    list: (listing) => sorting(() => listFollowUps(database, listing)),
    now: () => sorting(() => presentPoint(database)),
    changes: (after, limit) => sorting(() => changesSince(database, after, limit)),
    toCome: (patientKeys) => sorting(() => toComeOf(database, patientKeys)),
    events: (lastOnFrom, route) => sorting(() => eventsFrom(database, lastOnFrom, route)),
    unfilled: (limit, after) => sorting(() => unfilledCases(database, limit, after)),
  };
}

async function findFollowUp({ pool }: Database, id: string): Promise<StoredFollowUp | undefined> {
  const text = `select ${SHOWN_TEXT} from follow_ups where id = $1`;
  const { rows } = await pool.query<ShownRow>(text, [id]);
  return rows.map(toStored)[0];
}

export const TO_COME_OF = `
  select ${SHOWN_TEXT} from follow_ups
  where patient_key = any ($1::text[]) and kind = 'endoscopy'
    and item_state in ('provisional', 'open', 'to-confirm')
  order by target_on, id`;

async function toComeOf(
  { pool }: Database,
  patientKeys: readonly string[],
): Promise<readonly StoredFollowUp[]> {
  if (patientKeys.length === 0) return [];
  const { rows } = await pool.query<ShownRow>(TO_COME_OF, [[...patientKeys]]);
  return rows.map(toStored);
}

interface EventRow {
  readonly id: string;
  readonly case_id: string;
  readonly calendar_status: FeedEvent['status'];
  readonly first_on: string;
  readonly last_on: string;
  readonly sequence: number;
  readonly calendar_changed_at: Date;
}

/** $1 the first last day, $2 the route or null. */
export const EVENTS = `
  select id, case_id, calendar_status, first_on, last_on, sequence, calendar_changed_at
  from follow_ups
  where calendar_status is not null and last_on >= $1 and ($2::text is null or route = $2)
  order by first_on, id`;

async function eventsFrom(
  { pool }: Database,
  lastOnFrom: string,
  route: string | undefined,
): Promise<readonly FeedEvent[]> {
  const { rows } = await pool.query<EventRow>(EVENTS, [lastOnFrom, route ?? null]);
  return rows.map((row) => ({
    id: row.id,
    caseId: row.case_id,
    status: row.calendar_status,
    firstOn: row.first_on,
    lastOn: row.last_on,
    sequence: row.sequence,
    changedAt: row.calendar_changed_at.toISOString(),
  }));
}

async function unfilledCases(
  { pool }: Database,
  limit: number,
  after = '',
): Promise<readonly string[]> {
  const text = `
    select case_id from follow_ups_unfilled where case_id > $2 order by case_id limit $1`;
  const { rows } = await pool.query<{ case_id: string }>(text, [limit, after]);
  return rows.map(({ case_id }) => case_id);
}
