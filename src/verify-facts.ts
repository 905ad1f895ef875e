import type { ExitCode } from './cli/index.js';
import { loadConfig } from './config/index.js';
import { SILENT_LOG } from './http/index.js';
import { type Close, closeAll, openRecords } from './open-records.js';
import { type FactsChecked, recomputeFacts } from './pipeline/index.js';
import { explain, refuse, type Say } from './run-service.js';
import { createFactsStore, createRecordStore } from './store/index.js';

/** Makes the facts of every case of the configured database again, and tells of each. */
export async function verifyFacts(
  options: { readonly repair: boolean },
  tell: (one: FactsChecked) => void,
  err: Say,
): Promise<ExitCode> {
  const config = await loadConfig();
  if (!config.ok) return refuse(config.problems, err);
  const opened: Close[] = [];
  try {
    const { database, settings } = await openRecords(config.value, SILENT_LOG, opened);
    const store = createRecordStore(database);
    const facts = createFactsStore(database);
    for await (const one of recomputeFacts({ store, facts, settings }, options)) tell(one);
    return 0;
  } catch (error) {
    return explain(error, SILENT_LOG, err);
  } finally {
    await closeAll(opened);
  }
}
