import { type Kysely, type Migration, sql } from 'kysely';

/** What is to be sent, how far each case is, and the history that people read. */
export const outbox: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table outbox (
        case_id text primary key,
        state integer not null,
        status text not null check
          (status in ('queued', 'sending', 'delivered', 'waiting-patient', 'dead-letter')),
        sending_state integer,
        since timestamptz not null,
        due_at timestamptz,
        queued_at timestamptz not null,
        attempts integer not null default 0 check (attempts >= 0),
        fence bigint not null default 0,
        worker text,
        reason text,
        failure_class text,
        first_failed_at timestamptz,
        last_failed_at timestamptz,
        delivered_state integer,
        locations text[] not null default '{}',
        constraint outbox_waits_or_is_done
          check ((due_at is null) = (status in ('delivered', 'dead-letter'))),
        constraint outbox_sends_a_state
          check (status <> 'sending' or sending_state is not null)
      )`.execute(db);
    await sql`create index outbox_due on outbox (due_at) where due_at is not null`.execute(db);
    await sql`create index outbox_by_status on outbox (status, case_id)`.execute(db);
    await sql`create sequence outbox_fence`.execute(db);

    await sql`
      create table timeline (
        position bigint generated always as identity,
        case_id text not null,
        state integer not null,
        at timestamptz not null,
        event text not null,
        detail text,
        primary key (case_id, position)
      )`.execute(db);
    await sql`
      create trigger timeline_append_only before update or delete or truncate on timeline
        for each statement execute function refuse_change()`.execute(db);

    await sql`
      create table readiness (
        single boolean primary key default true check (single),
        proved_at timestamptz not null
      )`.execute(db);
  },
};
