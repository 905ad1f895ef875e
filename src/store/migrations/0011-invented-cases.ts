import { type Kysely, type Migration, sql } from 'kysely';

/**
 * Whether the cases of this database are invented, and whether such cases may be delivered. A
 * database holds invented cases alone or none.
 */
export const inventedCases: Migration = {
  up: async (db: Kysely<unknown>) => {
    await sql`
      alter table site
        add column invented text check (invented in ('held', 'delivered'))`.execute(db);
  },
};
