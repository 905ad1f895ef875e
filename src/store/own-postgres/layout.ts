import { randomBytes } from 'node:crypto';
import { chmod, mkdir, readdir, realpath, rm, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { StoreRefused } from '../store-refused.js';
import { isAlive } from './postmaster-file.js';

const DRAFT = /[.]new-(?<pid>\d+)-[0-9a-f]+$/;
const DRAFT_IS_OLD_AFTER_MS = 3_600_000;

/** Where everything of our own PostgreSQL lies. All of it belongs to the account that runs it. */
export interface Layout {
  /** `<folder>/postgresql`, mode 0700; nothing else lies in it. */
  readonly root: string;
  /** Comes into being by one rename, so that it is there whole or not at all. */
  readonly cluster: string;
  /** The PostgreSQL data folder, in `cluster`. */
  readonly data: string;
  /** The password of the only user, mode 0600, in `cluster`. */
  readonly password: string;
  /** What the server says; without statements and their values. */
  readonly log: string;
}

/**
 * Makes the folder where it is missing and says where things lie in it.
 *
 * @param folder the service's data folder; only `postgresql` below it is ours
 * @throws StoreRefused when it cannot be made
 */
export async function layoutIn(folder: string): Promise<Layout> {
  const root = join(resolve(folder), 'postgresql');
  try {
    const made = await mkdir(root, { recursive: true, mode: 0o700 });
    if (made !== undefined) await openParents(made, root);
    return layoutOf(await realpath(root));
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown';
    throw new StoreRefused(
      `The folder for the database cannot be made: ${reason}. Name another in DISSECTION_DATA_DIR.`,
    );
  }
}

/** @param root a `postgresql` folder, with or without anything in it */
function layoutOf(root: string): Layout {
  const cluster = join(root, 'cluster');
  return {
    root,
    cluster,
    data: join(cluster, 'data'),
    password: join(cluster, 'password'),
    log: join(root, 'server.log'),
  };
}

/** Parents that we made ourselves may be walked through: the server may run as another user. */
async function openParents(firstMade: string, root: string): Promise<void> {
  for (let path = dirname(root); path.length >= firstMade.length; path = dirname(path)) {
    await chmod(path, 0o711);
  }
}

/** A name beside the path for what is not yet whole, that tells which program makes it. */
export const draftOf = (path: string): string =>
  `${path}.new-${process.pid}-${randomBytes(4).toString('hex')}`;

/** Removes drafts whose program is gone, or that are too old to be still in the making. */
export async function removeOldDrafts(layout: Layout): Promise<void> {
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

export async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
