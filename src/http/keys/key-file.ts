import { randomBytes } from 'node:crypto';
import { chmod, mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { parseKeyList, type Role, type StoredKey, writeKeyList } from '../../contract/index.js';
import { type Authenticator, createAuthenticator, KeysUnavailable } from './authenticator.js';
import { makeKey, type NewKey } from './secret-key.js';

/** The key file cannot be used; the message says why, for whoever runs the service. */
export class KeyFileRefused extends Error {
  override readonly name = 'KeyFileRefused';
}

/**
 * @returns the keys of the file, none when there is no such file
 * @throws KeyFileRefused when it is readable by others or no key file
 */
export async function readKeyFile(path: string): Promise<readonly StoredKey[]> {
  const state = await stateOf(path);
  if (state === undefined) return [];
  if (process.platform !== 'win32' && (state.mode & 0o077) !== 0) {
    throw new KeyFileRefused(`${path} can be read by others: set its mode to 0600.`);
  }
  const bytes = await readFile(path).catch(() => {
    throw new KeyFileRefused(`${path} cannot be read.`);
  });
  const keys = parseKeyList(bytes);
  if (keys.ok) return keys.value;
  const [first] = keys.problems;
  throw new KeyFileRefused(`${path} is no key file: ${first?.pointer} ${first?.message}`);
}

/** Adds a key and returns it, the only time that it can be read. */
export async function addKey(
  path: string,
  key: { readonly role: Role; readonly source?: string; readonly createdAt: string },
): Promise<NewKey> {
  const made = makeKey(key.role, key.source, key.createdAt);
  await replaceKeyFile(path, [...(await readKeyFile(path)), made.stored]);
  return made;
}

/** @returns false when the file has no key of this id */
export async function revokeKey(path: string, id: string): Promise<boolean> {
  const keys = await readKeyFile(path);
  const kept = keys.filter((key) => key.id !== id);
  if (kept.length === keys.length) return false;
  await replaceKeyFile(path, kept);
  return true;
}

/**
 * Follows the file: a change of it is in force at the next request. A file that was removed holds
 * no key; one that cannot be read lets nobody in.
 */
export function followKeyFile(path: string, onTrouble: () => void): Authenticator {
  let seen = '';
  let keys: readonly StoredKey[] = [];
  return createAuthenticator(async () => {
    try {
      const mark = await markOf(path);
      if (mark !== seen) {
        keys = await readKeyFile(path);
        seen = mark;
      }
      return keys;
    } catch {
      seen = '';
      onTrouble();
      throw new KeysUnavailable('The key file cannot be used.');
    }
  });
}

/** Changes with every replacement of the file and with every writing into it. */
async function markOf(path: string): Promise<string> {
  const state = await stateOf(path);
  return state === undefined
    ? 'none'
    : `${state.ino}/${state.size}/${state.mtimeMs}/${state.ctimeMs}`;
}

async function stateOf(path: string) {
  try {
    return await stat(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw new KeyFileRefused(`${path} cannot be looked at.`);
  }
}

/** Never leaves half a file: the new one takes the place of the old in one step. */
async function replaceKeyFile(path: string, keys: readonly StoredKey[]): Promise<void> {
  const draft = `${path}.${randomBytes(4).toString('hex')}`;
  try {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(draft, writeKeyList(keys), { mode: 0o600, flag: 'wx', flush: true });
    await chmod(draft, 0o600);
    await rename(draft, path);
  } catch {
    await rm(draft, { force: true });
    throw new KeyFileRefused(`${path} cannot be written.`);
  }
}
