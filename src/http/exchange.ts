import { randomBytes, randomUUID } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { parseTraceparent } from './traceparent.js';

/** What is known of one request and its answer, for the log. */
export interface Exchange {
  readonly correlationId: string;
  readonly traceId: string;
  /** Of the monotonic clock, ms. */
  readonly startedMs: number;
  /** The pattern of the route as declared; absent where no route matched. */
  readonly route?: string;
  readonly role?: string;
  readonly keyId?: string;
  readonly caseId?: string;
  readonly state?: number;
  readonly delivery?: string;
  /** How it went, where the status alone does not tell. */
  readonly class?: string;
}

export type Noted = Partial<Omit<Exchange, 'correlationId' | 'traceId' | 'startedMs'>>;

const EXCHANGES = new WeakMap<IncomingMessage, Exchange>();

/** Begins the exchange, or gives the one that was begun. */
export function exchangeOf(request: IncomingMessage, nowMs = 0): Exchange {
  const known = EXCHANGES.get(request);
  if (known !== undefined) return known;
  const { traceparent } = request.headers;
  const trace = parseTraceparent(typeof traceparent === 'string' ? traceparent : undefined);
  const begun = {
    correlationId: randomUUID(),
    traceId: trace?.traceId ?? randomBytes(16).toString('hex'),
    startedMs: nowMs,
  };
  EXCHANGES.set(request, begun);
  return begun;
}

/** Adds what has become known. */
export function note(request: IncomingMessage, noted: Noted): void {
  EXCHANGES.set(request, { ...exchangeOf(request), ...noted });
}
