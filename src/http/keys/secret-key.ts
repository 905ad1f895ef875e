import { createHash, randomBytes } from 'node:crypto';
import type { Role, StoredKey } from '../../contract/index.js';

/** A key at the one moment when it can be read. */
export interface NewKey {
  /** To be shown once and kept nowhere. */
  readonly key: string;
  readonly stored: StoredKey;
}

/** Marks our keys for people and for programs that look for lost secrets. */
const PREFIX = 'drk_';
const FORM = /^drk_[A-Za-z0-9_-]{43}$/;

/**
 * Makes a key of 256 random bits.
 *
 * @param source the sending system, with role note-system alone
 * @param createdAt UTC instant
 */
export function makeKey(role: Role, source: string | undefined, createdAt: string): NewKey {
  const key = `${PREFIX}${randomBytes(32).toString('base64url')}`;
  const id = randomBytes(4).toString('hex');
  const owner = source === undefined ? {} : { source };
  return { key, stored: { id, role, ...owner, sha256: hashKey(key).toString('hex'), createdAt } };
}

/** @returns undefined for text that no key of ours can be */
export function hashPresented(text: string): Buffer | undefined {
  return FORM.test(text) ? hashKey(text) : undefined;
}

/** Without salt or stretching: nobody can try 2^256 keys. */
const hashKey = (key: string): Buffer => createHash('sha256').update(key).digest();
