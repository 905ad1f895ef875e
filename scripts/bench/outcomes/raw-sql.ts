import type pg from 'pg';
import { INDICATOR_IDS } from '../../../src/outcomes/index.js';

/*
 * The aggregate of an answer by organ as somebody would write it by hand for this question alone:
 * without options, and in as few statements.
 */

const columnOf = (id: string): string =>
  id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const WORDS = INDICATOR_IDS.flatMap((id) =>
  ['yes', 'no', 'missing', 'window-open'].map(
    (word) => `count(*) filter (where ${columnOf(id)} = '${word}') as "${id} ${word}"`,
  ),
);

const quartiles = (column: string, of: string): string =>
  `percentile_cont(array[0.25, 0.5, 0.75]) within group (order by ${column})
    filter (where ${of} <> 'not-applicable') as ${column},
  count(${column}) filter (where ${of} <> 'not-applicable') as ${column}_n,
  count(*) filter (where ${of} <> 'not-applicable' and ${column} is null) as ${column}_missing`;

const COUNTED = `select organ, count(*) as cases, ${WORDS.join(', ')},
    ${quartiles('speed', 'en_bloc')}, ${quartiles('lesion_long_axis_mm', 'en_bloc')},
    ${quartiles('procedure_min', 'en_bloc')}, ${quartiles('pathology_days', 'r0')}
  from (select *, round(speed_cm2_per_h::numeric, 1)::float8 as speed from facts) as facts
  where not withdrawn group by grouping sets ((organ), ()) order by organ nulls first`;

/** 183 days after its window, a check is lost. */
const CHECKS = `select case
      when first_check_state = 'done' then
        case when first_check_timing = 'late' then 'late' else 'onTime' end
      when first_check_state in ('lost', 'ended', 'unplanned') then first_check_state
      when first_check_state <> 'open' or first_check_latest_on is null then 'notPlanned'
      when first_check_latest_on >= $1 then 'notYetDue'
      when $1::date - first_check_latest_on::date <= 183 then 'overdue' else 'lost' end as state,
    count(*) as cases from facts where not withdrawn group by 1`;

const WATCHED = `select coalesce(recurrence_on, last_check_on)::date - resected_on::date as days,
    recurrence_on is not null as recurred, count(*) as lesions
  from facts where not withdrawn and coalesce(recurrence_on, last_check_on) is not null
  group by 1, 2 order by 1, 2`;

export interface RawAnswer {
  readonly cells: readonly Readonly<Record<string, unknown>>[];
  readonly checks: Readonly<Record<string, number>>;
  readonly watched: number;
}

/** @param asOf calendar day */
export async function readRaw(client: pg.ClientBase, asOf: string): Promise<RawAnswer> {
  const cells = await client.query(COUNTED);
  const checks = await client.query(CHECKS, [asOf]);
  const watched = await client.query(WATCHED);
  return {
    cells: cells.rows,
    checks: Object.fromEntries(
      checks.rows.map(({ state, cases }) => [String(state), Number(cases)]),
    ),
    watched: watched.rows.reduce((sum, { lesions }) => sum + Number(lesions), 0),
  };
}

/** En bloc resections by organ out of the facts. */
export const EN_BLOC_OF_FACTS = `select organ, count(*) filter (where en_bloc = 'yes') as yes,
    count(*) filter (where en_bloc = 'no') as no
  from facts where not withdrawn group by 1 order by organ::text`;

/** The same out of the newest document of each case. */
export const EN_BLOC_OF_DOCUMENTS = `
  select fields #>> '{lesion,organ}' as organ,
    count(*) filter (where fields #>> '{resection,outcome}' = 'en-bloc'
      and fields #>> '{resection,complete}' is distinct from 'false') as yes,
    count(*) filter (where fields #>> '{resection,outcome}' <> 'not-started'
      and (fields #>> '{resection,outcome}' <> 'en-bloc'
        or fields #>> '{resection,complete}' is not distinct from 'false')) as no
  from (
    select jsonb_path_query_first(document, '$.messages[*] ? (@.kind == "case").fields') as fields
    from (select distinct on (case_id) version::jsonb as document from states
      order by case_id, state desc) as newest
    where not jsonb_path_exists(document, '$.messages[*] ? (@.kind == "withdrawal")')
  ) as cases group by 1 order by 1`;
