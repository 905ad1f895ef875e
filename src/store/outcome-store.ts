import type pg from 'pg';
import type { CaseInOrder, IndicatorWord, OutcomeCounts, OutcomeStore } from '../outcomes/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import { createCells, numberOf } from './outcome-cells.js';
import { createSlots, type Slots } from './outcome-slots.js';
import {
  cellsStatement,
  inOrderStatement,
  type Statement,
  tallyStatement,
} from './outcome-statements.js';
import { toTally } from './outcome-tally.js';

/** Few at once, whatever is asked: connections and processors are for the messages that come. */
const AT_ONCE = 2;
const WAIT_MS = 10_000;
const STATEMENT_MS = 30_000;

/**
 * Every answer of one reading sees the same records, writes nothing and holds no lock that a
 * message could wait for (https://www.postgresql.org/docs/18/transaction-iso.html,
 * #XACT-REPEATABLE-READ). One process reads: others would take the processors of the messages.
 * What is read lies in memory, where reading an index in its order costs no more than a table.
 */
export const READ_ONLY = `
  begin isolation level repeatable read read only;
  set local statement_timeout = ${STATEMENT_MS};
  set local max_parallel_workers_per_gather = 0;
  set local jit = off;
  set local random_page_cost = 1;
  set local work_mem = '64MB'`;

/** Counts over the facts of the cases, in PostgreSQL. */
export function createOutcomeStore({ pool }: Database): OutcomeStore {
  const slots = createSlots(AT_ONCE, WAIT_MS);
  return { read: (work) => inReading(pool, slots, (client) => work(countsOver(client))) };
}

/** Runs the work in a reading of its own. */
async function inReading<T>(
  pool: pg.Pool,
  slots: Slots,
  work: (client: pg.PoolClient) => Promise<T>,
): Promise<T> {
  const giveBack = await slots.take();
  try {
    const client = await sorting(() => pool.connect());
    try {
      await sorting(() => client.query(READ_ONLY));
      const result = await work(client);
      await sorting(() => client.query('commit'));
      client.release();
      return result;
    } catch (error) {
      // Whatever it was about, the connection is not used again.
      client.release(true);
      throw error;
    }
  } finally {
    giveBack();
  }
}

function countsOver(client: pg.PoolClient): OutcomeCounts {
  const rows = <R extends unknown[]>({ text, values }: Statement): Promise<readonly R[]> =>
    sorting(async () => {
      const asked = { text, values: [...values], rowMode: 'array' as const };
      return (await client.query<R>({ ...asked, ...WITHIN })).rows;
    });
  return {
    tally: async (asked, by) => toTally(await rows(tallyStatement(asked, by)), by),
    cells: async (asked, by, byYear) => {
      const cells = createCells(by, byYear, 0);
      for (const row of await rows(cellsStatement(asked, by, byYear))) {
        cells.add(row, numberOf(row[row.length - 2]), numberOf(row[row.length - 1]));
      }
      return cells.cells();
    },
    inOrder: async (asked, limit) =>
      (await rows<OrderedRow>(inOrderStatement(asked, limit))).map(toCaseInOrder),
  };
}

/** The limit of a statement is the server's; this one is for a server that says nothing. */
const WITHIN = { query_timeout: 2 * STATEMENT_MS };

type OrderedRow = [
  string,
  string,
  IndicatorWord,
  IndicatorWord,
  IndicatorWord,
  IndicatorWord,
  number | null,
  string,
  number | null,
];

function toCaseInOrder(row: OrderedRow): CaseInOrder {
  const [on, operator, enBloc, r0, curative, perforation, speedCm2PerH, organ, areaCm2] = row;
  const words = { enBloc, r0, curative, intraproceduralPerforation: perforation };
  return { on, operator, organ, words, speedCm2PerH, areaCm2 };
}
