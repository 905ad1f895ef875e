import { setTimeout as delay } from 'node:timers/promises';
import type pg from 'pg';

/**
 * Resolves once a connection to this database waits for a lock
 * (https://www.postgresql.org/docs/18/monitoring-stats.html, wait_event_type).
 */
export async function untilSomebodyWaits(pool: pg.Pool): Promise<void> {
  await until(async () => {
    const { rowCount } = await pool.query(`
      select 1 from pg_stat_activity
      where datname = current_database() and wait_event_type = 'Lock'`);
    return rowCount !== 0;
  });
}

/** @throws Error when it does not become so within so many milliseconds */
export async function until(
  holds: () => Promise<boolean> | boolean,
  withinMs = 10_000,
): Promise<void> {
  const deadline = Date.now() + withinMs;
  while (!(await holds())) {
    if (Date.now() > deadline) throw new Error(`It did not become so within ${withinMs} ms.`);
    await delay(5);
  }
}
