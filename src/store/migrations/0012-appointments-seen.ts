import { type Kysely, type Migration, sql } from 'kysely';

/** Until when the Appointments of the FHIR server were seen, by its own clock: one row at most. */
export const appointmentsSeen: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table appointments_seen (
        single boolean primary key default true check (single),
        until_at timestamptz not null
      )`.execute(db);
  },
};
