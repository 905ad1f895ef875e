import type { Database } from './database.js';
import { sorting } from './faults.js';
import { StoreRefused } from './store-refused.js';

/**
 * Binds the database to the site secret of which its ids are made, at the first start. Under
 * another secret every case would get another id, be taken for a new one and be sent twice.
 *
 * @param mark stands for the secret and does not tell it
 * @throws StoreRefused when the database is bound to another
 */
export async function bindToSite({ pool }: Database, mark: string): Promise<void> {
  const bound = await sorting(async () => {
    await pool.query('insert into site (mark) values ($1) on conflict do nothing', [mark]);
    return (await pool.query<{ mark: string }>('select mark from site')).rows[0]?.mark;
  });
  if (bound === mark) return;
  throw new StoreRefused(
    'The records in this database were made with another site secret; with this one every case ' +
      'would be sent a second time. Bring back the secret: DISSECTION_SITE_SECRET, or the file ' +
      'site-secret in the data folder.',
  );
}
