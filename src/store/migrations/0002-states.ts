import { type Kysely, type Migration, sql } from 'kysely';

/**
 * What is derived from the journal and can be derived again: the states of each case, its newest
 * facts, and the keyed hashes by which it is found. JSON is kept as text: `jsonb` keeps neither
 * the order of keys nor their spelling (https://www.postgresql.org/docs/18/datatype-json.html).
 * A version lies uncompressed, as the bytes in the journal do.
 */
export const states: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table states (
        case_id text not null,
        state integer not null check (state > 0),
        version text not null,
        created_at timestamptz not null default clock_timestamp(),
        primary key (case_id, state)
      )`.execute(db);

    await sql`alter table states alter column version set storage external`.execute(db);

    await sql`
      create table facts (
        case_id text primary key,
        state integer not null,
        source text not null,
        unit text,
        organ text not null,
        site text,
        operator text not null,
        trainee_percent double precision,
        scope_in_at text not null,
        resection_outcome text not null,
        technique text,
        pieces double precision,
        endoscopically_complete boolean,
        lesion_long_axis_mm double precision not null,
        specimen_long_axis_mm double precision,
        specimen_short_axis_mm double precision,
        specimen_area_cm2 double precision,
        procedure_min double precision,
        dissection_min double precision,
        speed_cm2_per_h double precision,
        defect_circumference_percent double precision,
        stricture_flag text,
        fibrosis text,
        intraprocedural_bleeding text,
        muscle_injury text,
        perforation boolean,
        specimen_retrieved boolean
      )`.execute(db);

    await sql`
      create table search_keys (
        case_id text not null,
        name text not null,
        value text not null,
        primary key (case_id, name)
      )`.execute(db);
    await sql`create index search_keys_found on search_keys (name, value, case_id)`.execute(db);
  },
};
