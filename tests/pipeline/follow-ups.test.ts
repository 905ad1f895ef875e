import pg from 'pg';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createPassingTime } from '../../src/passing-time.js';
import { createService, type FollowUp, fillFollowUps } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { altered, EXAMPLES, example, type Sent } from '../support/example-messages.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const settings = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0',
};
let now = '2027-06-01T10:00:00.000Z';
const service = createService({ store, settings, now: () => now });

afterEach(() => {
  vi.restoreAllMocks();
  now = '2027-06-01T10:00:00.000Z';
});

async function push({ kind, bytes }: Sent): Promise<string> {
  const receipt = await service.receive(kind, bytes, {});
  if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
  return receipt.receipt.caseId;
}

/** Every follow-up of some cases, as the records team sees it. */
async function followUpsOf(...caseIds: readonly string[]): Promise<readonly FollowUp[]> {
  const states = ['provisional', 'open', 'to-confirm', 'done', 'superseded', 'revoked'] as const;
  const found = await service.listFollowUps({ states, limit: 500 }, { role: 'records-team' });
  if (found.kind !== 'found') throw new Error(found.kind);
  return found.page.followUps.filter(
    (each): each is FollowUp => 'rule' in each.item && caseIds.includes(each.caseId),
  );
}

const CASE = { system: 'urn:oid:2.999.1.2' };
const numbered = (message: Sent, value: string, patient?: string): Sent =>
  altered(message, {
    case: { ...CASE, value },
    ...(patient === undefined
      ? {}
      : { patient: { ...message.document['patient'], value: patient } }),
  });

describe('accepting a message with all its follow-ups', () => {
  it('is three messages to the database: open, save, commit', async () => {
    await push(numbered(example('case', 'stomach-differentiated'), 'EX-C-900', 'EX-P-900'));
    const sent = vi.spyOn(pg.Client.prototype, 'query');
    const report = numbered(example('pathology', 'stomach-differentiated'), 'EX-C-900', 'EX-P-900');
    const caseId = await push(report);
    const texts = sent.mock.calls.map(([first]) =>
      typeof first === 'string' ? first : Reflect.get(first, 'text'),
    );
    const ours = texts.filter((text) => !/notify/.test(text));
    expect(ours.map((text: string) => text.trim().split(/\s/)[0])).toEqual([
      ...['begin', 'with', 'commit'],
    ]);
    const followUps = await followUpsOf(caseId);
    expect(followUps.map(({ item }) => item.state)).toEqual(
      expect.arrayContaining(['open', 'superseded']),
    );
  });
});

describe('two lesions of one patient', () => {
  const first = example('case', 'stomach-two-lesions-first');
  const second = example('case', 'stomach-two-lesions-second');

  it('are one visit where the windows of their examinations have days in common', async () => {
    const report = example('pathology', 'stomach-differentiated');
    const reported = (value: string): Sent => {
      const { accession } = report.document;
      return altered(numbered(report, value, 'EX-P-910'), {
        accession: { ...accession, value: `EX-S-${value}` },
      });
    };
    const like = example('case', 'stomach-differentiated');
    const one = await push(numbered(like, 'EX-C-911', 'EX-P-910'));
    const two = await push(numbered(like, 'EX-C-912', 'EX-P-910'));
    await push(numbered(like, 'EX-C-913', 'EX-P-913'));
    await push(reported('EX-C-911'));
    await push(reported('EX-C-912'));
    const open = (await followUpsOf(one, two)).filter(({ item }) => item.state === 'open');
    const scars = open.filter(({ item }) => item.kind === 'endoscopy');
    const pairs = scars.filter(({ visitWith }) => visitWith.length > 0);
    expect(pairs.length).toBeGreaterThanOrEqual(2);
    for (const each of pairs) {
      for (const id of each.visitWith) {
        const other = scars.find((scar) => scar.id === id);
        expect(other?.visitWith).toContain(each.id);
        expect(other?.item.route).toBe(each.item.route);
      }
    }
    expect(new Set(pairs.map(({ caseId }) => caseId)).size).toBe(2);
  });

  it('have follow-ups of their own, under one patient', async () => {
    const ids = [await push(first), await push(second)];
    const followUps = await followUpsOf(...ids);
    expect(new Set(followUps.map(({ caseId }) => caseId)).size).toBe(2);
    expect(new Set(followUps.map(({ patient }) => patient.value)).size).toBe(1);
  });
});

