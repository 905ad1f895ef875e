import type { ExitCode, Publication } from './cli/index.js';
import { publish } from './delivery/index.js';
import { fhirBaseOf, toTarget } from './fhir-target.js';
import { HELD, holdsBack } from './invented-cases.js';
import { onRecords, type RecordsAtHand } from './on-records.js';
import {
  type OutcomeQuestion,
  type Published,
  readPublication,
  SENT_TYPES,
} from './pipeline/index.js';
import type { Say } from './run-service.js';

/**
 * The identity mode of a server is one for all that is sent there, so that it must offer the same
 * for cases: a report alone may not settle it.
 */
const OUTCOMES = { types: [...SENT_TYPES, 'Measure', 'MeasureReport'], largestBundle: 2 };

/** Puts the outcomes of a period on the FHIR server that the environment names, and tells of it. */
export const publishOutcomes = (
  question: OutcomeQuestion,
  tell: (publication: Publication) => ExitCode,
  err: Say,
): Promise<ExitCode> =>
  onRecords(async (records) => tell(await toServer(question, records)), err, 'publish');

async function toServer(question: OutcomeQuestion, records: RecordsAtHand): Promise<Publication> {
  const { config, database, opened } = records;
  if (await holdsBack(database, config.production)) return HELD_BACK;
  const found = await readPublication(question, records);
  if (found.kind === 'invalid') return found;
  const baseUrl = await fhirBaseOf(config, database, opened);
  const target = toTarget(config, baseUrl, database, OUTCOMES);
  return publish(found.bundle, target, new AbortController().signal);
}

const HELD_BACK: Published = {
  kind: 'not-published',
  fault: 'held-back',
  reason: HELD.reason ?? '',
  issues: [],
  passing: false,
};
