import { randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const SHORTEST = 32;
const FEWEST_CHARACTERS = 10;
/** Words of secrets that were meant to be replaced. */
const MADE_UP = /change.?me|example|password|default|dry-run|123456789/i;

/** The secret of this site was lost; the message says what to do. */
export class SiteSecretRefused extends Error {
  override readonly name = 'SiteSecretRefused';
}

/** @returns why the secret would protect nothing, or undefined when it will do */
export function weaknessOf(secret: string): string | undefined {
  if (secret.length < SHORTEST) return `The site secret is shorter than ${SHORTEST} characters.`;
  if (new Set(secret).size < FEWEST_CHARACTERS || MADE_UP.test(secret)) {
    return 'The site secret is not random.';
  }
  return undefined;
}

/**
 * The secret in the data folder, which is made at the first start. The ids of all records depend
 * on it: it must be kept as long as they are.
 *
 * @throws SiteSecretRefused when the file holds something else
 */
export function ownSiteSecret(dataDir: string): string {
  const path = join(dataDir, 'site-secret');
  mkdirSync(dataDir, { recursive: true });
  try {
    const secret = randomBytes(32).toString('hex');
    writeFileSync(path, `${secret}\n`, { mode: 0o600, flag: 'wx', flush: true });
    return secret;
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    return usable(readFileSync(path, 'utf8').trim(), path);
  }
}

function usable(secret: string, path: string): string {
  if (weaknessOf(secret) === undefined) return secret;
  throw new SiteSecretRefused(
    `${path} does not hold the site secret that was made there. Bring it back from a backup; ` +
      'only if no record was ever kept, remove the file.',
  );
}
