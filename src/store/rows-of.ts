import type { CompiledQuery } from 'kysely';
import type pg from 'pg';

/**
 * Runs what Kysely has put into words. The pool parts with a connection on which a query failed;
 * Kysely itself would give it back, though nothing may come through it any more.
 */
export async function rowsOf<Row extends pg.QueryResultRow>(
  pool: pg.Pool,
  { sql: text, parameters }: CompiledQuery<Row>,
): Promise<readonly Row[]> {
  return (await pool.query<Row>(text, [...parameters])).rows;
}
