import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { loadConfig } from '../../src/config/index.js';
import { SILENT_LOG } from '../../src/http/index.js';
import { invariant, type Problem } from '../../src/kernel/index.js';
import { type Close, closeAll, openRecords } from '../../src/open-records.js';
import { createRecordStore, markInvented, StoreRefused } from '../../src/store/index.js';
import type { Asked } from './arguments.js';
import type { Batch } from './load-batch.js';
import type { FromWorker, LoadWork, ToWorker } from './load-worker.js';
import type { Progress } from './progress.js';

/** What came of a load. */
export interface Loaded {
  /** Cases that the database did not hold before. */
  readonly loaded: number;
  readonly threads: number;
}

export interface LoadHooks {
  readonly progress: Progress;
  /** Whether to take no further batch. */
  stopped(): boolean;
}

/** Cases in one transaction: what an interruption loses at most, for each thread. */
const CASES_AT_ONCE = 100;

/**
 * Loads invented cases into the database that the environment names: the same computation and the
 * same rows as if the messages had come one by one, but for the states between, which are not made.
 *
 * @throws StoreRefused when the database holds cases that were sent, or another load is under way
 * @throws RangeError when the configuration cannot be used
 */
export async function load(
  { count, wanted, to }: Asked,
  { progress, stopped }: LoadHooks,
): Promise<Loaded> {
  invariant(to.kind === 'load', 'a load was asked for');
  const config = await loadConfig(process.env, 'records');
  if (!config.ok) throw new RangeError(problemsText(config.problems));
  if (config.value.production) throw new StoreRefused(REFUSED_IN_PRODUCTION);
  const opened: Close[] = [];
  try {
    const { database, settings } = await openRecords(config.value, SILENT_LOG, opened);
    await markInvented(database, to.queue ? 'delivered' : 'held');
    const url = database.config.connectionString;
    invariant(url !== undefined, 'a database is opened by its address');
    const threads = Math.min(
      to.workers ?? availableParallelism(),
      Math.ceil(count / CASES_AT_ONCE),
    );
    let loaded = 0;
    const done = ({ asked, loaded: fresh }: FromWorker): void => {
      loaded += fresh;
      progress.add(asked);
    };
    const batches = batchesOf(count, stopped);
    const work = { url, settings, wanted };
    const wasAlone = await createRecordStore(database).alone(async () => {
      await Promise.all(Array.from({ length: threads }, () => runThread(work, batches, done)));
    });
    if (!wasAlone) throw new StoreRefused('Another program is at work on this database.');
    return { loaded, threads };
  } finally {
    await closeAll(opened);
  }
}

const problemsText = (problems: readonly Problem[]): string =>
  ['This configuration cannot be used:']
    .concat(problems.map(({ pointer, message }) => `  ${pointer.slice(1)}: ${message}`))
    .join('\n');

const REFUSED_IN_PRODUCTION =
  'Invented cases are not loaded where cases of real patients are served: ' +
  'DISSECTION_PRODUCTION is true.';

function* batchesOf(count: number, stopped: () => boolean): Generator<Batch> {
  for (let from = 0; from < count && !stopped(); from += CASES_AT_ONCE) {
    yield { from, to: Math.min(count, from + CASES_AT_ONCE) };
  }
}

/** Each thread takes the next batch when it has done one, until there is none. */
function runThread(
  work: LoadWork,
  batches: Iterator<Batch>,
  done: (told: FromWorker) => void,
): Promise<void> {
  const worker = new Worker(new URL('./load-thread.mjs', import.meta.url), { workerData: work });
  return new Promise((resolve, reject) => {
    worker.on('message', (told: FromWorker) => {
      done(told);
      const { value, done: isOver } = batches.next();
      const next: ToWorker = isOver === true ? 'end' : value;
      worker.postMessage(next);
    });
    worker.on('error', reject);
    worker.on('exit', (code) =>
      code === 0 ? resolve() : reject(new Error('A thread of the load has ended.')),
    );
  });
}
