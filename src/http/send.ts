import type { IncomingMessage, ServerResponse } from 'node:http';
import { pipeline, Readable } from 'node:stream';
import { exchangeOf } from './exchange.js';
import {
  PROBLEM_MEDIA_TYPE,
  type ProblemDocument,
  problemDocument,
  type Refusal,
} from './problem-document.js';
import { hasMuchLeft } from './read-body.js';

/** What a route answers. */
export interface Reply {
  readonly status: number;
  /** Text as it is, also piece by piece, as bytes are; anything else as JSON; not with 304. */
  readonly body: object | string | Pieces;
  /** `application/json` unless given. */
  readonly mediaType?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

type Pieces = AsyncIterable<string | Uint8Array>;

export interface SendLimits {
  readonly bodyBytes: number;
  /** How long a sender may go on after it was refused, before the connection is cut, ms. */
  readonly lingerMs: number;
}

export function refusalReply(refusal: Refusal, correlationId: string): Reply {
  const document: ProblemDocument = problemDocument(refusal, correlationId);
  return {
    status: document.status,
    body: document,
    mediaType: PROBLEM_MEDIA_TYPE,
    ...(refusal.headers === undefined ? {} : { headers: refusal.headers }),
  };
}

/** Sends the reply in UTF-8, and ends the connection if much of the body is left unread. */
export function send(
  request: IncomingMessage,
  response: ServerResponse,
  reply: Reply,
  limits: SendLimits,
): void {
  response.statusCode = reply.status;
  for (const [name, value] of Object.entries(reply.headers ?? {})) response.setHeader(name, value);
  response.setHeader('Correlation-Id', exchangeOf(request).correlationId);
  if (reply.status === NOT_MODIFIED) {
    response.end();
    return;
  }
  const { body } = reply;
  response.setHeader('Content-Type', reply.mediaType ?? 'application/json');
  if (isPieces(body)) {
    sendPieces(request, response, body);
    return;
  }
  const bytes = Buffer.from(typeof body === 'string' ? body : JSON.stringify(body));
  response.setHeader('Content-Length', bytes.length);
  if (hasMuchLeft(request, limits.bodyBytes)) endWithConnection(request, response, bytes, limits);
  else response.end(bytes);
}

const isPieces = (body: Reply['body']): body is Pieces =>
  typeof body === 'object' && Symbol.asyncIterator in body;

/**
 * As fast as they are taken. What fails on the way cuts the connection, so that nobody takes a
 * part for the whole (RFC 9112 section 8); whoever hangs up ends the reading.
 */
function sendPieces(request: IncomingMessage, response: ServerResponse, pieces: Pieces): void {
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  pipeline(Readable.from(pieces, { objectMode: true }), response, (error) => {
    if (error) response.destroy();
  });
}

/** Has no content. Source: RFC 9110 section 15.4.5. */
const NOT_MODIFIED = 304;

/**
 * The answer is complete at once; the connection closes when the sender stops, or a little later.
 * Closing it while bytes arrive could destroy the answer before it is read.
 *
 * Source: RFC 9112 section 9.6 (closing in stages).
 */
function endWithConnection(
  request: IncomingMessage,
  response: ServerResponse,
  bytes: Uint8Array,
  { lingerMs }: SendLimits,
): void {
  response.setHeader('Connection', 'close');
  response.write(bytes);
  const close = (): void => {
    clearTimeout(timer);
    response.end();
  };
  const timer = setTimeout(close, lingerMs);
  request.once('end', close).once('close', close).resume();
}
