import { createHash } from 'node:crypto';
import { chmod, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ROLES } from '../../src/contract/index.js';
import {
  addKey,
  followKeyFile,
  KeysUnavailable,
  makeOneTimeKeys,
  readKeyFile,
  revokeKey,
} from '../../src/http/index.js';

const AT = '2026-03-03T12:00:00.000Z';
const NOTES = { role: 'note-system', source: 'example-notes', createdAt: AT } as const;
const TEAM = { role: 'records-team', createdAt: AT } as const;

let folder: string;
let path: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'keys-'));
  path = join(folder, 'keys.json');
});
afterEach(() => rm(folder, { recursive: true }));

describe('a key file', () => {
  it('holds the SHA-256 of a key and never the key', async () => {
    const { key } = await addKey(path, NOTES);
    const text = await readFile(path, 'utf8');
    // FIPS 180-4, as Node computes it.
    expect(text).toContain(createHash('sha256').update(key).digest('hex'));
    expect(text).not.toContain(key);
  });

  it('gives keys of 256 random bits', async () => {
    const { key } = await addKey(path, TEAM);
    expect(Buffer.from(key.slice('drk_'.length), 'base64url')).toHaveLength(32);
    expect((await addKey(path, TEAM)).key).not.toBe(key);
  });

  it('is readable by its owner alone', async () => {
    await addKey(path, TEAM);
    expect((await stat(path)).mode & 0o777).toBe(0o600);
  });

  it('is refused when others can read it', async () => {
    await addKey(path, TEAM);
    await chmod(path, 0o640);
    await expect(readKeyFile(path)).rejects.toThrow(/mode to 0600/);
  });

  it.each([
    ['no JSON', '{'],
    ['a role that does not exist', '{"schema":"keys/1","keys":[{"role":"admin"}]}'],
    ['a note system without source', JSON.stringify({ schema: 'keys/1', keys: [entry({})] })],
    [
      'a team with source',
      JSON.stringify({ schema: 'keys/1', keys: [entry({ role: 'operator', source: 'x' })] }),
    ],
  ])('is refused with %s', async (_what, text) => {
    await writeFile(path, text, { mode: 0o600 });
    await expect(readKeyFile(path)).rejects.toThrow(/is no key file/);
  });

  it('that does not exist holds no key', async () => {
    expect(await readKeyFile(path)).toEqual([]);
  });
});

function entry(more: object): object {
  return { id: '00000000', role: 'note-system', sha256: '0'.repeat(64), createdAt: AT, ...more };
}

describe('the keys in force', () => {
  it('are all of a role at the same time, each with its source', async () => {
    const auth = followKeyFile(path, () => undefined);
    const [one, two] = [await addKey(path, NOTES), await addKey(path, NOTES)];
    for (const { key, stored } of [one, two]) {
      const { id: keyId } = stored;
      const { role, source } = NOTES;
      expect(await auth.authenticate(key)).toEqual({ keyId, role, source });
    }
  });

  it('lose a key with the request after it was revoked, and no other', async () => {
    const auth = followKeyFile(path, () => undefined);
    const [gone, kept] = [await addKey(path, TEAM), await addKey(path, TEAM)];
    expect(await auth.authenticate(gone.key)).toBeDefined();
    expect(await revokeKey(path, gone.stored.id)).toBe(true);
    expect(await auth.authenticate(gone.key)).toBeUndefined();
    expect(await auth.authenticate(kept.key)).toBeDefined();
    expect(await revokeKey(path, gone.stored.id)).toBe(false);
  });

  it('are none when the file is taken away', async () => {
    const auth = followKeyFile(path, () => undefined);
    const { key } = await addKey(path, TEAM);
    expect(await auth.authenticate(key)).toBeDefined();
    await rm(path);
    expect(await auth.authenticate(key)).toBeUndefined();
  });

  it('are unknown, and let nobody in, while the file is broken', async () => {
    let troubles = 0;
    const auth = followKeyFile(path, () => {
      troubles += 1;
    });
    const { key } = await addKey(path, TEAM);
    const good = await readFile(path);
    await auth.authenticate(key);
    await writeFile(path, '{');
    await expect(auth.authenticate(key)).rejects.toThrow(KeysUnavailable);
    expect(troubles).toBe(1);
    await writeFile(path, good);
    expect(await auth.authenticate(key)).toBeDefined();
  });

  it.each(['', 'drk_', 'x'.repeat(100_000), 'drk_é', `drk_${'A'.repeat(42)}`])(
    'do not hold text number %# that no key can be',
    async (text) => {
      await addKey(path, TEAM);
      expect(await followKeyFile(path, () => undefined).authenticate(text)).toBeUndefined();
    },
  );

  it('do not hold a key of which one character differs', async () => {
    const { key } = await addKey(path, TEAM);
    const auth = followKeyFile(path, () => undefined);
    const other = key.endsWith('A') ? `${key.slice(0, -1)}E` : `${key.slice(0, -1)}A`;
    expect(await auth.authenticate(other)).toBeUndefined();
  });
});

describe('keys for one run', () => {
  it('are one for each role, the note system bound to its source', async () => {
    const { keys, authenticator } = makeOneTimeKeys('example-notes', AT);
    expect(keys.map(({ stored }) => stored.role)).toEqual(ROLES);
    for (const { key, stored } of keys) {
      const principal = await authenticator.authenticate(key);
      expect(principal?.role).toBe(stored.role);
      const source = stored.role === 'note-system' ? 'example-notes' : undefined;
      expect(principal?.source).toBe(source);
    }
  });
});
