import { createHash, randomBytes } from 'node:crypto';

const FORM = /^[A-Za-z0-9_-]{43}$/;

/** The secret of a feed, 256 random bits, to be shown once and kept nowhere; and its hash. */
export function makeFeedToken(): { readonly token: string; readonly tokenHash: string } {
  const token = randomBytes(32).toString('base64url');
  return { token, tokenHash: hashOf(token) };
}

/** @returns undefined for text that no secret of ours can be */
export function hashFeedToken(text: string): string | undefined {
  return FORM.test(text) ? hashOf(text) : undefined;
}

/** Without salt or stretching: nobody can try 2^256 secrets. */
const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');
