import type { FactsStore, StoredFacts } from '../pipeline/index.js';
import type { Database } from './database.js';
import { factColumns, factsOf, factValues } from './fact-columns.js';
import { sorting } from './faults.js';

const columns = factColumns();
const places = columns.map((_, i) => `$${i + 1}`).join(', ');

const PAGE = `
  select coalesce(o.case_id, f.case_id) as id, ${columns.map((name) => `f.${name}`).join(', ')}
  from outbox o full join facts f on f.case_id = o.case_id
  where $2::text is null or coalesce(o.case_id, f.case_id) > $2
  order by 1 limit $1`;

/** A state that came meanwhile wrote its own facts; theirs are newer. */
const REPAIR = `
  insert into facts (${columns.join(', ')})
  select ${places} where exists (select from outbox where case_id = $1 and state = $2)
  on conflict (case_id) do update
  set ${columns.map((name) => `${name} = excluded.${name}`).join(', ')}
  where exists (select from outbox where case_id = $1 and state = $2)`;

/** The facts of the cases, in PostgreSQL. */
export function createFactsStore({ pool }: Database): FactsStore {
  return {
    page: (limit, after) =>
      sorting(async () => (await pool.query(PAGE, [limit, after ?? null])).rows.map(toStored)),
    repair: (facts) =>
      sorting(async () => ((await pool.query(REPAIR, [...factValues(facts)])).rowCount ?? 0) > 0),
  };
}

function toStored(row: Readonly<Record<string, unknown>>): StoredFacts {
  const caseId = String(row['id']);
  return row['case_id'] === null ? { caseId } : { caseId, facts: { ...factsOf(row) } };
}
