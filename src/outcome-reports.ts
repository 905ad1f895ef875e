import type { ExitCode } from './cli/index.js';
import { onRecords } from './on-records.js';
import { createOutcomesService, type OutcomesService } from './pipeline/index.js';
import type { Say } from './run-service.js';

/** Lets a command read the outcomes of the database that the environment names. */
export const readOutcomes = (
  read: (outcomes: OutcomesService) => Promise<ExitCode>,
  err: Say,
): Promise<ExitCode> => onRecords((records) => read(createOutcomesService(records)), err);
