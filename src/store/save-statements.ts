import type pg from 'pg';
import type {
  JournalEntry,
  StateToStore,
  TimelineEvent,
  WaitingToStore,
} from '../pipeline/index.js';
import { factColumns, factValues } from './fact-columns.js';
import { followUpParts, followUpValues } from './follow-up-statements.js';

/*
 * The statements of the accepting path. Each is one round trip and prepared once a connection.
 * The parts of a WITH see one snapshot and not each other's rows
 * (https://www.postgresql.org/docs/18/queries-with.html#QUERIES-WITH-MODIFYING), so what the
 * outbox held before is read by `before`, which the change of the outbox waits for.
 */

/** A message, and what the timeline says of its coming. */
export interface Arrival {
  readonly entry: JournalEntry;
  readonly event: Extract<TimelineEvent['event'], 'received' | 'received-stale'>;
  /** Why a message of our own was written. */
  readonly why?: string;
}

/** Columns of a message in the journal, in the order of `arrivalValues`. */
export const ENTRY_COLUMNS =
  'case_id, kind, source, natural_key, revision, sent_at, hash, bytes, received_at';

/** Places of `arrivalValues`, counted from the first: when it came, the event, which message. */
const RECEIVED_AT = 8;
const EVENT = 9;
const WHICH = 10;

/** A message, the event of its coming, and which message it was. */
export const arrivalValues = ({ entry, event, why }: Arrival): readonly unknown[] => [
  entry.caseId,
  entry.kind,
  entry.source,
  entry.naturalKey,
  entry.revision,
  entry.sentAt,
  entry.hash,
  Buffer.from(entry.bytes.buffer, entry.bytes.byteOffset, entry.bytes.byteLength),
  entry.receivedAt,
  event,
  `${entry.kind}, revision ${entry.revision}${why === undefined ? '' : `: ${why}`}`,
];

/** @returns `$from, $from+1, ...` */
const places = (count: number, from: number): string =>
  Array.from({ length: count }, (_, i) => `$${from + i}`).join(', ');

const insertEntry = (from: number): string =>
  `entry as (insert into journal (${ENTRY_COLUMNS}) values (${places(9, from)}))`;

/**
 * A message that is kept and said in the timeline, and makes no record.
 *
 * @param state that it belongs to; the newest one if it changes none
 */
export const saveArrival = (arrival: Arrival, state?: number): pg.QueryConfig => ({
  name: 'save-arrival',
  text: `
    with ${insertEntry(1)}
    insert into timeline (case_id, state, at, event, detail)
    select $1, coalesce($${2 + WHICH}::integer, (select state from outbox where case_id = $1), 0),
      ($${1 + RECEIVED_AT}::text)::timestamptz, $${1 + EVENT}::text, $${1 + WHICH}::text`,
  values: [...arrivalValues(arrival), state ?? null],
});

const STATE_PLACES = 10;
const FOLLOW_UPS = followUpParts({ caseId: '$1', state: '$2', patientKey: '$9', rows: '$10' });
const factPlaces = factColumns();
const ARRIVAL_FROM = STATE_PLACES + factPlaces.length + 1;

/** Everything of one new state; with the message that brought it, when it came in this turn. */
export const saveState = (state: StateToStore, arrival: Arrival | undefined): pg.QueryConfig => {
  const values = [
    state.caseId,
    state.state,
    state.version,
    Object.keys(state.searchKeys),
    Object.values(state.searchKeys),
    state.source,
    state.changed ?? null,
    state.deadlineAt ?? null,
    ...followUpValues(state.followUps),
    ...factValues(state.facts),
  ];
  return arrival === undefined
    ? { name: 'save-state', text: SAVE_STATE, values }
    : {
        name: 'save-state-and-arrival',
        text: SAVE_STATE_AND_ARRIVAL,
        values: [...values, ...arrivalValues(arrival)],
      };
};

