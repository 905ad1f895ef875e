import { once } from 'node:events';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import type { Bundle, CapabilityStatement } from 'fhir/r4.js';
import { afterAll } from 'vitest';

/** A request as the stub saw it. */
export interface SeenRequest {
  readonly method: string;
  readonly url: string;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

export type Script = (request: SeenRequest, response: ServerResponse) => void;

/** A FHIR server that does just what a test says. */
export interface StubServer {
  readonly baseUrl: string;
  readonly seen: SeenRequest[];
  /** What happens from now on. */
  script: Script;
}

export async function startStub(script: Script = () => undefined): Promise<StubServer> {
  const sockets = new Set<Socket>();
  const server = createServer(async (incoming, response) => {
    const chunks: Buffer[] = [];
    try {
      for await (const chunk of incoming) chunks.push(chunk);
    } catch {
      return;
    }
    const request = {
      method: incoming.method ?? '',
      url: incoming.url ?? '',
      headers: incoming.headers,
      body: Buffer.concat(chunks).toString('utf8'),
    };
    stub.seen.push(request);
    stub.script(request, response);
  });
  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  afterAll(async () => {
    for (const socket of sockets) socket.destroy();
    server.close();
    await once(server, 'close');
  });
  const { port } = server.address() as AddressInfo;
  const stub: StubServer = { baseUrl: `http://127.0.0.1:${port}/fhir`, seen: [], script };
  return stub;
}

/** Answers with a resource. */
export function reply(
  response: ServerResponse,
  status: number,
  resource: unknown,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { 'content-type': 'application/fhir+json', ...headers });
  response.end(JSON.stringify(resource));
}

/** A server that offers everything, for the types of the sample. */
export function capabilityStatement(
  flags: object = { updateCreate: true, conditionalUpdate: true, conditionalCreate: true },
): CapabilityStatement {
  return {
    resourceType: 'CapabilityStatement',
    status: 'active',
    date: '2026-01-01',
    kind: 'instance',
    fhirVersion: '4.0.1',
    format: ['json'],
    rest: [
      {
        mode: 'server',
        interaction: [{ code: 'transaction' }],
        resource: SAMPLE_TYPES.map((type) => ({ type, ...flags })),
      },
    ],
  };
}

export const SAMPLE_TYPES = ['Procedure', 'Condition', 'Observation', 'Provenance'] as const;

/** The answer to a search for patients with this identifier. */
export function patients(identifier: object, ...ids: readonly string[]): Bundle {
  return {
    resourceType: 'Bundle',
    type: 'searchset',
    entry: ids.map((id) => ({
      resource: { resourceType: 'Patient', id, identifier: [identifier] },
      search: { mode: 'match' },
    })),
  };
}
