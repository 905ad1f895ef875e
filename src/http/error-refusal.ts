import { StoreUnavailable } from '../kernel/index.js';
import { KeysUnavailable } from './keys/authenticator.js';
import { RETRY_AFTER, type Refusal, Refused } from './problem-document.js';

/** What the sender is told of an error: never its message, unless it is a refusal of ours. */
export function refusalOf(error: unknown): Refusal {
  if (error instanceof Refused) return error.refusal;
  if (error instanceof StoreUnavailable) {
    return {
      problem: 'store-unavailable',
      detail: 'Nothing was acknowledged. Send the same request again: it is never kept twice.',
      headers: RETRY_AFTER,
    };
  }
  if (error instanceof KeysUnavailable) {
    return {
      problem: 'keys-unavailable',
      detail: 'Nothing was done. Send the same request again later.',
      headers: RETRY_AFTER,
    };
  }
  return isBadUrl(error) ? BAD_URL : FAILED;
}

const BAD_URL: Refusal = {
  problem: 'bad-request',
  detail: 'The address is not written as an URL is.',
};

const FAILED: Refusal = {
  problem: 'internal-error',
  detail: 'The service failed. Its log has more under the id that stands in instance.',
};

/** The router could not decode a part of the path (RFC 3986 section 2.1). */
const isBadUrl = (error: unknown): boolean =>
  error instanceof URIError && 'status' in error && error.status === 400;
