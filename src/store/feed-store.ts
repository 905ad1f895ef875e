import type { FeedStore, StoredFeed } from '../pipeline/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import type { FeedsTable } from './follow-up-tables.js';

type FeedRow = Omit<FeedsTable, 'token_hash'>;

const SHOWN = 'id, route, created_at, expires_at, revoked_at';

const CREATE = `
  insert into feeds (id, token_hash, route, created_at, expires_at)
  values ($1, $2, $3, ($4::text)::timestamptz, ($5::text)::timestamptz)`;

/** A feed that was revoked before keeps the first time. */
const REVOKE = `
  update feeds set revoked_at = coalesce(revoked_at, ($2::text)::timestamptz)
  where id = $1 returning ${SHOWN}`;

/** Subscriptions to the calendar, in PostgreSQL. */
export function createFeedStore({ pool }: Database): FeedStore {
  const ask = (text: string, values: readonly unknown[]) =>
    sorting(async () => (await pool.query<FeedRow>(text, [...values])).rows.map(toFeed));
  return {
    create: async ({ id, route, createdAt, expiresAt }, tokenHash) => {
      await ask(CREATE, [id, tokenHash, route ?? null, createdAt, expiresAt]);
    },
    list: () => ask(`select ${SHOWN} from feeds order by created_at, id`, []),
    revoke: async (id, at) => (await ask(REVOKE, [id, at]))[0],
    findByHash: async (tokenHash) =>
      (await ask(`select ${SHOWN} from feeds where token_hash = $1`, [tokenHash]))[0],
  };
}

const toFeed = (row: FeedRow): StoredFeed => ({
  id: row.id,
  ...(row.route === null ? {} : { route: row.route }),
  createdAt: row.created_at.toISOString(),
  expiresAt: row.expires_at.toISOString(),
  ...(row.revoked_at === null ? {} : { revokedAt: row.revoked_at.toISOString() }),
});
