import type { Database } from './database.js';
import { sorting } from './faults.js';

/** Names the work in PostgreSQL; any number that no other lock of ours has. */
const ALONE_LOCK = 7_313_014;

/** $1 the present, $2 how many, $3 the last case seen. In the order of case ids. */
const PAST_DEADLINE = `
  select case_id from outbox
  where deadline_at <= ($1::text)::timestamptz and case_id > $3
  order by case_id limit $2`;

/** Ids of cases whose deadline has come, after the last one seen. */
export async function pastDeadline(
  { pool }: Database,
  now: string,
  limit: number,
  after = '',
): Promise<readonly string[]> {
  const values = [now, limit, after];
  const { rows } = await pool.query<{ case_id: string }>(PAST_DEADLINE, values);
  return rows.map(({ case_id }) => case_id);
}

/** Cases that have not come though messages about them have waited since before. */
export async function countWaiting({ pool }: Database, before: string): Promise<number> {
  const { rows } = await pool.query<{ cases: number }>(
    `select count(*) as cases from outbox
     where status = 'waiting-case' and since < ($1::text)::timestamptz`,
    [before],
  );
  return rows[0]?.cases ?? 0;
}

/**
 * Does the work unless another program is at it: a lock of the session, which ends with its
 * connection when this program dies
 * (https://www.postgresql.org/docs/18/explicit-locking.html#ADVISORY-LOCKS).
 *
 * @returns whether the work was done here
 */
export async function alone({ pool }: Database, work: () => Promise<void>): Promise<boolean> {
  const client = await sorting(() => pool.connect());
  let broken: Error | undefined;
  const lost = (error: Error): void => {
    broken = error;
  };
  client.on('error', lost);
  try {
    const { rows } = await sorting(() =>
      client.query<{ mine: boolean }>('select pg_try_advisory_lock($1) as mine', [ALONE_LOCK]),
    );
    if (rows[0]?.mine !== true) return false;
    try {
      await work();
    } finally {
      await client.query('select pg_advisory_unlock($1)', [ALONE_LOCK]).catch(lost);
    }
    return true;
  } finally {
    client.off('error', lost);
    client.release(broken);
  }
}

/** Takes the turn of the day if it is free: the last one was taken a day ago or longer. */
export async function dailyTurn({ pool }: Database, name: string, now: string): Promise<boolean> {
  const { rowCount } = await pool.query(
    `insert into daily_turns (name, taken_at) values ($1, ($2::text)::timestamptz)
     on conflict (name) do update set taken_at = excluded.taken_at
     where daily_turns.taken_at <= excluded.taken_at - interval '24 hours'`,
    [name, now],
  );
  return rowCount === 1;
}
