/** Why no byte of the request can have been acted upon. */
export type NotSentFault =
  | 'refused'
  | 'dns'
  | 'tls'
  | 'connect-timeout'
  | 'unreachable'
  | 'address-refused'
  | 'no-authorization';

/** Why nobody can say whether the server acted: bytes were sent, no trustworthy answer came. */
export type LostFault = 'cut' | 'timeout' | 'oversized' | 'unreadable' | 'stopped';

/** What the answer carried: a JSON resource, something that is not FHIR, or nothing. */
export type AnswerBody =
  | { readonly kind: 'json'; readonly resource: unknown }
  | { readonly kind: 'other' }
  | { readonly kind: 'empty' };

/** What came back from one request, before it is judged. The body is hostile until read. */
export type Answer =
  | { readonly kind: 'not-sent'; readonly fault: NotSentFault }
  | { readonly kind: 'lost'; readonly fault: LostFault; readonly status?: number }
  | {
      readonly kind: 'answered';
      readonly status: number;
      readonly body: AnswerBody;
      /** The Retry-After header as it came. */
      readonly retryAfter?: string;
    };
