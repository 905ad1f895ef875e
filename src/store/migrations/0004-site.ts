import { type Kysely, type Migration, sql } from 'kysely';

/** Which site secret the ids in this database are made of: one row, written once. */
export const site: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      create table site (
        single boolean primary key default true check (single),
        mark text not null
      )`.execute(db);
  },
};
