import type { CompiledQuery } from 'kysely';
import { beforeAll, describe, expect, it } from 'vitest';
import type { FollowUpListing } from '../../src/pipeline/index.js';
import { CHANGES } from '../../src/store/follow-up-changes.js';
import { EVENTS, TO_COME_OF } from '../../src/store/follow-up-store.js';
import { createRecordStore } from '../../src/store/index.js';
import { listingQuery } from '../../src/store/list-follow-ups.js';
import { testDatabase } from '../support/database.js';

const test = await testDatabase();
const database = await test.open({ statementMs: 60_000 });
const { followUps } = createRecordStore(database);

/**
 * 100,000 follow-ups of 20,000 patients over eight years, most of them done, as in a unit that has
 * worked for long; a change each, of many transactions.
 */
const FILL = `
  insert into follow_ups (id, case_id, item_key, patient_key, kind, route, item_state, target_on,
    earliest_on, latest_on, booked_on, document, state, changed_tx, calendar_status, first_on,
    last_on, sequence, calendar_changed_at)
  select gen_random_uuid()::text, 'case-' || n / 4, 'row.' || n % 4, 'patient-' || n / 5,
    case when n % 5 = 0 then 'task' else 'endoscopy' end,
    case when n % 2 = 0 then 'upper' else 'lower' end, state, day::text, (day - 30)::text,
    (day + 60)::text, case when n % 3 = 0 then day::text end, repeat('x', 400), 1,
    (n / 10 + 3)::text::xid8, 'tentative', (day - 30)::text, (day + 60)::text, 1, now()
  from (
    select n, date '2020-01-01' + n % 2900 as day,
      case when n % 10 = 0 then 'open' when n % 10 = 1 then 'to-confirm' else 'done' end as state
    from generate_series(1, 100000) as n
  ) as made`;

beforeAll(async () => {
  await database.pool.query(FILL);
  await database.pool.query('vacuum analyze follow_ups');
});

interface Plan {
  readonly 'Node Type': string;
  readonly 'Index Name'?: string;
  readonly 'Actual Rows': number;
  readonly 'Rows Removed by Filter'?: number;
  readonly Plans?: readonly Plan[];
}

const nodesOf = (plan: Plan): readonly Plan[] => [plan, ...(plan.Plans ?? []).flatMap(nodesOf)];

async function planOf(text: string, values: readonly unknown[]): Promise<readonly Plan[]> {
  const explain = `explain (analyze, format json) ${text}`;
  const { rows } = await database.pool.query(explain, [...values]);
  return nodesOf(rows[0]['QUERY PLAN'][0].Plan);
}

const ofQuery = ({ sql, parameters }: CompiledQuery) => planOf(sql, parameters);

/** No scan of the whole table, and no row that is read in vain beyond so many. */
function expectIndexed(plan: readonly Plan[], index: string, wasted: number): void {
  const used = plan.flatMap((node) => node['Index Name'] ?? []);
  expect(plan.map((node) => node['Node Type'])).not.toContain('Seq Scan');
  expect(used).toContain(index);
  const removed = plan.map((node) => node['Rows Removed by Filter'] ?? 0);
  expect(Math.max(...removed)).toBeLessThanOrEqual(wasted);
}

describe('with 100,000 follow-ups, the database uses an index for', () => {
  const states = ['provisional', 'open', 'to-confirm'] as const;
  const today = '2027-01-01';
  const listings: readonly [string, Partial<FollowUpListing>, string, number][] = [
    ['what is to come', {}, 'follow_ups_to_come', 0],
    ['what is to come from a day', { from: today }, 'follow_ups_to_come', 0],
    ['what is to come in some weeks', { from: today, to: '2027-02-01' }, 'follow_ups_to_come', 0],
    ['what is overdue', { due: { today } }, 'follow_ups_to_come', 0],
    ['what is unbooked', { due: { today, until: '2027-01-29' } }, 'follow_ups_to_come', 0],
    [
      'a page in the middle',
      { after: { on: '2023-05-05', id: '7' }, route: 'upper' },
      'follow_ups_to_come',
      400,
    ],
    ['what is done', { states: ['done'], from: today }, 'follow_ups_by_day', 200],
  ];
  it.each(listings)('%s', async (_what, listing, index, wasted) => {
    const query = listingQuery(database.db, { states, limit: 100, ...listing });
    expectIndexed(await ofQuery(query.compile()), index, wasted);
  });

  it('changes since a point', async () => {
    const { transaction } = await followUps.now();
    expectIndexed(await planOf(CHANGES, ['9000', '', transaction, 100]), 'follow_ups_changes', 0);
  });

  it('the examinations of the patients of a page', async () => {
    const patients = Array.from({ length: 100 }, (_, n) => `patient-${n * 7}`);
    expectIndexed(await planOf(TO_COME_OF, [patients]), 'follow_ups_patient', 0);
  });

  it('the events of a calendar', async () => {
    expectIndexed(await planOf(EVENTS, [today, null]), 'follow_ups_calendar', 0);
  });

  it('none where the whole is asked for, which shows that a scan is seen', async () => {
    const plan = await planOf('select document from follow_ups where document like $1', ['%y%']);
    expect(() => expectIndexed(plan, 'follow_ups_by_day', 0)).toThrow();
  });
});
