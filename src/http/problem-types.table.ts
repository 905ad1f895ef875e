/** A kind of refusal: its title never changes, so that a reader can rely on it. */
export interface ProblemType {
  readonly title: string;
  readonly status: number;
}

/** Where the kinds are documented. */
export const PROBLEM_BASE = 'https://dissection-records.example/problems/';

/** Source: RFC 9457 sections 3.1 and 4.1; the statuses of RFC 9110 section 15, RFC 6585. */
export const PROBLEM_TYPES = {
  'unreadable-body': { title: 'The body cannot be read as JSON', status: 400 },
  'invalid-query': { title: 'The address breaks rules of its parameters', status: 400 },
  'bad-request': { title: 'The request cannot be understood', status: 400 },
  'not-authenticated': { title: 'A valid API key is needed', status: 401 },
  'not-permitted': { title: 'The API key does not permit this', status: 403 },
  'source-mismatch': { title: 'The message names another source', status: 403 },
  'small-counts-hidden': { title: 'Single cases are not shown here', status: 403 },
  'not-found': { title: 'There is nothing at this address', status: 404 },
  'method-not-allowed': { title: 'The method is not offered here', status: 405 },
  'request-timeout': { title: 'The request did not arrive in time', status: 408 },
  conflict: { title: 'The message contradicts what is stored', status: 409 },
  'cursor-gone': { title: 'The cursor is not of this database', status: 410 },
  'body-too-large': { title: 'The body is too large', status: 413 },
  'unsupported-media-type': { title: 'The body has an unsupported form', status: 415 },
  'invalid-message': { title: 'The message breaks rules of its schema', status: 422 },
  'header-too-large': { title: 'The header of the request is too large', status: 431 },
  'internal-error': { title: 'The service failed', status: 500 },
  'store-unavailable': { title: 'Nothing can be stored or read now', status: 503 },
  'keys-unavailable': { title: 'API keys cannot be checked now', status: 503 },
  'not-ready': { title: 'The service is not ready', status: 503 },
} as const satisfies Record<string, ProblemType>;

export type ProblemName = keyof typeof PROBLEM_TYPES;
