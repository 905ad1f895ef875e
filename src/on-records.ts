import type { ExitCode } from './cli/index.js';
import { type Config, loadConfig } from './config/index.js';
import { SILENT_LOG } from './http/index.js';
import { type Close, closeAll, type OpenRecords, openRecords } from './open-records.js';
import type { RecordStore } from './pipeline/index.js';
import { explain, refuse, type Say } from './run-service.js';
import { createRecordStore } from './store/index.js';

/** The records as a command finds them. */
export interface RecordsAtHand extends OpenRecords {
  readonly store: RecordStore;
  /** UTC instant. */
  readonly now: () => string;
  readonly config: Config;
  /** What is closed when the command has ended. */
  readonly opened: Close[];
}

/**
 * Opens the database that the environment names for one command, and closes it again.
 *
 * @param purpose a command that delivers nothing needs no FHIR server
 */
export async function onRecords(
  work: (records: RecordsAtHand) => Promise<ExitCode>,
  err: Say,
  purpose: 'records' | 'publish' = 'records',
): Promise<ExitCode> {
  const config = await loadConfig(process.env, purpose);
  if (!config.ok) return refuse(config.problems, err);
  const opened: Close[] = [];
  try {
    const records = await openRecords(config.value, SILENT_LOG, opened);
    const now = () => new Date().toISOString();
    const store = createRecordStore(records.database);
    return await work({ ...records, store, now, config: config.value, opened });
  } catch (error) {
    return explain(error, SILENT_LOG, err);
  } finally {
    await closeAll(opened);
  }
}
