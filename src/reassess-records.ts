import type { ExitCode } from './cli/index.js';
import { onRecords } from './on-records.js';
import { type Reassessed, type ReassessOptions, reassess } from './pipeline/index.js';
import type { Say } from './run-service.js';

/** Looks at every case of the database that the environment names. */
export const reassessRecords = (
  options: ReassessOptions,
  tell: (one: Reassessed) => void,
  err: Say,
): Promise<ExitCode> =>
  onRecords(async (records) => {
    for await (const one of reassess(records, options)) tell(one);
    return 0;
  }, err);
