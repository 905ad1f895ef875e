import {
  createApp,
  createHttpServer,
  listen,
  makeOneTimeKeys,
  SILENT_LOG,
} from '../../../src/http/index.js';
import type { Service } from '../../../src/pipeline/index.js';

/** A service that answers on this machine. */
export interface Answering {
  /** @returns the body of the answer to the records team */
  readonly get: (path: string) => Promise<string>;
  readonly stop: () => Promise<unknown>;
}

export async function answering(service: Service): Promise<Answering> {
  const { keys, authenticator } = makeOneTimeKeys('bench', new Date().toISOString());
  const app = createApp({
    service,
    auth: authenticator,
    log: SILENT_LOG,
    limits: { bodyBytes: 1_000_000, lingerMs: 100 },
    clock: { monotonicMs: () => performance.now() },
    health: { accepting: () => true, fhirServer: () => ({ state: 'up' }) },
  });
  const limits = { headersMs: 10_000, requestMs: 30_000, connections: 100 };
  const { port, stop } = await listen(createHttpServer(app, limits), '127.0.0.1', 0);
  const key = keys.find(({ stored }) => stored.role === 'records-team')?.key ?? '';
  return {
    get: async (path) => {
      const headers = { authorization: `Bearer ${key}` };
      const response = await fetch(`http://127.0.0.1:${port}${path}`, { headers });
      if (!response.ok) throw new Error(`answered ${response.status}`);
      return response.text();
    },
    stop: () => stop(100),
  };
}
