import type pg from 'pg';
import { invariant, sha256 } from '../kernel/index.js';
import type { CaseJournal, JournalEntry } from '../pipeline/index.js';
import { type OpenJournal, openJournal, toEntries } from './case-journal.js';
import { sorted, sqlState } from './faults.js';

/** The result of the work, and whether something was queued. */
export interface Committed<T> {
  readonly result: T;
  readonly queued: boolean;
}

const TRIES_AT_MOST = 3;

/** Serialisation failure and deadlock: all was rolled back, and the same again may succeed. */
const AGAIN = ['40001', '40P01'];

/**
 * Runs the work in one transaction that holds the case against every other program: an advisory
 * lock, given back with the transaction however that ends
 * (https://www.postgresql.org/docs/18/explicit-locking.html#ADVISORY-LOCKS). The isolation is
 * read committed, said here because a site may have set another default: what is read after the
 * lock is what the holder before has committed
 * (https://www.postgresql.org/docs/18/transaction-iso.html).
 *
 * @throws what the work throws, after rolling back; faults of the database as `sorted` says
 */
export async function inCase<T>(
  pool: pg.Pool,
  caseId: string,
  work: (journal: CaseJournal) => Promise<T>,
): Promise<Committed<T>> {
  for (let tries = 1; ; tries += 1) {
    const outcome = await once(pool, caseId, work);
    if (outcome.kind === 'done') return outcome.committed;
    const again = AGAIN.includes(sqlState(outcome.fault) ?? '') && tries < TRIES_AT_MOST;
    if (!again) throw sorted(outcome.fault);
  }
}

type Outcome<T> =
  | { readonly kind: 'done'; readonly committed: Committed<T> }
  | { readonly kind: 'fault'; readonly fault: unknown };

/** A fault of the database inside of the work, kept apart from what the work itself throws. */
class Fault extends Error {
  readonly fault: unknown;
  constructor(fault: unknown) {
    super('a fault of the database');
    this.fault = fault;
  }
}

async function once<T>(
  pool: pg.Pool,
  caseId: string,
  work: (journal: CaseJournal) => Promise<T>,
): Promise<Outcome<T>> {
  let client: pg.PoolClient;
  try {
    client = await pool.connect();
  } catch (fault) {
    return { kind: 'fault', fault };
  }
  let broken: Error | undefined;
  const lost = (error: Error): void => {
    broken = error;
  };
  client.on('error', lost);
  try {
    const committed = await inTransaction(client, caseId, work);
    return { kind: 'done', committed };
  } catch (error) {
    await client.query('rollback').catch(lost);
    if (error instanceof Fault) return { kind: 'fault', fault: error.fault };
    throw error;
  } finally {
    client.off('error', lost);
    client.release(broken);
  }
}

async function inTransaction<T>(
  client: pg.PoolClient,
  caseId: string,
  work: (journal: CaseJournal) => Promise<T>,
): Promise<Committed<T>> {
  const entries = await faulting(() => openCase(client, caseId));
  const journal = openJournal(client, caseId, entries);
  const result = await work(sortingJournal(journal));
  const queued = await faulting(() => journal.finish());
  await faulting(() => client.query('commit'));
  return { result, queued };
}

/**
 * Begins, locks and reads in one round trip. Several statements in one message take no parameters,
 * so the case id is escaped into the text.
 */
async function openCase(client: pg.PoolClient, caseId: string): Promise<readonly JournalEntry[]> {
  const results: unknown = await client.query(
    `begin isolation level read committed;
    select * from open_case(${client.escapeLiteral(caseId)}, ${lockKey(caseId)})`,
  );
  invariant(Array.isArray(results), 'two statements have two results');
  return toEntries(results[1].rows);
}

function lockKey(caseId: string): string {
  const hash = sha256(new TextEncoder().encode(caseId));
  return BigInt.asIntN(64, BigInt(`0x${hash.slice(0, 16)}`)).toString();
}

const sortingJournal = (journal: OpenJournal): CaseJournal => ({
  entries: () => faulting(() => journal.entries()),
  append: (entry, why) => journal.append(entry, why),
  appendStale: (entry) => journal.appendStale(entry),
  saveState: (state) => faulting(() => journal.saveState(state)),
  saveWaiting: (waiting) => faulting(() => journal.saveWaiting(waiting)),
  saveDeadline: (at) => faulting(() => journal.saveDeadline(at)),
  saveFollowUps: (state, rows) => faulting(() => journal.saveFollowUps(state, rows)),
});

async function faulting<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw new Fault(error);
  }
}
