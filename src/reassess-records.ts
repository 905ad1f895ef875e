import type { ExitCode } from './cli/index.js';
import { loadConfig } from './config/index.js';
import { SILENT_LOG } from './http/index.js';
import { type Close, closeAll, openRecords } from './open-records.js';
import { type Reassessed, type ReassessOptions, reassess } from './pipeline/index.js';
import { explain, refuse, type Say } from './run-service.js';
import { createRecordStore } from './store/index.js';

/** Looks at every case of the database that the environment names. */
export async function reassessRecords(
  options: ReassessOptions,
  tell: (one: Reassessed) => void,
  err: Say,
): Promise<ExitCode> {
  const config = await loadConfig();
  if (!config.ok) return refuse(config.problems, err);
  const opened: Close[] = [];
  try {
    const { database, settings } = await openRecords(config.value, SILENT_LOG, opened);
    const store = createRecordStore(database);
    const now = () => new Date().toISOString();
    for await (const one of reassess({ store, settings, now }, options)) tell(one);
    return 0;
  } catch (error) {
    return explain(error, SILENT_LOG, err);
  } finally {
    await closeAll(opened);
  }
}
