import type { Asked } from '../outcomes/index.js';
import type { StateToStore } from '../pipeline/index.js';
import type { Database } from './database.js';
import { factColumns, factsOf } from './fact-columns.js';
import { sorting } from './faults.js';
import { createSlots } from './outcome-slots.js';
import { conditionOf } from './outcome-statements.js';
import { READ_ONLY } from './outcome-store.js';

type Facts = StateToStore['facts'];

const PAGE = 500;
/** A reader that takes nothing for so long is cut off: its reading keeps old rows alive. */
const PATIENCE_MS = 60_000;
/** Exports go on for long, so they have a place of their own beside the questions. */
const SLOTS = createSlots(1, 10_000);

/** The facts of the cases that are asked for, by day and id, through a cursor. */
export async function* readFacts(
  { pool }: Database,
  asked: Asked,
): AsyncGenerator<readonly Facts[]> {
  const giveBack = await SLOTS.take();
  try {
    const client = await sorting(() => pool.connect());
    let isOver = false;
    try {
      await sorting(() => client.query(`${READ_ONLY}; ${PATIENCE}`));
      const { where, values } = conditionOf(asked);
      const declared = `declare cases no scroll cursor for
        select ${factColumns().join(', ')} from facts where ${where}
        order by resected_on, case_id collate "C"`;
      await sorting(() => client.query(declared, [...values]));
      for (;;) {
        const { rows } = await sorting(() => client.query(`fetch ${PAGE} from cases`));
        if (rows.length > 0) yield rows.map(factsOf);
        if (rows.length < PAGE) break;
      }
      await sorting(() => client.query('commit'));
      isOver = true;
    } finally {
      // A reading that was broken off ends with its connection.
      client.release(!isOver);
    }
  } finally {
    giveBack();
  }
}

const PATIENCE = `set local idle_in_transaction_session_timeout = ${PATIENCE_MS}`;
