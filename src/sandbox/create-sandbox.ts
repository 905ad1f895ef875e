import { randomUUID } from 'node:crypto';
import express, {
  type ErrorRequestHandler,
  type Express,
  type Request,
  type Response,
} from 'express';
import { createFaults, type Faults } from './faults.js';
import { SUPPORTS_ALL, type Supports } from './interaction.js';
import { Refusal, toOperationOutcome } from './refusal.js';
import type { Reply } from './reply.js';
import { type Asked, ROUTES } from './routes.js';
import { meetEarly, send, sendFaulty } from './send.js';
import { type AnyDatabase, inSandbox } from './tables.js';

export interface SandboxOptions {
  /** Whether the service runs for real patients; then there is no sandbox. */
  readonly production: boolean;
  /** Address at which clients reach it, without a slash at its end; else that of the request. */
  readonly baseUrl?: string;
  /** What it shall lack; it says so in its CapabilityStatement. */
  readonly supports?: Partial<Supports>;
  /** Status for a reference to a resource that is not there; 400 when absent. */
  readonly missingReferenceStatus?: 400 | 409 | 422;
  /** Largest body in bytes; 10 MB when absent. */
  readonly bodyLimit?: number;
  /** What goes wrong; nothing when absent. */
  readonly faults?: Faults;
  /** The clock, milliseconds since 1970; the machine's when absent. */
  readonly nowMs?: () => number;
  /** Told of every error that is none of the client's. */
  readonly onError?: (error: unknown) => void;
}

/** The sandbox was asked for where it must not be. */
export class SandboxRefused extends Error {
  override readonly name = 'SandboxRefused';
}

const BODY_LIMIT = 10 * 1024 * 1024;

/**
 * A small HL7 FHIR R4 server for demonstrations and tests, to be mounted below a path or to listen
 * by itself. Mount it before anything that reads bodies. It needs `prepareSandbox` once.
 *
 * @throws SandboxRefused in production
 */
export function createSandbox(db: AnyDatabase, options: SandboxOptions): Express {
  if (options.production) {
    throw new SandboxRefused('The sandbox is for demonstrations: it does not run in production.');
  }
  const app = express();
  app.disable('x-powered-by');
  app.disable('etag');
  app.use(express.raw({ type: () => true, limit: options.bodyLimit ?? BODY_LIMIT }));
  const faults = options.faults ?? createFaults();
  const sandbox = inSandbox(db);

  for (const [method, path, answer] of ROUTES) {
    app[method](path, async (request, response) => {
      const fault = faults.take({ method: request.method, path: request.path });
      if (fault !== undefined && meetEarly(response, fault, faults)) return;
      const reply = await answering(options, () => answer(asked(request, options, sandbox)));
      if (fault === undefined) send(response, reply);
      else sendFaulty(response, reply, fault, faults);
    });
  }
  app.use((request: Request, response: Response) => {
    send(response, refused(notHere(request.method)));
  });
  app.use(onBrokenRequest(options));
  return app;
}

function asked(request: Request, options: SandboxOptions, db: Asked['db']): Asked {
  const { protocol, baseUrl: mountedAt } = request;
  const base = options.baseUrl ?? `${protocol}://${request.get('host') ?? 'localhost'}${mountedAt}`;
  const [, query = ''] = request.originalUrl.split(/\?(.*)/s);
  return {
    db,
    path: request.params,
    query,
    header: (name) => request.get(name),
    body: Buffer.isBuffer(request.body) ? request.body : new Uint8Array(),
    world: {
      base,
      supports: { ...SUPPORTS_ALL, ...options.supports },
      missingReferenceStatus: options.missingReferenceStatus ?? 400,
      nowMs: (options.nowMs ?? Date.now)(),
      newId: randomUUID,
    },
  };
}

async function answering(options: SandboxOptions, work: () => Promise<Reply>): Promise<Reply> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof Refusal) return refused(error);
    options.onError?.(error);
    return refused(new Refusal(500, 'exception', 'The sandbox could not do this.'));
  }
}

const refused = (refusal: Refusal): Reply => ({
  status: refusal.status,
  headers: refusal.headers,
  body: toOperationOutcome(refusal),
});

const notHere = (method: string) =>
  method === 'GET' || method === 'POST' || method === 'PUT'
    ? new Refusal(404, 'not-found', 'There is nothing at this address.')
    : new Refusal(405, 'not-supported', 'This method is not supported.', {
        headers: { Allow: 'GET, POST, PUT' },
      });

/** Bodies too large, cut off or of an unknown encoding, and addresses that cannot be read. */
function onBrokenRequest({ onError }: SandboxOptions): ErrorRequestHandler {
  return (error: unknown, _request, response, _next) => {
    const status = statusOf(error);
    if (status === 413) {
      send(response, refused(new Refusal(413, 'too-long', 'The body is larger than allowed.')));
    } else if (status >= 400 && status < 500) {
      send(response, refused(new Refusal(status, 'structure', 'The request cannot be read.')));
    } else {
      onError?.(error);
      send(response, refused(new Refusal(500, 'exception', 'The sandbox could not do this.')));
    }
  };
}

function statusOf(error: unknown): number {
  const holds = typeof error === 'object' && error !== null && 'status' in error;
  return holds && typeof error.status === 'number' ? error.status : 500;
}
