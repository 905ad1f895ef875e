// One thread of a load: computes and stores the batches that it is given, one after the other.
import { parentPort, workerData } from 'node:worker_threads';
import type { PipelineSettings } from '../../src/pipeline/index.js';
import { openDatabase } from '../../src/store/index.js';
import type { Wanted } from './drawn-case.js';
import { type Batch, loadBatch } from './load-batch.js';

/** What a thread needs to know; the address holds the password of the database. */
export interface LoadWork {
  readonly url: string;
  readonly settings: PipelineSettings;
  readonly wanted: Wanted;
}

/** A batch to load, or that there is none any more. */
export type ToWorker = Batch | 'end';

/** How many cases of a batch were new. */
export interface FromWorker {
  readonly asked: number;
  readonly loaded: number;
}

const { url, settings, wanted }: LoadWork = workerData;
const STATEMENT_MS = 120_000;
const database = await openDatabase(url, { connections: 1, statementMs: STATEMENT_MS });

parentPort?.on('message', async (message: ToWorker) => {
  if (message === 'end') {
    await database.close();
    parentPort?.close();
    return;
  }
  const now = new Date().toISOString();
  const loaded = await loadBatch(database, settings, wanted, message, now);
  const told: FromWorker = { asked: message.to - message.from, loaded };
  parentPort?.postMessage(told);
});
parentPort?.postMessage({ asked: 0, loaded: 0 } satisfies FromWorker);
