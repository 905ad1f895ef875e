import { setTimeout as delay } from 'node:timers/promises';
import pg from 'pg';
import type { Database } from './database.js';

/** The channel of PostgreSQL on which programs tell each other that something was queued. */
const CHANNEL = 'dissection_records_queued';

const FIRST_PAUSE_MS = 100;
const LONGEST_PAUSE_MS = 5_000;

/**
 * Tells all programs that something was queued, after it was committed. Within the committing
 * transaction it would be told for certain, but such commits wait for one another, which costs
 * most of what many connections bring (https://www.postgresql.org/docs/18/sql-notify.html: in the
 * order of commit). It is a hint: who misses it finds the row when it next looks. Many calls
 * become few statements.
 */
export function createBell({ pool }: Database): () => void {
  let ringing = false;
  let again = false;
  const ring = (): void => {
    if (ringing) {
      again = true;
      return;
    }
    ringing = true;
    pool
      .query(`select pg_notify('${CHANNEL}', '')`)
      .catch(() => {})
      .finally(() => {
        ringing = false;
        if (again) {
          again = false;
          ring();
        }
      });
  };
  return ring;
}

/**
 * Calls back whenever something was queued, on a connection of its own, which comes back by
 * itself when it is lost; each time it comes back it calls, for something may have been missed.
 *
 * @returns ends the listening
 */
export async function listen(database: Database, wake: () => void): Promise<() => Promise<void>> {
  const over = new AbortController();
  let client: pg.Client | undefined;

  const connect = async (): Promise<void> => {
    const fresh = new pg.Client(database.config);
    fresh.on('error', () => {});
    try {
      await fresh.connect();
      await fresh.query(`listen ${CHANNEL}`);
    } catch (error) {
      await fresh.end().catch(() => {});
      throw error;
    }
    if (over.signal.aborted) return await fresh.end();
    fresh.on('notification', wake);
    fresh.once('end', () => {
      if (!over.signal.aborted) void reconnect();
    });
    client = fresh;
  };
  const reconnect = async (): Promise<void> => {
    client = undefined;
    for (let pauseMs = FIRST_PAUSE_MS; ; pauseMs = Math.min(2 * pauseMs, LONGEST_PAUSE_MS)) {
      await delay(pauseMs, undefined, { signal: over.signal }).catch(() => {});
      if (over.signal.aborted) return;
      try {
        await connect();
        if (!over.signal.aborted) wake();
        return;
      } catch {
        database.log.warn({ event: 'queue-listener-not-back' });
      }
    }
  };

  await connect();
  return async () => {
    over.abort();
    await client?.end().catch(() => {});
  };
}
