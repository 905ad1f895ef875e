import { timingSafeEqual } from 'node:crypto';
import type { Role, StoredKey } from '../../contract/index.js';
import { hashPresented } from './secret-key.js';

/** Who holds a key. */
export interface Principal {
  readonly keyId: string;
  readonly role: Role;
  /** With role note-system alone. */
  readonly source?: string;
}

export interface Authenticator {
  /**
   * @param presented what stands behind `Bearer`
   * @returns undefined when no such key is in force
   * @throws KeysUnavailable when nobody can say
   */
  authenticate(presented: string): Promise<Principal | undefined>;
}

/** The keys in force cannot be read, so no request is let in. */
export class KeysUnavailable extends Error {
  override readonly name = 'KeysUnavailable';
}

/** Knows the keys that `current` gives at the time of each request. */
export function createAuthenticator(current: () => Promise<readonly StoredKey[]>): Authenticator {
  return {
    authenticate: async (presented) => {
      const keys = await current();
      const hash = hashPresented(presented);
      return hash === undefined ? undefined : principalOf(findKey(keys, hash));
    },
  };
}

/** Looks at every key, so that time does not tell which one came near. */
function findKey(keys: readonly StoredKey[], hash: Buffer): StoredKey | undefined {
  let found: StoredKey | undefined;
  for (const key of keys) {
    if (timingSafeEqual(Buffer.from(key.sha256, 'hex'), hash)) found = key;
  }
  return found;
}

function principalOf(key: StoredKey | undefined): Principal | undefined {
  if (key === undefined) return undefined;
  const { id, role, source } = key;
  return { keyId: id, role, ...(source === undefined ? {} : { source }) };
}
