import type { IncomingHttpHeaders } from 'node:http';
import type { Refusal } from './problem-document.js';

const ACCEPTED = ['application/json', 'application/fhir+json'] as const;

/**
 * Why a body in this form is not read; undefined when it is. Without `charset` JSON is UTF-8.
 *
 * Source: RFC 8259 sections 8.1 and 11; RFC 9110 sections 8.3, 8.4 and 15.5.16 (a refusal names
 * what would have been accepted).
 */
export function mediaTypeRefusal(headers: IncomingHttpHeaders): Refusal | undefined {
  const coding = headers['content-encoding']?.trim().toLowerCase();
  if (coding !== undefined && coding !== '' && coding !== 'identity') {
    return {
      problem: 'unsupported-media-type',
      detail: 'A compressed body is not accepted: send it without Content-Encoding.',
      headers: { 'Accept-Encoding': 'identity' },
    };
  }
  const [type = '', ...parameters] = (headers['content-type'] ?? '').split(';');
  if (!isAccepted(type.trim().toLowerCase())) return refusal('The body is not declared as JSON.');
  return parameters.every(isUtf8) ? undefined : refusal('The body is not declared as UTF-8.');
}

const isAccepted = (type: string): boolean => ACCEPTED.some((accepted) => accepted === type);

/** Only `charset` matters; any other parameter may say what it likes. */
function isUtf8(parameter: string): boolean {
  const [name = '', value = ''] = parameter.split('=');
  if (name.trim().toLowerCase() !== 'charset') return true;
  return /^"?utf-8"?$/i.test(value.trim());
}

const refusal = (detail: string): Refusal => ({
  problem: 'unsupported-media-type',
  detail: `${detail} Send ${ACCEPTED.join(' or ')} in UTF-8.`,
  headers: { Accept: ACCEPTED.join(', ') },
});
