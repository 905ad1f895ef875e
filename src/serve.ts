import type { Config } from './config/index.js';
import {
  createTarget,
  createWorker,
  type DeliveryEvent,
  systemClock,
  type Worker,
} from './delivery/index.js';
import { fhirServerState } from './fhir-server-state.js';
import { fhirBaseOf, toClient, toTarget } from './fhir-target.js';
import {
  createApp,
  createHttpServer,
  createLog,
  type Listening,
  type Log,
  listen,
  type NewKey,
} from './http/index.js';
import { HELD, holdsBack } from './invented-cases.js';
import { keysInForce } from './keys-in-force.js';
import { type Close, closeAll, openRecords } from './open-records.js';
import { createPassingTime } from './passing-time.js';
import { createService, prepareStored, SENT_TYPES } from './pipeline/index.js';
import { createServerBookings } from './server-bookings.js';
import { createOutbox, createRecordStore, createSeenMark, type Database } from './store/index.js';

/** A service that listens. */
export interface Running {
  readonly port: number;
  /** Where records go. */
  readonly fhirBase: string;
  /** Whether nothing goes there: the cases of the database are invented and held back. */
  readonly isHeld: boolean;
  /** Keys of this run alone; empty when keys are set up. */
  readonly oneTimeKeys: readonly NewKey[];
  /**
   * Takes no new work, finishes what is in flight, closes everything in order.
   *
   * @returns whether every request in flight was answered
   */
  stop(): Promise<boolean>;
}

/** What a case may become; a target that takes fewer entries is refused. */
const CASES = { types: SENT_TYPES, largestBundle: 400 };
/** How long a refused sender may go on before the connection is cut. */
const LINGER_MS = 2_000;

/**
 * Builds everything once and starts it: database, store, sandbox, worker, HTTP.
 *
 * @param source the sending system that a one-time key of the note system belongs to
 * @throws when a part cannot start; what was started before is stopped again
 */
export async function startService(config: Config, source: string): Promise<Running> {
  const opened: Close[] = [];
  const log = createLog(config.logLevel);
  try {
    return await build(config, source, log, opened);
  } catch (error) {
    await closeAll(opened);
    throw error;
  }
}

async function build(config: Config, source: string, log: Log, opened: Close[]): Promise<Running> {
  const { database, settings } = await openRecords(config, log, opened);
  const isHeld = await holdsBack(database, config.production);
  const fhirBase = await fhirBaseOf(config, database, opened);
  const worker = createWorker({
    outbox: createOutbox(database, { worker: `process ${process.pid}` }),
    prepare: prepareStored(settings),
    target: createTarget(toTarget(config, fhirBase, database, CASES)),
    clock: systemClock,
    chance: Math.random,
    log: (event, fields) => log[levelOf(event)]({ event, ...fields }),
    options: { graceMs: config.limits.graceMs },
  });
  const store = createRecordStore(database);
  const service = createService({ store, settings, now: () => new Date().toISOString() });
  const passingTime = createPassingTime({
    ...{ store, settings, log },
    besides: createServerBookings({
      ...{ store, settings, log },
      ...toSearch(config, fhirBase, database),
    }),
    clock: systemClock,
    chance: Math.random,
  });
  const keys = keysInForce(config, source, log);
  let accepting = true;
  const app = createApp({
    service,
    auth: keys.auth,
    log,
    limits: { bodyBytes: config.limits.bodyBytes, lingerMs: LINGER_MS },
    clock: { monotonicMs: () => performance.now() },
    health: {
      accepting: () => accepting,
      fhirServer: () => (isHeld ? HELD : fhirServerState(worker.health())),
    },
  });
  if (isHeld) log.warn({ event: 'delivery-held' });
  else await worker.start();
  opened.push(() => worker.stop());
  passingTime.start();
  opened.push(() => passingTime.stop());
  const http = await listen(createHttpServer(app, config.limits), config.host, config.port);
  log.info({ event: 'listening', port: http.port });
  return {
    port: http.port,
    fhirBase,
    isHeld,
    oneTimeKeys: keys.oneTime,
    stop: async () => {
      accepting = false;
      log.info({ event: 'stopping' });
      return await stopAll(http, worker, config, opened);
    },
  };
}

/** Requests and deliveries in flight end side by side: one grace is enough for both. */
async function stopAll(http: Listening, worker: Worker, config: Config, opened: Close[]) {
  const [answered] = await Promise.all([http.stop(config.limits.graceMs), worker.stop()]);
  await closeAll(opened);
  return answered;
}

/** After these somebody may have to do something. */
const WARNINGS: readonly DeliveryEvent[] = [
  'dead-letter',
  'non-conformant-server',
  'store-unavailable',
  'target-down',
];

const levelOf = (event: DeliveryEvent) => (WARNINGS.includes(event) ? 'warn' : 'info');

/** Where bookings are learnt from. */
const toSearch = (config: Config, baseUrl: string, database: Database) => ({
  client: toClient(config, baseUrl),
  baseUrl,
  identifierBase: config.unit.identifierBase,
  mark: createSeenMark(database),
  clock: systemClock,
});
