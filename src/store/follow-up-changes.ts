import type { ChangePoint, StoredFollowUp } from '../pipeline/index.js';
import type { Database } from './database.js';
import { SHOWN_TEXT, type ShownRow, toStored } from './list-follow-ups.js';

/*
 * Changes in the order of the transactions that made them. A transaction may commit long after a
 * later one; so only those are given before which nothing is under way any more: whatever is
 * before `xmin` of a snapshot has ended, and a change that is still to be committed lies at `xmin`
 * or after it (https://www.postgresql.org/docs/18/functions-info.html#FUNCTIONS-PG-SNAPSHOT).
 */

interface Horizon {
  readonly mark: string;
  readonly xmin: string;
  readonly xmax: string;
}

/**
 * Numbers of transactions are those of one server and one course of it. So the mark of the database
 * is told with its server, its number there and its timeline, which changes where a server is put
 * back to an earlier time (https://www.postgresql.org/docs/18/continuous-archiving.html), as one
 * hash: a copy that was restored anywhere, and all that lies in it with it, has another one.
 */
const HORIZON = `
  select substr(encode(sha256(convert_to(
      concat_ws(' ', mark, system_identifier, pg_database.oid, timeline_id), 'UTF8')), 'hex'),
      1, 32)::uuid::text as mark,
    pg_snapshot_xmin(moment)::text as xmin, pg_snapshot_xmax(moment)::text as xmax
  from follow_ups_mark, pg_control_system(), pg_control_checkpoint(), pg_database,
    (select pg_current_snapshot() as moment) as now
  where datname = current_database()`;

async function horizonOf({ pool }: Database): Promise<Horizon> {
  const { rows } = await pool.query<Horizon>(HORIZON);
  const [horizon] = rows;
  if (horizon === undefined) throw new Error('the mark of the database is not there');
  return horizon;
}

const pointAt = ({ mark, xmin }: Horizon): ChangePoint => ({ mark, transaction: xmin, id: '' });

/** Every change that is committed by now lies before this point. */
export const presentPoint = async (database: Database): Promise<ChangePoint> =>
  pointAt(await horizonOf(database));

/** $1 and $2 the point before, $3 the end, $4 how many. */
export const CHANGES = `
  select ${SHOWN_TEXT}, changed_tx::text as changed_tx from follow_ups
  where (changed_tx, id) > ($1::text::xid8, $2::text) and changed_tx < $3::text::xid8
  order by changed_tx, id limit $4`;

/** @returns undefined when the point is of another database, or of a time that has not come */
export async function changesSince(
  database: Database,
  after: ChangePoint,
  limit: number,
): Promise<
  { readonly followUps: readonly StoredFollowUp[]; readonly until: ChangePoint } | undefined
> {
  const horizon = await horizonOf(database);
  const isOurs = after.mark === horizon.mark;
  if (!isOurs || BigInt(after.transaction) > BigInt(horizon.xmax)) return undefined;
  const values = [after.transaction, after.id, horizon.xmin, limit];
  const { rows } = await database.pool.query<ShownRow & { readonly changed_tx: string }>(
    CHANGES,
    values,
  );
  const last = rows.length < limit ? undefined : rows.at(-1);
  const { mark } = horizon;
  const until =
    last === undefined
      ? furthest(after, pointAt(horizon))
      : { mark, transaction: last.changed_tx, id: last.id };
  return { followUps: rows.map(toStored), until };
}

/** The horizon of one connection may lie before what another one has given out. */
const furthest = (a: ChangePoint, b: ChangePoint): ChangePoint =>
  BigInt(a.transaction) > BigInt(b.transaction) ? a : b;
