import type { Answer, LostFault, NotSentFault } from './answer.js';
import { isRecord, textAt } from './json.js';

/**
 * Codes of the network layer that come before any byte of the request was sent.
 * Source: Node.js documentation, errors (common system errors, OpenSSL error codes) and tls
 * (X509 certificate error codes); the code beginning with UND_ is that of Node's own fetch.
 */
const NOT_SENT: Readonly<Record<string, NotSentFault>> = {
  ECONNREFUSED: 'refused',
  ENOTFOUND: 'dns',
  EAI_AGAIN: 'dns',
  EAI_FAIL: 'dns',
  EAI_NODATA: 'dns',
  EAI_NONAME: 'dns',
  UND_ERR_CONNECT_TIMEOUT: 'connect-timeout',
  EHOSTUNREACH: 'unreachable',
  EHOSTDOWN: 'unreachable',
  ENETUNREACH: 'unreachable',
  ENETDOWN: 'unreachable',
  EADDRNOTAVAIL: 'unreachable',
  EACCES: 'unreachable',
  EPROTO: 'tls',
  CERT_HAS_EXPIRED: 'tls',
  CERT_NOT_YET_VALID: 'tls',
  CERT_REVOKED: 'tls',
  CERT_UNTRUSTED: 'tls',
  CERT_REJECTED: 'tls',
  CERT_SIGNATURE_FAILURE: 'tls',
  DEPTH_ZERO_SELF_SIGNED_CERT: 'tls',
  SELF_SIGNED_CERT_IN_CHAIN: 'tls',
  UNABLE_TO_GET_ISSUER_CERT: 'tls',
  UNABLE_TO_GET_ISSUER_CERT_LOCALLY: 'tls',
  UNABLE_TO_VERIFY_LEAF_SIGNATURE: 'tls',
  INVALID_CA: 'tls',
  INVALID_PURPOSE: 'tls',
  HOSTNAME_MISMATCH: 'tls',
};

/** Families of codes, by their beginning. */
const NOT_SENT_BEGINNINGS: readonly (readonly [string, NotSentFault])[] = [
  ['ERR_TLS_', 'tls'],
  ['ERR_SSL_', 'tls'],
];

/**
 * What an exception of `fetch`, or of reading its body, tells about the request. Whatever is
 * not known to come before the first byte counts as lost: repeating is safe, forgetting is not.
 *
 * @param status HTTP status, if one had come before the exception
 */
export function faultOf(error: unknown, status?: number): Answer {
  const known = status === undefined ? {} : { status };
  const lost = (fault: LostFault): Answer => ({ kind: 'lost', fault, ...known });
  if (textAt(error, 'name') === 'TimeoutError') return lost('timeout');
  if (textAt(error, 'name') === 'AbortError') return lost('stopped');
  if (status !== undefined) return lost('cut');

  const cause = isRecord(error) ? error['cause'] : undefined;
  const fault = notSentFault(cause);
  return fault === undefined ? lost('cut') : { kind: 'not-sent', fault };
}

function notSentFault(cause: unknown): NotSentFault | undefined {
  const code = textAt(cause, 'code') ?? '';
  const message = textAt(cause, 'message') ?? '';
  if (message.includes('before secure TLS connection was established')) return 'tls';
  if (message === 'bad port') return 'address-refused';
  const beginning = NOT_SENT_BEGINNINGS.find(([start]) => code.startsWith(start));
  const named = NOT_SENT[code] ?? beginning?.[1];
  return named ?? (textAt(cause, 'syscall') === 'connect' ? 'unreachable' : undefined);
}
