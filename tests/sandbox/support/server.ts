import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Express } from 'express';
import {
  type AnyDatabase,
  createSandbox,
  type SandboxOptions,
} from '../../../src/sandbox/index.js';

/** What came back over the wire; `json` is read as a client without types reads it. */
export type Answer = Awaited<ReturnType<typeof read>>;

export interface TestServer {
  /** Address of the FHIR base, without a slash at its end. */
  readonly base: string;
  get(path: string, headers?: Readonly<Record<string, string>>): Promise<Answer>;
  post(path: string, body: unknown, headers?: Readonly<Record<string, string>>): Promise<Answer>;
  put(path: string, body: unknown, headers?: Readonly<Record<string, string>>): Promise<Answer>;
  search(type: string, form: string): Promise<Answer>;
  stop(): Promise<void>;
}

const FHIR = { 'content-type': 'application/fhir+json', accept: 'application/fhir+json' };

/** The sandbox behind a real socket of the loopback interface. */
export async function startServer(
  db: AnyDatabase,
  options: Partial<SandboxOptions> = {},
  app: Express = createSandbox(db, { production: false, ...options }),
): Promise<TestServer> {
  const server = createServer(app);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const base = `http://127.0.0.1:${portOf(server)}`;
  const send =
    (method: string) =>
    async (path: string, body: unknown, headers = {}) => {
      const text = typeof body === 'string' ? body : JSON.stringify(body);
      const init = { method, headers: { ...FHIR, ...headers }, body: text };
      return await read(await fetch(base + path, init));
    };
  return {
    base,
    get: async (path, headers = {}) =>
      await read(await fetch(base + path, { headers: { accept: FHIR.accept, ...headers } })),
    post: send('POST'),
    put: send('PUT'),
    search: async (type, form) =>
      await read(
        await fetch(`${base}/${type}/_search`, {
          method: 'POST',
          headers: { 'content-type': 'application/x-www-form-urlencoded' },
          body: form,
        }),
      ),
    stop: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function read(response: Response) {
  const text = await response.text();
  const json = text === '' ? undefined : JSON.parse(text);
  return { status: response.status, headers: response.headers, text, json };
}

function portOf(server: Server): number {
  const address: AddressInfo | string | null = server.address();
  return typeof address === 'object' && address !== null ? address.port : 0;
}
