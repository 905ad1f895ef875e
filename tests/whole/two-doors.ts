import express from 'express';
import { afterAll } from 'vitest';
import { createFaults, createSandbox, type Faults } from '../../src/sandbox/index.js';
import type { SandboxDatabase } from '../sandbox/support/sandbox-database.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';

/** One FHIR server that is reached by two addresses, so that each client can meet its own fate. */
export interface TwoDoors {
  /** What goes wrong at the first door. */
  readonly faults: Faults;
  readonly first: TestServer;
  /** Lets no transaction in until `open` is called. */
  readonly second: TestServer;
  open(): void;
}

/**
 * Call it at the top of the file; closed after its tests.
 *
 * @param db that was prepared for the sandbox
 */
export async function startTwoDoors({ db }: SandboxDatabase): Promise<TwoDoors> {
  const faults = createFaults();
  let open = (): void => undefined;
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  const gated = express();
  gated.post('/', (_request, _response, next) => {
    opened.then(() => next(), next);
  });
  gated.use(createSandbox(db, { production: false }));
  const first = await startServer(db, { faults });
  const second = await startServer(db, {}, gated);
  afterAll(async () => {
    open();
    faults.clear();
    await Promise.all([first.stop(), second.stop()]);
  });
  return { faults, first, second, open };
}
