import type pg from 'pg';
import type { CaseToStore } from '../pipeline/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import { type Arrival, arrivalValues, ENTRY_COLUMNS, saveState } from './save-statements.js';

/** Which of these cases the database holds already. */
export const knownCases = (
  { pool }: Database,
  caseIds: readonly string[],
): Promise<ReadonlySet<string>> =>
  sorting(async () => {
    const text = 'select distinct case_id from journal where case_id = any ($1::text[])';
    const { rows } = await pool.query<{ case_id: string }>(text, [caseIds]);
    return new Set(rows.map((row) => row.case_id));
  });

/**
 * Stores cases that the database does not hold, all of them in one transaction. Their messages are
 * one statement; each state is the statement by which every other state is stored. Nobody is told
 * that there is something to deliver: the slow look of a worker finds it.
 */
export const saveNewCases = ({ pool }: Database, cases: readonly CaseToStore[]): Promise<void> =>
  sorting(async () => {
    const client = await pool.connect();
    try {
      await client.query('begin isolation level read committed');
      for (const arrivals of portions(cases)) await client.query(saveArrivals(arrivals));
      for (const { state } of cases) await client.query(saveState(state, undefined));
      await client.query('commit');
      client.release();
    } catch (error) {
      // The connection may be what broke; without it the transaction is gone.
      client.release(true);
      throw error;
    }
  });

interface ArrivalOfState {
  readonly arrival: Arrival;
  readonly state: number;
}

const MESSAGES_AT_ONCE = 1_000;

function portions(cases: readonly CaseToStore[]): readonly (readonly ArrivalOfState[])[] {
  const all = cases.flatMap(({ arrivals, state }) =>
    arrivals.map(
      (arrival): ArrivalOfState => ({
        arrival: { ...arrival, event: 'received' },
        state: state.state,
      }),
    ),
  );
  const count = Math.ceil(all.length / MESSAGES_AT_ONCE);
  return Array.from({ length: count }, (_, i) =>
    all.slice(i * MESSAGES_AT_ONCE, (i + 1) * MESSAGES_AT_ONCE),
  );
}

const ARRIVAL_TYPES = [
  ...['text', 'text', 'text', 'text', 'bigint', 'text', 'text', 'bytea', 'text'],
  ...['text', 'text', 'integer', 'integer'],
];

/** Messages, and what the timeline says of their coming, in this order. */
function saveArrivals(arrivals: readonly ArrivalOfState[]): pg.QueryConfig {
  const rows = arrivals.map(({ arrival, state }, i) => [...arrivalValues(arrival), state, i]);
  const places = rows.map(
    (row, r) =>
      `(${row.map((_, i) => `$${r * row.length + i + 1}::${ARRIVAL_TYPES[i]}`).join(', ')})`,
  );
  return {
    text: `
      with come (${ENTRY_COLUMNS}, event, which, state, turn) as (values ${places.join(', ')}),
      entries as (
        insert into journal (${ENTRY_COLUMNS}) select ${ENTRY_COLUMNS} from come order by turn
      )
      insert into timeline (case_id, state, at, event, detail)
      select case_id, state, received_at::timestamptz, event, which from come order by turn`,
    values: rows.flat(),
  };
}
