import { type Kysely, type Migration, sql } from 'kysely';

/**
 * The journal: every message exactly as it came, and nothing ever changed. The guard stands on
 * statements, so that even an update that would touch no row is refused
 * (https://www.postgresql.org/docs/18/sql-createtrigger.html). Bytes lie uncompressed
 * (https://www.postgresql.org/docs/18/storage-toast.html): compressing was what the database spent
 * most of its time on.
 *
 * `open_case` locks a case until the transaction ends and then reads its messages. It must stay
 * volatile: each statement in it sees what was committed when that statement began, the reading
 * therefore all that the holder before has written
 * (https://www.postgresql.org/docs/18/xfunc-volatility.html).
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

    await sql`alter table journal alter column bytes set storage external`.execute(db);

    await sql`
      create function open_case(wanted text, lock_key bigint) returns setof journal
      language plpgsql volatile as $$
      begin
        perform pg_advisory_xact_lock(lock_key);
        return query select * from journal where case_id = wanted order by position;
      end $$`.execute(db);

    await sql`
      create trigger journal_append_only before update or delete or truncate on journal
        for each statement execute function refuse_change()`.execute(db);
  },
};
