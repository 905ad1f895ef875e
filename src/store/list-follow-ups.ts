import { sql } from 'kysely';
import { invariant } from '../kernel/index.js';
import type { Due, FollowUpListing, Place, StoredFollowUp } from '../pipeline/index.js';
import type { Database } from './database.js';
import { rowsOf } from './rows-of.js';

/** What is read of a row that is shown. */
const SHOWN = [
  'id',
  'case_id',
  'item_key',
  'item_state',
  'patient_key',
  'state',
  'changed_at',
  'document',
] as const;
export const SHOWN_TEXT = SHOWN.join(', ');

export interface ShownRow {
  readonly id: string;
  readonly case_id: string;
  readonly item_key: string;
  readonly item_state: StoredFollowUp['itemState'];
  readonly patient_key: string;
  readonly state: number;
  readonly changed_at: Date;
  readonly document: string;
}

export const toStored = (row: ShownRow): StoredFollowUp => ({
  id: row.id,
  caseId: row.case_id,
  itemKey: row.item_key,
  itemState: row.item_state,
  patientKey: row.patient_key,
  state: row.state,
  changedAt: row.changed_at.toISOString(),
  document: row.document,
});

/** By target day and id, a page at a time; a row more is read, to see whether there is a next one. */
export async function listFollowUps(
  { db, pool }: Database,
  listing: FollowUpListing,
): Promise<{ readonly followUps: readonly StoredFollowUp[]; readonly next?: Place }> {
  const { limit } = listing;
  invariant(Number.isInteger(limit) && limit > 0, 'a page of follow-ups has a length');
  if (listing.states.length === 0) return { followUps: [] };
  const rows = await rowsOf(pool, listingQuery(db, listing).compile());
  const page = rows.slice(0, limit);
  const last = rows.length > limit ? page.at(-1) : undefined;
  return {
    followUps: page.map(toStored),
    ...(last === undefined ? {} : { next: { on: last.target_on, id: last.id } }),
  };
}

/** The days of a follow-up that is asked for by days, the first and the last. */
const WINDOW = ['earliest_on', 'latest_on'] as const;
const BOOKED_DAY = ['booked_on', 'booked_on'] as const;

/** The page as SQL; apart, so that a test can ask the database how it would go about it. */
export function listingQuery(db: Database['db'], listing: FollowUpListing) {
  const { states, from, to, kind, route, booked, due, after, limit } = listing;
  let query = db
    .selectFrom('follow_ups')
    .select([...SHOWN, 'target_on'])
    .where('item_state', 'in', [...states])
    .orderBy('target_on')
    .orderBy('id')
    .limit(limit + 1);
  const [begin, end] = booked ? BOOKED_DAY : WINDOW;
  if (from !== undefined) query = query.where(end, '>=', from);
  if (to !== undefined) query = query.where(begin, '<=', to);
  if (kind !== undefined) query = query.where('kind', '=', kind);
  if (route !== undefined) query = query.where('route', '=', route);
  if (booked !== undefined) query = query.where('booked_on', booked ? 'is not' : 'is', null);
  if (due !== undefined) query = query.where(isDue(due));
  if (after !== undefined)
    query = query.where(sql<boolean>`(target_on, id) > (${after.on}, ${after.id})`);
  return query;
}

/** The target of a window is never after its latest day, which lets the index begin there. */
const isDue = ({ today, until }: Due) =>
  until === undefined
    ? sql<boolean>`target_on < ${today} and latest_on < ${today} and ${isUnbooked(today)}`
    : sql<boolean>`target_on <= ${until} and latest_on between ${today} and ${until}
        and ${isUnbooked(today)}`;

/** An appointment of a day that is over, with no word of what came of it, holds nothing. */
const isUnbooked = (today: string) => sql`(booked_on is null or booked_on < ${today})`;
