import type { ExitCode } from './cli/index.js';
import { onRecords } from './on-records.js';
import { type FactsChecked, recomputeFacts } from './pipeline/index.js';
import type { Say } from './run-service.js';
import { createFactsStore } from './store/index.js';

/** Makes the facts of every case of the configured database again, and tells of each. */
export const verifyFacts = (
  options: { readonly repair: boolean },
  tell: (one: FactsChecked) => void,
  err: Say,
): Promise<ExitCode> =>
  onRecords(async ({ database, store, settings }) => {
    const facts = createFactsStore(database);
    for await (const one of recomputeFacts({ store, facts, settings }, options)) tell(one);
    return 0;
  }, err);
