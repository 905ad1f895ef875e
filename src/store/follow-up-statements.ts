import type pg from 'pg';
import type { FollowUpRow, FollowUpsToStore } from '../pipeline/index.js';

/** Sorts after every day that there is. */
const NO_DAY = '9999-12-31';

/** Where the statement that they are a part of has its values, `$1` and so on. */
interface Places {
  readonly caseId: string;
  readonly state: string;
  readonly patientKey: string;
  readonly rows: string;
}

/** What a row says beside its own name: each column is compared and, where it differs, written. */
const CONTENT = [
  ...['case_id', 'item_key', 'patient_key', 'kind', 'route', 'item_state'],
  ...['target_on', 'earliest_on', 'latest_on', 'booked_on', 'document'],
];

const listOf = (prefix: string) => CONTENT.map((name) => `${prefix}.${name}`).join(', ');

/** What a calendar showed and is to show no more stays in it as cancelled, on its days. */
const CALENDAR = `(
  coalesce(excluded.calendar_status, case when f.calendar_status is not null then 'cancelled' end),
  coalesce(excluded.first_on, f.first_on),
  coalesce(excluded.last_on, f.last_on))`;

const CALENDAR_CHANGED = `(f.calendar_status, f.first_on, f.last_on) is distinct from ${CALENDAR}`;

/**
 * Parts of a WITH that store the follow-ups of one case, given as JSON. A row that says what it
 * said before is not written, so that nobody is told of it. What is not among them any more is
 * superseded; a booked day stays in the calendar until its booking is cancelled.
 */
export const followUpParts = ({ caseId, state, patientKey, rows }: Places): string => `
  planned as materialized (
    select * from json_to_recordset(${rows}::text::json) as given (
      id text, item_key text, kind text, route text, item_state text, target_on text,
      earliest_on text, latest_on text, booked_on text, document text, calendar_status text,
      first_on text, last_on text)
  ),
  followed as (
    insert into follow_ups as f (id, ${CONTENT.join(', ')}, state,
      calendar_status, first_on, last_on, sequence, calendar_changed_at)
    select id, ${caseId}, item_key, ${patientKey}::text, kind, route, item_state, target_on,
      earliest_on, latest_on, booked_on, document, ${state}::integer,
      calendar_status, first_on, last_on,
      case when calendar_status is not null then ${state}::integer end,
      case when calendar_status is not null then clock_timestamp() end
    from planned
    on conflict (id) do update set
      (${CONTENT.join(', ')}) = row(${listOf('excluded')}),
      state = excluded.state,
      changed_at = clock_timestamp(),
      changed_tx = pg_current_xact_id(),
      (calendar_status, first_on, last_on) = ${CALENDAR},
      sequence = case when ${CALENDAR_CHANGED} then excluded.state else f.sequence end,
      calendar_changed_at =
        case when ${CALENDAR_CHANGED} then clock_timestamp() else f.calendar_changed_at end
    where (${listOf('f')}) is distinct from (${listOf('excluded')}) or ${CALENDAR_CHANGED}
  ),
  dropped as (
    update follow_ups as f set
      item_state = 'superseded',
      state = ${state}::integer,
      changed_at = clock_timestamp(),
      changed_tx = pg_current_xact_id(),
      calendar_status = case when calendar_status = 'tentative' then 'cancelled'
        else calendar_status end,
      sequence = case when calendar_status = 'tentative' then ${state}::integer else sequence end,
      calendar_changed_at = case when calendar_status = 'tentative' then clock_timestamp()
        else calendar_changed_at end
    where case_id = ${caseId} and item_state <> 'superseded'
      and not exists (select 1 from planned where planned.id = f.id)
  )`;

/** The values of `patientKey` and `rows`. */
export const followUpValues = ({
  patientKey,
  rows,
}: FollowUpsToStore): readonly [string, string] => [
  patientKey,
  JSON.stringify(rows.map(columnsOf)),
];

/** The follow-ups of a state that was saved before there was a list of them. */
export const saveFollowUps = (
  caseId: string,
  state: number,
  followUps: FollowUpsToStore,
): pg.QueryConfig => ({
  name: 'save-follow-ups',
  text: `
    with ${followUpParts({ caseId: '$1', state: '$2', patientKey: '$3', rows: '$4' })}
    delete from follow_ups_unfilled where case_id = $1`,
  values: [caseId, state, ...followUpValues(followUps)],
});

const columnsOf = (row: FollowUpRow) => ({
  id: row.id,
  item_key: row.itemKey,
  kind: row.kind,
  route: row.route,
  item_state: row.itemState,
  target_on: row.window?.target ?? NO_DAY,
  earliest_on: row.window?.earliest,
  latest_on: row.window?.latest,
  booked_on: row.bookedOn,
  document: row.document,
  calendar_status: row.calendar?.status,
  first_on: row.calendar?.firstOn,
  last_on: row.calendar?.lastOn,
});
