import type { Database } from './database.js';
import { sorting } from './faults.js';
import { StoreRefused } from './store-refused.js';

/** What is done with invented cases: nothing is delivered, or they are like any others. */
export type Invented = 'held' | 'delivered';

/**
 * Marks the database as one of invented cases alone, for good; a second time it says anew what is
 * done with them.
 *
 * @throws StoreRefused when it holds cases that were sent to it
 */
export async function markInvented({ pool }: Database, what: Invented): Promise<void> {
  const marked = await sorting(async () => {
    // A message that is being accepted ends first, and the next one finds the mark.
    const results: unknown = await pool.query(`
      begin;
      lock table journal in share row exclusive mode;
      update site set invented = '${what}'
        where invented is not null or not exists (select 1 from journal)
        returning true;
      commit`);
    return Array.isArray(results) && results[2].rowCount === 1;
  });
  if (marked) return;
  throw new StoreRefused(
    'This database holds cases that were sent to it; invented ones are loaded into a database ' +
      'of their own. Name another in DATABASE_URL, or another data folder.',
  );
}

/** @returns undefined when the cases of the database are not invented */
export const readInvented = ({ pool }: Database): Promise<Invented | undefined> =>
  sorting(async () => {
    const { rows } = await pool.query<{ invented: Invented | null }>('select invented from site');
    return rows[0]?.invented ?? undefined;
  });
