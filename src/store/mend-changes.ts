/**
 * After a restore into another server the transactions of before lie in the future of this one, and
 * nobody would be told of their changes: all count as changed now, and points given out by the
 * other server are none of this database.
 */
export const MEND_CHANGES = `
  with ahead as (
    select 1 from (select changed_tx from follow_ups order by changed_tx desc limit 1) as newest
    where newest.changed_tx >= pg_snapshot_xmax(pg_current_snapshot())
  ),
  moved as (
    update follow_ups set changed_tx = pg_current_xact_id() where exists (select 1 from ahead)
  )
  update follow_ups_mark set mark = gen_random_uuid()::text where exists (select 1 from ahead)`;
