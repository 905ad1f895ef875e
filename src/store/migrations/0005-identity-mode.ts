import { type Kysely, type Migration, sql } from 'kysely';

/** How resources keep their identity at the FHIR server, since it was chosen: one row at most. */
export const identityMode: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table identity_mode (
        single boolean primary key default true check (single),
        mode text not null check (mode in ('client-id', 'conditional'))
      )`.execute(db);
  },
};
