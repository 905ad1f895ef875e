import { execFile } from 'node:child_process';
import { lchown, lstat, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { StoreRefused } from '../store-refused.js';
import type { Layout } from './layout.js';

const run = promisify(execFile);

/** A user of this machine by number. */
export interface Account {
  readonly uid: number;
  readonly gid: number;
}

/**
 * The account to run PostgreSQL as, which refuses to run as root
 * (https://www.postgresql.org/docs/18/postgres-user.html).
 *
 * @returns undefined to run it as ourselves; as root, the owner of the data that lies there
 *   already, else `postgres`, else `nobody`
 * @throws StoreRefused when the data is another user's, or root finds no such account
 */
export async function serverAccount(layout: Layout): Promise<Account | undefined> {
  const ourUid = process.getuid?.();
  if (ourUid === undefined) return undefined;
  const owner = await stat(layout.root).catch(() => undefined);
  if (ourUid !== 0) {
    if (owner === undefined || owner.uid === ourUid) return undefined;
    throw new StoreRefused(
      `The database in ${layout.root} belongs to user ${owner.uid}, and this is user ${ourUid}. ` +
        'Start the service as that user, or name another folder in DISSECTION_DATA_DIR.',
    );
  }
  if (owner !== undefined && owner.uid !== 0) return { uid: owner.uid, gid: owner.gid };
  const account = (await accountNamed('postgres')) ?? (await accountNamed('nobody'));
  if (account !== undefined) return account;
  throw new StoreRefused(
    'PostgreSQL does not run as root, and this machine has neither a user postgres nor nobody. ' +
      'Start the service as an ordinary user, or name a database in DATABASE_URL.',
  );
}

async function accountNamed(name: string): Promise<Account | undefined> {
  try {
    const [uid, gid] = await Promise.all([run('id', ['-u', name]), run('id', ['-g', name])]);
    return { uid: Number(uid.stdout), gid: Number(gid.stdout) };
  } catch {
    return undefined;
  }
}

/**
 * The first folder on the way to `path`, or `path` itself, that the account may not enter, by the
 * permission bits alone.
 *
 * @param path absolute and free of symbolic links
 */
export async function firstUnreachable(
  path: string,
  account: Account,
): Promise<string | undefined> {
  const parent = dirname(path);
  if (parent !== path) {
    const above = await firstUnreachable(parent, account);
    if (above !== undefined) return above;
  }
  const { uid, gid, mode } = await stat(path);
  const bit = uid === account.uid ? 0o100 : gid === account.gid ? 0o010 : 0o001;
  return (mode & bit) === 0 ? path : undefined;
}

/** Makes the account the owner of the path and of all below it. Nothing to do without one. */
export async function giveTo(account: Account | undefined, path: string): Promise<void> {
  if (account === undefined) return;
  await lchown(path, account.uid, account.gid);
  if (!(await lstat(path)).isDirectory()) return;
  for (const name of await readdir(path, { recursive: true })) {
    await lchown(join(path, name), account.uid, account.gid);
  }
}
