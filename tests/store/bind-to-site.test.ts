import { describe, expect, it } from 'vitest';
import { siteMarkOf } from '../../src/pipeline/index.js';
import { bindToSite, StoreRefused } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';

const test = await testDatabase();
const database = await test.open();
const [SECRET, OTHER] = ['a-secret-of-the-tests-of-32-bytes', 'another-one-of-the-tests-32-bytes'];

// Source: project definition, README "Promises" 2 and "Configuration", DISSECTION_SITE_SECRET.
describe('a database and the site secret of which its ids are made', () => {
  it('belong together from the first start on, for every instance', async () => {
    await Promise.all([1, 2, 3].map(() => bindToSite(database, siteMarkOf(SECRET))));
    await bindToSite(database, siteMarkOf(SECRET));
  });

  it('refuse another secret, under which every case would be sent twice', async () => {
    const bound = bindToSite(database, siteMarkOf(OTHER));
    await expect(bound).rejects.toThrow(StoreRefused);
    await expect(bound).rejects.toThrow('another site secret');
    await bindToSite(database, siteMarkOf(SECRET));
  });

  it('do not tell the secret', async () => {
    const { rows } = await database.pool.query('select * from site');
    expect(rows).toHaveLength(1);
    expect(JSON.stringify(rows)).not.toContain(SECRET);
  });
});
