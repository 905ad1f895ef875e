import { invariant } from '../kernel/index.js';
import type { SearchHit, SearchQuery } from '../pipeline/index.js';
import type { Database } from './database.js';
import { rowsOf } from './rows-of.js';

/** In the order of case ids, a page at a time. */
export async function searchCases(
  { db, pool }: Database,
  { searchKeys, delivery, awaiting, source, limit, after }: SearchQuery,
): Promise<readonly SearchHit[]> {
  invariant(Number.isInteger(limit) && limit > 0, 'a page of search has a length');
  let query = db
    .selectFrom('outbox as o')
    .leftJoin('facts as f', (join) =>
      join.onRef('f.case_id', '=', 'o.case_id').on('f.awaits_pathology', '=', true),
    )
    .select((eb) => [
      'o.case_id',
      'o.state',
      'o.status',
      'f.scope_in_at',
      eb
        .selectFrom('journal as j')
        .select('j.received_at')
        .whereRef('j.case_id', '=', 'o.case_id')
        .orderBy('j.position')
        .limit(1)
        .as('received_at'),
    ])
    .orderBy('o.case_id')
    .limit(limit);
  for (const [name, value] of Object.entries(searchKeys)) {
    query = query.where((eb) =>
      eb.exists(
        eb
          .selectFrom('search_keys as k')
          .select('k.case_id')
          .whereRef('k.case_id', '=', 'o.case_id')
          .where('k.name', '=', name)
          .where('k.value', '=', value),
      ),
    );
  }
  if (awaiting !== undefined) query = query.where('f.case_id', 'is not', null);
  if (delivery !== undefined) query = query.where('o.status', '=', delivery);
  if (after !== undefined) query = query.where('o.case_id', '>', after);
  if (source !== undefined) query = query.where('o.source', '=', source);
  return (await rowsOf(pool, query.compile())).map((row) => ({
    caseId: row.case_id,
    state: row.state,
    delivery: row.status,
    receivedAt: row.received_at ?? '',
    ...(row.scope_in_at === null ? {} : { awaitsPathologySince: row.scope_in_at }),
  }));
}
