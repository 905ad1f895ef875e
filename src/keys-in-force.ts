import type { Config } from './config/index.js';
import {
  type Authenticator,
  followKeyFile,
  type Log,
  makeOneTimeKeys,
  type NewKey,
} from './http/index.js';

export interface KeysInForce {
  readonly auth: Authenticator;
  /** To be shown and never kept; none when keys were set up before the start. */
  readonly oneTime: readonly NewKey[];
}

/**
 * The keys of the key file as it is at each request, and keys for this run alone when the file
 * held none at the start.
 *
 * @param source the sending system that the one-time key of the note system belongs to
 */
export function keysInForce(config: Config, source: string, log: Log): KeysInForce {
  const kept = followKeyFile(config.keysFile, () => log.error({ event: 'keys-unusable' }));
  if (config.keyCount > 0) return { auth: kept, oneTime: [] };
  const { authenticator, keys } = makeOneTimeKeys(source, new Date().toISOString());
  const auth: Authenticator = {
    authenticate: async (presented) =>
      (await authenticator.authenticate(presented)) ?? (await kept.authenticate(presented)),
  };
  return { auth, oneTime: keys };
}