describe('today', () => {
  it('is the day in UTC, and a window is over the day after its latest one', async () => {
    const caseId = await push(numbered(example('case', 'colon-sigmoid'), 'EX-C-920', 'EX-P-920'));
    const [one] = (await followUpsOf(caseId)).filter(
      ({ item }) => item.state === 'provisional' || item.state === 'open',
    );
    const latest = (one?.item.proposed ?? one?.item.due)?.latest ?? '';
    expect(latest).toMatch(/^\d{4}-\d\d-\d\d$/);
    const overdue = async (at: string) => {
      now = at;
      return (await followUpsOf(caseId)).find(({ id }) => id === one?.id)?.overdue;
    };
    expect(await overdue(`${latest}T23:59:59.999Z`)).toBe(false);
    const after = new Date(Date.parse(latest) + 86_400_000).toISOString();
    expect(await overdue(after)).toBe(true);
  });
});

describe('cases that were kept before there was a list', () => {
  /** What no calendar has ever shown is not shown as cancelled either. */
  const tables = async () => {
    const { rows } = await database.pool.query(
      `select id, case_id, item_key, patient_key, kind, route, item_state, target_on, earliest_on,
        latest_on, booked_on, document, nullif(calendar_status, 'cancelled') as calendar,
        case when calendar_status <> 'cancelled' then first_on || last_on end as days
       from follow_ups where item_state <> 'superseded' order by id`,
    );
    return rows;
  };
  const unfilled = async () =>
    (await database.pool.query('select case_id from follow_ups_unfilled')).rows.length;
  const forget = () =>
    database.pool.query(`
      delete from follow_ups;
      insert into follow_ups_unfilled (case_id)
        select distinct case_id from states on conflict do nothing`);

  it('are filled in, a case a commit, and go on where they were cut short', async () => {
    for (const message of EXAMPLES) await service.receive(message.kind, message.bytes, {});
    const whole = await tables();
    await forget();
    const all = await unfilled();
    expect(all).toBeGreaterThan(15);
    let turns = 0;
    const cut = await fillFollowUps({ store, settings }, () => {
      turns += 1;
      return turns <= 5;
    });
    expect(cut).toEqual({ filled: 5, failed: [] });
    expect(await unfilled()).toBe(all - 5);
    expect(await fillFollowUps({ store, settings })).toEqual({ filled: all - 5, failed: [] });
    expect(await tables()).toEqual(whole);
    expect(await unfilled()).toBe(0);
    expect(await fillFollowUps({ store, settings })).toEqual({ filled: 0, failed: [] });
  });

  it('are filled in by the first look at the clock, which says how many', async () => {
    const whole = await tables();
    await forget();
    const count = await unfilled();
    const logged: unknown[] = [];
    const write = (line: unknown) => void logged.push(line);
    const time = createPassingTime({
      ...{ store, settings, chance: () => 0 },
      clock: { now: () => Date.parse('2026-01-01T00:00:00Z'), after: () => () => undefined },
      log: { debug: write, info: write, warn: write, error: write },
    });
    await Promise.all([time.look(), time.look()]);
    expect(await tables()).toEqual(whole);
    expect(logged).toContainEqual({ event: 'follow-ups-filled', count });
    expect(logged.filter((line) => JSON.stringify(line).includes('not-filled'))).toEqual([]);
  });
});