const saveStateText = (entry: string, received: string): string => `
  with ${entry}
  before as (
    select state, status, sending_state from outbox where case_id = $1 for update
  ),
  kept as (insert into states (case_id, state, version) values ($1, $2, $3)),
  counted as (
    insert into facts (${factPlaces.join(', ')})
    values (${places(factPlaces.length, STATE_PLACES + 1)})
    on conflict (case_id) do update
    set ${factPlaces.map((name) => `${name} = excluded.${name}`).join(', ')}
  ),
  ${FOLLOW_UPS},
  forgotten as (delete from search_keys where case_id = $1 and name <> all ($4::text[])),
  found_by as (
    insert into search_keys (case_id, name, value)
    select $1, name, value from unnest($4::text[], $5::text[]) as keys (name, value)
    on conflict (case_id, name) do update set value = excluded.value
    where search_keys.value <> excluded.value
  ),
  queued as (
    insert into outbox (case_id, source, state, status, since, due_at, queued_at, deadline_at)
    select $1, $6, $2, 'queued', moment, moment, moment, ($8::text)::timestamptz
    from (select clock_timestamp() as moment, count(*) from before) as turn
    on conflict (case_id) do update set
      source = excluded.source,
      state = excluded.state,
      queued_at = excluded.queued_at,
      deadline_at = excluded.deadline_at,
      (status, since, due_at, attempts, reason, failure_class, first_failed_at, last_failed_at) = (
        select x.* from (
          select outbox.status, outbox.since, outbox.due_at, outbox.attempts, outbox.reason,
            outbox.failure_class, outbox.first_failed_at, outbox.last_failed_at
          where outbox.status = 'sending'
          union all
          select 'queued', excluded.since, excluded.due_at, 0, null, null, null, null
          where outbox.status <> 'sending'
        ) as x
      )
  )
  insert into timeline (case_id, state, at, event, detail)
  select $1, state, at, event, detail from (
    ${received}
    select 1 as turn, $2::integer as state, clock_timestamp() as at, 'assessed' as event,
      $7::text as detail
    union all
    select 2, state, clock_timestamp(), 'superseded', null from before
    where status in ('queued', 'waiting-patient')
      or (status = 'sending' and state <> sending_state)
    union all
    select 3, $2::integer, clock_timestamp(), 'queued', null
  ) as events order by turn`;

const SAVE_STATE = saveStateText('', '');
const SAVE_STATE_AND_ARRIVAL = saveStateText(
  `${insertEntry(ARRIVAL_FROM)},`,
  `select 0 as turn, $2::integer as state,
      ($${ARRIVAL_FROM + RECEIVED_AT}::text)::timestamptz as at,
      $${ARRIVAL_FROM + EVENT}::text as event,
      $${ARRIVAL_FROM + WHICH}::text as detail
    union all`,
);

/** Messages that came before their case: they are found, and nothing is queued. */
export const saveWaiting = (waiting: WaitingToStore): pg.QueryConfig => ({
  name: 'save-waiting',
  text: `
    with found_by as (
      insert into search_keys (case_id, name, value)
      select $1, name, value from unnest($4::text[], $5::text[]) as keys (name, value)
      on conflict (case_id, name) do nothing
    ),
    waiting as (
      insert into outbox (case_id, source, state, status, since, queued_at)
      select $1, $2, $3, 'waiting-case', moment, moment from (select clock_timestamp() as moment) as turn
      on conflict (case_id) do update set state = excluded.state
    )
    insert into timeline (case_id, state, at, event)
    values ($1, $3, clock_timestamp(), 'waiting-case')`,
  values: [
    waiting.caseId,
    waiting.source,
    waiting.state,
    Object.keys(waiting.searchKeys),
    Object.values(waiting.searchKeys),
  ],
});

/** Corrects when time alone changes the record of a case next. */
export const saveDeadline = (caseId: string, at: string | undefined): pg.QueryConfig => ({
  name: 'save-deadline',
  text: 'update outbox set deadline_at = ($2::text)::timestamptz where case_id = $1',
  values: [caseId, at ?? null],
});
