import type { IncomingMessage } from 'node:http';
import type { Role } from '../contract/index.js';
import { invariant } from '../kernel/index.js';
import type { Caller } from '../pipeline/index.js';
import { note } from './exchange.js';
import type { Authenticator, Principal } from './keys/authenticator.js';
import { type Refusal, Refused } from './problem-document.js';

/**
 * Lets a request through to its route or refuses it.
 *
 * @returns who calls; for an open route a caller without any source
 * @throws Refused with 401 or 403
 * @throws KeysUnavailable when keys cannot be checked
 */
export async function authorise(
  request: IncomingMessage,
  access: 'open' | readonly Role[],
  auth: Authenticator,
): Promise<Caller> {
  if (access === 'open') return {};
  const principal = await identify(request, auth);
  note(request, { role: principal.role, keyId: principal.keyId });
  if (!access.includes(principal.role)) throw new Refused(NOT_PERMITTED);
  return callerOf(principal);
}

/** Source: RFC 6750 section 2.1. */
const BEARER = /^Bearer +([^ ]+)$/i;

async function identify(request: IncomingMessage, auth: Authenticator): Promise<Principal> {
  const [, presented] = BEARER.exec(request.headers.authorization ?? '') ?? [];
  if (presented === undefined) throw new Refused(NO_KEY);
  const principal = await auth.authenticate(presented);
  if (principal === undefined) throw new Refused(UNKNOWN_KEY);
  return principal;
}

/** A note system without a source would see every case, which no key may cause. */
function callerOf({ role, source }: Principal): Caller {
  invariant((role === 'note-system') === (source !== undefined), 'note systems have a source');
  return source === undefined ? { role } : { role, source };
}

const REALM = 'Bearer realm="dissection-records"';

/** Source: RFC 9110 section 11.6.1, RFC 6750 section 3. */
const NO_KEY: Refusal = {
  problem: 'not-authenticated',
  detail: 'Send an API key as "Authorization: Bearer <key>".',
  headers: { 'WWW-Authenticate': REALM },
};

const UNKNOWN_KEY: Refusal = {
  problem: 'not-authenticated',
  detail: 'This API key is not in force.',
  headers: { 'WWW-Authenticate': `${REALM}, error="invalid_token"` },
};

const NOT_PERMITTED: Refusal = {
  problem: 'not-permitted',
  detail: 'The role of this API key does not include this route.',
  headers: { 'WWW-Authenticate': `${REALM}, error="insufficient_scope"` },
};
