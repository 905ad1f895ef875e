import pg from 'pg';
import { StoreUnavailable } from '../kernel/index.js';
import { StoreRefused } from './store-refused.js';

const OLDEST_SERVER = 15;

/**
 * Asks the server what it is.
 *
 * @throws StoreRefused when it cannot hold the records
 */
export async function refuseUnfitServer(config: pg.ClientConfig): Promise<void> {
  const client = new pg.Client(config);
  client.on('error', () => {});
  try {
    await client.connect();
    const { rows } = await client.query(`
      select current_setting('server_version_num')::int / 10000 as major,
        current_setting('transaction_read_only') = 'on' as read_only,
        pg_is_in_recovery() as standby,
        pg_encoding_to_char(encoding) as encoding
      from pg_database where datname = current_database()`);
    refuseUnfit(rows[0]);
  } finally {
    await client.end().catch(() => {});
  }
}

/** @param server what it says of itself: major, read_only, standby, encoding */
export function refuseUnfit(server: Readonly<Record<string, unknown>> | undefined): void {
  if (server === undefined) throw new StoreUnavailable('The store said nothing of itself.');
  if (typeof server['major'] !== 'number' || server['major'] < OLDEST_SERVER) {
    throw new StoreRefused(
      `The database is PostgreSQL ${server['major']}; ${OLDEST_SERVER} or newer is needed.`,
    );
  }
  if (server['standby'] === true) {
    throw new StoreRefused('The database is a standby and read-only: name the primary.');
  }
  if (server['read_only'] === true) {
    throw new StoreRefused(
      'The database is read-only (default_transaction_read_only is on): allow this user to write.',
    );
  }
  if (server['encoding'] !== 'UTF8') {
    throw new StoreRefused(
      `The database is encoded as ${server['encoding']}: create it with the encoding UTF8.`,
    );
  }
}
