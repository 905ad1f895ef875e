import { readFileSync } from 'node:fs';
import type { Role } from '../../src/contract/index.js';
import {
  type Authenticator,
  createApp,
  createHttpServer,
  createLog,
  type Health,
  type Listening,
  listen,
  makeOneTimeKeys,
  type ServerLimits,
} from '../../src/http/index.js';
import type { Service } from '../../src/pipeline/index.js';
import { createServiceDouble } from './service-double.js';

const SOURCE = 'example-notes';

/** A finished case of the invented unit. */
export const CASE_TEXT = readFileSync('examples/cases/minimal.json', 'utf8');

export interface RunningApp {
  readonly url: string;
  readonly port: number;
  /** A key for each role; the one of the note system belongs to SOURCE. */
  readonly keys: Readonly<Record<Role, string>>;
  /** The key of another note system. */
  readonly otherKey: string;
  readonly logLines: () => readonly string[];
  readonly post: (path: string, body: string | Uint8Array | null, more?: More) => Promise<Response>;
  readonly get: (path: string, more?: More) => Promise<Response>;
  readonly stop: Listening['stop'];
}

interface More {
  readonly role?: Role;
  readonly key?: string;
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

interface Options {
  readonly service?: Partial<Service>;
  readonly health?: Partial<Health>;
  readonly auth?: Authenticator;
  readonly bodyBytes?: number;
  readonly lingerMs?: number;
  readonly server?: Partial<ServerLimits>;
}

/** The body of an answer, which must be a JSON object. */
export async function jsonOf(response: Response): Promise<Readonly<Record<string, unknown>>> {
  const body: unknown = await response.json();
  if (typeof body !== 'object' || body === null) throw new TypeError('no JSON object');
  return { ...body };
}

const AT = '2026-03-03T12:00:00.000Z';

const RUNNING: Listening[] = [];

/** Ends every app of a test. */
export async function stopApps(): Promise<void> {
  await Promise.all(RUNNING.splice(0).map((running) => running.stop(500)));
}

/** The real app on a free port of the loopback address, with a service in memory. */
export async function runApp(options: Options = {}): Promise<RunningApp> {
  const lines: string[] = [];
  const { keys, auth, otherKey } = makeKeys();
  const app = createApp({
    service: createServiceDouble(options.service),
    auth: options.auth ?? auth,
    log: createLog('debug', { write: (line) => lines.push(line) }),
    limits: { bodyBytes: options.bodyBytes ?? 1_000_000, lingerMs: options.lingerMs ?? 200 },
    health: { accepting: () => true, fhirServer: () => ({ state: 'up' }), ...options.health },
    clock: { monotonicMs: () => performance.now() },
  });
  const limits = { headersMs: 10_000, requestMs: 30_000, connections: 100, ...options.server };
  const listening = await listen(createHttpServer(app, limits), '127.0.0.1', 0);
  RUNNING.push(listening);
  const { port, stop } = listening;
  const url = `http://127.0.0.1:${port}`;
  const call = (path: string, init: RequestInit, more: More, role: Role) =>
    fetch(`${url}${path}`, {
      ...init,
      method: more.method ?? init.method ?? 'GET',
      headers: {
        authorization: `Bearer ${more.key ?? keys[more.role ?? role]}`,
        ...more.headers,
      },
    });
  return {
    url,
    port,
    keys,
    otherKey,
    logLines: () => lines,
    post: (path, body, more = {}) =>
      call(
        path,
        { method: 'POST', body },
        { ...more, headers: { 'content-type': 'application/json', ...more.headers } },
        'note-system',
      ),
    get: (path, more = {}) => call(path, {}, more, 'records-team'),
    stop,
  };
}

function makeKeys() {
  const own = makeOneTimeKeys(SOURCE, AT);
  const other = makeOneTimeKeys('other-notes', AT);
  const keyOf = (role: Role, set = own) =>
    set.keys.find(({ stored }) => stored.role === role)?.key ?? 'none';
  const auth: Authenticator = {
    authenticate: async (presented) =>
      (await own.authenticator.authenticate(presented)) ??
      (await other.authenticator.authenticate(presented)),
  };
  const keys = {
    'note-system': keyOf('note-system'),
    'records-team': keyOf('records-team'),
    scheduler: keyOf('scheduler'),
    operator: keyOf('operator'),
  } satisfies Record<Role, string>;
  return { keys, auth, otherKey: keyOf('note-system', other) };
}
