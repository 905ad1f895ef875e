import { ROLES } from '../../contract/index.js';
import { type Authenticator, createAuthenticator } from './authenticator.js';
import { makeKey, type NewKey } from './secret-key.js';

/** Keys for this run alone, one for each role; the terminal is the only place to show them. */
export interface OneTimeKeys {
  readonly keys: readonly NewKey[];
  readonly authenticator: Authenticator;
}

/**
 * @param source the sending system that the key of the note system belongs to
 * @param createdAt UTC instant
 */
export function makeOneTimeKeys(source: string, createdAt: string): OneTimeKeys {
  const keys = ROLES.map((role) =>
    makeKey(role, role === 'note-system' ? source : undefined, createdAt),
  );
  const stored = keys.map((key) => key.stored);
  return { keys, authenticator: createAuthenticator(() => Promise.resolve(stored)) };
}
