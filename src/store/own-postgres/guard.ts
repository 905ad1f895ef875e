import pg from 'pg';
import { StoreRefused } from '../store-refused.js';
import { OWN_NAME } from './initialise.js';

/**
 * A connection that says "a service uses this server": a shared advisory lock, held as long as
 * the service lives and gone with it, even when it is killed
 * (https://www.postgresql.org/docs/18/explicit-locking.html#ADVISORY-LOCKS).
 */
export interface Guard {
  /** Calls back once when the connection is lost. */
  onLost(lost: () => void): void;
  /**
   * Leaves the users of the server, and lets no new one in when there is no other.
   * @returns whether nobody else uses the server
   */
  leave(): Promise<boolean>;
  end(): Promise<void>;
}

/** Names the lock among the advisory locks of the maintenance database. */
const IN_USE = 7_304_118;

const ANSWER_WITHIN_MS = 3_000;

/** What came of trying to reach the server. */
export type Reached =
  | { readonly kind: 'guarded'; readonly guard: Guard }
  /** It says that it is starting, recovering or stopping: it works on it. */
  | { readonly kind: 'busy' }
  | { readonly kind: 'silent' };

/** Makes the database of the records where it is missing, too. */
export async function reach(port: number, password: string, data: string): Promise<Reached> {
  const client = new pg.Client({
    host: '127.0.0.1',
    port,
    user: OWN_NAME,
    password,
    database: 'postgres',
    application_name: 'dissection-records-guard',
    connectionTimeoutMillis: ANSWER_WITHIN_MS,
    keepAlive: true,
  });
  client.on('error', () => {});
  try {
    await client.connect();
    const { rows } = await client.query(
      `select current_setting('data_directory') as data, pg_try_advisory_lock_shared($1) as mine`,
      [IN_USE],
    );
    if (rows[0]?.data !== data) throw new StoreRefused(`Another PostgreSQL answers for ${data}.`);
    if (rows[0]?.mine === true) {
      await ensureDatabase(client);
      return { kind: 'guarded', guard: guardOf(client) };
    }
    await client.end();
    return { kind: 'busy' };
  } catch (error) {
    await client.end().catch(() => {});
    if (error instanceof StoreRefused) throw error;
    return sortFault(error, data);
  }
}

/** https://www.postgresql.org/docs/18/errcodes-appendix.html: class 28, 57P01 to 57P03. */
function sortFault(error: unknown, data: string): Reached {
  const code = error instanceof pg.DatabaseError ? error.code : undefined;
  if (code?.startsWith('28')) {
    throw new StoreRefused(
      `The PostgreSQL that runs on ${data} does not take the password kept beside it. ` +
        'Stop it, or name a database in DATABASE_URL.',
    );
  }
  return { kind: code?.startsWith('57P') ? 'busy' : 'silent' };
}

async function ensureDatabase(client: pg.Client): Promise<void> {
  const found = await client.query('select 1 from pg_database where datname = $1', [OWN_NAME]);
  if (found.rowCount === 1) return;
  try {
    await client.query(`create database ${OWN_NAME}`);
  } catch (error) {
    const twice = ['42P04', '23505'];
    if (error instanceof pg.DatabaseError && twice.includes(error.code ?? '')) return;
    throw error;
  }
}

function guardOf(client: pg.Client): Guard {
  return {
    onLost: (lost) => {
      client.once('end', lost);
    },
    leave: async () => {
      client.removeAllListeners('end');
      const { rows } = await client.query(
        `select pg_advisory_unlock_shared($1), pg_try_advisory_lock($1) as alone`,
        [IN_USE],
      );
      return rows[0]?.alone === true;
    },
    end: async () => {
      client.removeAllListeners('end');
      await client.end().catch(() => {});
    },
  };
}
