/*
 * The statements of the outbox: each alone is a transaction. Time is the database's clock, one
 * for all programs; ours may be wrong or jump. `due_at` is when a row is the worker's turn; while
 * it is being sent, that is the end of the lease, so a lease that has run out is simply due.
 */

/**
 * $1 lease in ms, $2 name of the worker. Rows that another program is just claiming are passed
 * over (https://www.postgresql.org/docs/18/sql-select.html, SKIP LOCKED). The attempt is counted
 * here and not when it ends, so that one that kills the worker counts. `version` is null where the
 * state was committed after this statement began: the locked row is the newest, but the other table
 * is seen as it was (https://www.postgresql.org/docs/18/transaction-iso.html#XACT-READ-COMMITTED).
 */
export const CLAIM = `
  with due as (
    select case_id, state, status, sending_state from outbox
    where due_at <= now()
    order by due_at
    limit 1
    for update skip locked
  ),
  taken as (
    update outbox o set
      status = 'sending',
      sending_state = o.state,
      since = clock_timestamp(),
      due_at = clock_timestamp() + $1 * interval '1 millisecond',
      worker = $2,
      fence = nextval('outbox_fence'),
      attempts = case
        when due.status = 'sending' and due.sending_state <> due.state then 1
        else o.attempts + 1
      end
    from due where o.case_id = due.case_id
    returning o.case_id, o.state, o.fence, o.attempts, o.queued_at
  ),
  events as (
    insert into timeline (case_id, state, at, event)
    select case_id, state, clock_timestamp(), event from (
      select 1 as turn, case_id, sending_state as state, 'superseded' as event from due
      where status = 'sending' and sending_state <> state
      union all
      select 2, case_id, state, 'sending' from taken
    ) as happened order by turn
  )
  select taken.case_id, taken.state, taken.fence, taken.attempts, taken.queued_at, states.version
  from taken left join states on states.case_id = taken.case_id and states.state = taken.state`;

/** $1 case, $2 state. */
export const VERSION = 'select version from states where case_id = $1 and state = $2';

/** $1 case, $2 fence, $3 lease in ms. */
export const EXTEND = `
  update outbox set due_at = clock_timestamp() + $3 * interval '1 millisecond'
  where case_id = $1 and fence = $2 and status = 'sending'`;

/**
 * $1 case, $2 fence, $3 state that was sent, $4 new status, $5 wait in ms or null, $6 whether the
 * attempt counts, $7 reason, $8 class of the failure, $9 locations when it was delivered,
 * $10 event, $11 event when a newer state waits already. A newer state is due at once and begins
 * to count anew.
 */
export const SETTLE = `
  with done as (
    update outbox set
      status = case when state = sending_state then $4 else 'queued' end,
      since = clock_timestamp(),
      due_at = case
        when state <> sending_state then clock_timestamp()
        else clock_timestamp() + $5::double precision * interval '1 millisecond'
      end,
      attempts = case
        when state <> sending_state then 0
        when $6::boolean then attempts
        else greatest(attempts - 1, 0)
      end,
      worker = null,
      reason = case when state = sending_state then $7 end,
      failure_class = case when state = sending_state then $8 end,
      first_failed_at = case
        when state = sending_state and $9::text[] is null
          then coalesce(first_failed_at, clock_timestamp())
      end,
      last_failed_at = case
        when state = sending_state and $9::text[] is null then clock_timestamp()
      end,
      delivered_state = case when $9::text[] is null then delivered_state else sending_state end,
      locations = coalesce($9::text[], locations)
    where case_id = $1 and fence = $2 and status = 'sending'
    returning case_id, state
  )
  insert into timeline (case_id, state, at, event, detail)
  select case_id, $3, clock_timestamp(),
    case when state = $3 then $10 else $11 end, $7
  from done`;

/** Milliseconds until the first row is the worker's turn. */
export const NEXT_DUE = `
  select extract(epoch from (min(due_at) - clock_timestamp()))::double precision * 1000 as ms
  from outbox where due_at is not null`;

export const COUNTS = 'select status, count(*) as cases from outbox group by status';
