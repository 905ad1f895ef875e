import type { ExitCode } from './cli/index.js';
import { loadConfig } from './config/index.js';
import { SILENT_LOG } from './http/index.js';
import { type Close, closeAll, openRecords } from './open-records.js';
import { createOutcomesService, type OutcomesService } from './pipeline/index.js';
import { explain, refuse, type Say } from './run-service.js';
import { createRecordStore } from './store/index.js';

/** Lets a command read the outcomes of the database that the environment names. */
export async function readOutcomes(
  read: (outcomes: OutcomesService) => Promise<ExitCode>,
  err: Say,
): Promise<ExitCode> {
  const config = await loadConfig();
  if (!config.ok) return refuse(config.problems, err);
  const opened: Close[] = [];
  try {
    const { database, settings } = await openRecords(config.value, SILENT_LOG, opened);
    const store = createRecordStore(database);
    const now = () => new Date().toISOString();
    return await read(createOutcomesService({ store, settings, now }));
  } catch (error) {
    return explain(error, SILENT_LOG, err);
  } finally {
    await closeAll(opened);
  }
}
