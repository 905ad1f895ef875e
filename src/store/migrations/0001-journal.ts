import { type Kysely, type Migration, sql } from 'kysely';

/**
 * The journal: every message exactly as it came, and nothing ever changed. The guard stands on
 * statements, so that even an update that would touch no row is refused
 * (https://www.postgresql.org/docs/18/sql-createtrigger.html).
 */
export const journal: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create function refuse_change() returns trigger language plpgsql as $$
      begin
        raise exception '% is append-only', tg_table_name
          using errcode = 'integrity_constraint_violation';
      end $$`.execute(db);

    await sql`
      create table journal (
        position bigint generated always as identity primary key,
        case_id text not null,
        kind text not null,
        source text not null,
        natural_key text not null,
        revision bigint not null,
        sent_at text not null,
        hash text not null check (hash ~ '^[0-9a-f]{64}$'),
        bytes bytea not null,
        received_at text not null,
        constraint journal_one_message_a_revision
          unique (case_id, kind, natural_key, revision)
      )`.execute(db);

    await sql`
      create trigger journal_append_only before update or delete or truncate on journal
        for each statement execute function refuse_change()`.execute(db);
  },
};
