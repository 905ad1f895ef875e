import { StoreUnavailable } from '../kernel/index.js';
import type { RecordStore } from '../pipeline/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import { createFeedStore } from './feed-store.js';
import { createFollowUpStore } from './follow-up-store.js';
import { inCase } from './in-case.js';
import { createOutcomeStore } from './outcome-store.js';
import { alone, countWaiting, dailyTurn, pastDeadline } from './passing-time.js';
import { readCase, readEntries } from './read-case.js';
import { readFacts } from './read-facts.js';
import { searchCases } from './search-cases.js';
import { createBell } from './wake.js';

const READY_WITHIN_MS = 3_000;

/**
 * The records, in PostgreSQL. Work given to `inCase` holds one connection of the pool and may run
 * again after a deadlock: it reads and writes through its journal alone.
 */
export function createRecordStore(database: Database): RecordStore {
  const ring = createBell(database);
  return {
    followUps: createFollowUpStore(database),
    feeds: createFeedStore(database),
    outcomes: createOutcomeStore(database),
    facts: (asked) => readFacts(database, asked),
    inCase: async (caseId, work) => {
      const { result, queued } = await inCase(database.pool, caseId, work);
      if (queued) ring();
      return result;
    },
    read: (caseId) => sorting(() => readCase(database, caseId)),
    search: (query) => sorting(() => searchCases(database, query)),
    entries: (caseId) => sorting(() => readEntries(database, caseId)),
    pastDeadline: (now, limit, after) => sorting(() => pastDeadline(database, now, limit, after)),
    countWaiting: (before) => sorting(() => countWaiting(database, before)),
    alone: (work) => alone(database, work),
    dailyTurn: (name, now) => sorting(() => dailyTurn(database, name, now)),
    ready: () => sorting(() => proveWrite(database)),
  };
}

/** Statements in one message are one transaction, committed to disk or not at all. */
const PROOF = `
  set local statement_timeout = ${READY_WITHIN_MS - 1_000};
  insert into readiness (proved_at) values (clock_timestamp())
    on conflict (single) do update set proved_at = excluded.proved_at`;

/** A database that hangs answers nothing at all, so the waiting ends here and not only there. */
async function proveWrite({ pool }: Database): Promise<void> {
  const client = await pool.connect();
  const late = new StoreUnavailable('The store does not answer in time.');
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<never>((_, failed) => {
    timer = setTimeout(() => failed(late), READY_WITHIN_MS);
  });
  try {
    await Promise.race([client.query(PROOF), tooLate]);
    client.release();
  } catch (error) {
    client.release(true);
    throw error;
  } finally {
    clearTimeout(timer);
  }
}
