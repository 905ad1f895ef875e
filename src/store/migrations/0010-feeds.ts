import { type Kysely, type Migration, sql } from 'kysely';

/** Subscriptions to the calendar. Their secrets are kept as hashes alone. */
export const feeds: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table feeds (
        id text primary key,
        token_hash text not null unique,
        route text,
        created_at timestamptz not null,
        expires_at timestamptz not null check (expires_at > created_at),
        revoked_at timestamptz
      )`.execute(db);
  },
};
