import { randomUUID } from 'node:crypto';
import { createServer, type RequestListener, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Duplex } from 'node:stream';
import { PROBLEM_MEDIA_TYPE, problemDocument } from './problem-document.js';
import { PROBLEM_TYPES, type ProblemName } from './problem-types.table.js';

/** How long a connection may take for what, ms, and how many there may be. */
export interface ServerLimits {
  readonly headersMs: number;
  /** For the whole request, its body included. */
  readonly requestMs: number;
  readonly connections: number;
}

export interface Listening {
  readonly port: number;
  /**
   * Takes no new connection and waits for the requests in flight, at most so long.
   *
   * @returns whether all of them were answered
   */
  stop(graceMs: number): Promise<boolean>;
}

const KEEP_ALIVE_MS = 5_000;
const MAX_HEADER_BYTES = 16 * 1024;

/** Makes a server for the app with time limits; it does not listen yet. */
export function createHttpServer(app: RequestListener, limits: ServerLimits): Server {
  const server = createServer({
    headersTimeout: limits.headersMs,
    requestTimeout: limits.requestMs,
    // Limits are looked after this often, so that they end that much later at most.
    connectionsCheckingInterval: Math.min(1_000, limits.headersMs / 2),
    keepAliveTimeout: KEEP_ALIVE_MS,
    maxHeaderSize: MAX_HEADER_BYTES,
  });
  server.maxConnections = limits.connections;
  const answering = new WeakMap<Duplex, ServerResponse>();
  server.on('request', (request, response) => {
    answering.set(request.socket, response);
    app(request, response);
  });
  server.on('clientError', (error, socket) => refuseBroken(error, socket, answering.get(socket)));
  return server;
}

export function listen(server: Server, host: string, port: number): Promise<Listening> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      const address = server.address();
      resolve({ port: portOf(address) ?? port, stop: (graceMs) => stop(server, graceMs) });
    });
  });
}

const portOf = (address: AddressInfo | string | null): number | undefined =>
  typeof address === 'object' && address !== null ? address.port : undefined;

function stop(server: Server, graceMs: number): Promise<boolean> {
  return new Promise((resolve) => {
    let cut = false;
    // A connection that becomes idle only after `close` would stay until its keep-alive ends.
    const idle = setInterval(() => server.closeIdleConnections(), 20);
    const timer = setTimeout(() => {
      cut = true;
      server.closeAllConnections();
    }, graceMs);
    server.close(() => {
      clearTimeout(timer);
      clearInterval(idle);
      resolve(!cut);
    });
  });
}

/** A request that is no HTTP, too long in its header, or too slow has no response object. */
function refuseBroken(error: Error, socket: Duplex, last: ServerResponse | undefined): void {
  const begun = last?.headersSent === true && !last.req.complete;
  if (!socket.writable || begun) {
    socket.destroy();
    return;
  }
  const problem = problemOf('code' in error ? error.code : undefined);
  const refusal = { problem, detail: 'The connection was closed.' };
  const body = JSON.stringify(problemDocument(refusal, randomUUID()));
  socket.end(
    [
      `HTTP/1.1 ${PROBLEM_TYPES[problem].status} ${PROBLEM_TYPES[problem].title}`,
      `Content-Type: ${PROBLEM_MEDIA_TYPE}`,
      `Content-Length: ${Buffer.byteLength(body)}`,
      'Cache-Control: no-store',
      'Connection: close',
      '',
      body,
    ].join('\r\n'),
    () => socket.destroy(),
  );
}

/** Source: Node.js documentation, http, event 'clientError'. */
function problemOf(code: unknown): ProblemName {
  switch (code) {
    case 'ERR_HTTP_REQUEST_TIMEOUT':
      return 'request-timeout';
    case 'HPE_HEADER_OVERFLOW':
      return 'header-too-large';
    default:
      return 'bad-request';
  }
}
