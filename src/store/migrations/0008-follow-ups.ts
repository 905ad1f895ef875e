import { type Kysely, type Migration, sql } from 'kysely';

/**
 * The items of the newest plan of each case, one row each, and those that an earlier plan had. Days
 * are text of one form and one collation, so that they sort as days wherever the database runs. A
 * change is found by the transaction that made it
 * (https://www.postgresql.org/docs/18/functions-info.html#FUNCTIONS-PG-SNAPSHOT). Cases of before
 * are listed, to be filled in by the service, which knows how to plan them.
 */
export const followUps: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table follow_ups (
        id text collate "C" primary key,
        case_id text not null,
        item_key text not null,
        patient_key text not null,
        kind text not null check (kind in ('endoscopy', 'task')),
        route text not null,
        item_state text not null check (item_state in
          ('provisional', 'open', 'to-confirm', 'done', 'superseded', 'revoked')),
        target_on text collate "C" not null,
        earliest_on text collate "C",
        latest_on text collate "C",
        booked_on text collate "C",
        document text not null,
        state integer not null check (state > 0),
        changed_at timestamptz not null default clock_timestamp(),
        changed_tx xid8 not null default pg_current_xact_id(),
        calendar_status text check (calendar_status in ('tentative', 'confirmed', 'cancelled')),
        first_on text collate "C",
        last_on text collate "C",
        sequence integer,
        calendar_changed_at timestamptz,
        constraint follow_ups_calendar_is_whole check (
          num_nulls(calendar_status, first_on, last_on, sequence, calendar_changed_at) in (0, 5))
      )`.execute(db);
    await sql`create index follow_ups_case on follow_ups (case_id)`.execute(db);
    await sql`
      create index follow_ups_to_come on follow_ups
          (target_on, id, latest_on, earliest_on, booked_on)
        where item_state in ('provisional', 'open', 'to-confirm')`.execute(db);
    await sql`create index follow_ups_by_day on follow_ups (target_on, id, latest_on, earliest_on)`.execute(
      db,
    );
    await sql`create index follow_ups_changes on follow_ups (changed_tx, id)`.execute(db);
    await sql`
      create index follow_ups_patient on follow_ups (patient_key)
        where kind = 'endoscopy' and item_state in ('provisional', 'open', 'to-confirm')`.execute(
      db,
    );
    await sql`
      create index follow_ups_calendar on follow_ups (last_on)
        where calendar_status is not null`.execute(db);
    await sql`
      create table follow_ups_mark (
        single boolean primary key default true check (single),
        mark text not null default gen_random_uuid()::text
      )`.execute(db);
    await sql`insert into follow_ups_mark default values`.execute(db);
    await sql`create table follow_ups_unfilled (case_id text primary key)`.execute(db);
    await sql`
      insert into follow_ups_unfilled (case_id) select distinct case_id from states`.execute(db);
  },
};
