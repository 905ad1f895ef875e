import { createServer } from 'node:http';
import type { Config } from './config/index.js';
import {
  bearerToken,
  createFhirClient,
  type FhirClient,
  systemClock,
  type TargetConfig,
} from './delivery/index.js';
import { listen } from './http/index.js';
import type { Close } from './open-records.js';
import { createSandbox, prepareSandbox } from './sandbox/index.js';
import { createKeptMode, type Database } from './store/index.js';

/** What is to be sent, as far as the server must be able to take it. */
export interface ToSend {
  /** Resource types. */
  readonly types: readonly string[];
  /** Entries of the largest Bundle. */
  readonly largestBundle: number;
}

export function toClient({ fhir: { token } }: Config, baseUrl: string): FhirClient {
  const authorize = token === undefined ? {} : { authorize: bearerToken(token) };
  return createFhirClient({ baseUrl, ...authorize });
}

/** The FHIR server as the configuration names it; the identity mode is kept in the database. */
export function toTarget(
  config: Config,
  baseUrl: string,
  database: Database,
  toSend: ToSend,
): TargetConfig {
  const { mode, allowed, entryLimit } = config.fhir;
  return {
    client: toClient(config, baseUrl),
    baseUrl,
    needs: { ...toSend, mode, ...(entryLimit === undefined ? {} : { entryLimit }) },
    missingPatient: config.unit.missingPatient,
    allowed,
    clock: systemClock,
    ...(config.sandbox ? {} : { kept: createKeptMode(database) }),
  };
}

/**
 * Where records go: the server that is named, or the sandbox, which lies in the database itself and
 * is reached by a door of this program.
 *
 * @param opened gets what is to be closed again
 */
export async function fhirBaseOf(
  config: Config,
  database: Database,
  opened: Close[],
): Promise<string> {
  return config.fhir.baseUrl ?? (await startSandbox(config, database, opened));
}

async function startSandbox(config: Config, database: Database, opened: Close[]): Promise<string> {
  await prepareSandbox(database.db);
  const sandbox = createSandbox(database.db, { production: config.production });
  const { port, stop } = await listen(createServer(sandbox), '127.0.0.1', 0);
  opened.push(() => stop(0));
  return `http://127.0.0.1:${port}`;
}
