import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import type { Clock } from '../../src/delivery/index.js';
import { createPassingTime } from '../../src/passing-time.js';
import { createService } from '../../src/pipeline/index.js';
import { createRecordStore, type Database } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * Time is a message. Oracle: days counted by hand on the calendar. Sources: a missing pathology
 * report is asked for after 14 days (common practice, no source); adverse events count for 30 days
 * after the procedure (AGREE, Nass KJ et al. Gastrointest Endosc 2022;95:1078-1085).
 */

const test = await testDatabase();
const [first, second] = [await test.open(), await test.open()];
const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0',
};
/** The scope was out on 5 May 2026 at 11:04 in UTC+2. */
const DAY_14 = '2026-05-18T22:00:00.000Z';
const DAY_31 = '2026-06-04T22:00:00.000Z';

let present = Date.parse('2026-05-06T12:00:00.000Z');
const timers: (() => void)[] = [];
const clock: Clock = {
  now: () => present,
  after: (_ms, run) => {
    timers.push(run);
    return () => timers.splice(timers.indexOf(run), 1);
  },
};
const logged: Record<string, unknown>[] = [];
const write = (line: unknown) => void logged.push({ ...(line as object) });
const log = { debug: write, info: write, warn: write, error: write };

const timeOver = (database: Database) =>
  createPassingTime({
    store: createRecordStore(database),
    settings: SETTINGS,
    clock,
    chance: () => 0,
    log,
  });
const [one, other] = [timeOver(first), timeOver(second)];
const service = createService({
  store: createRecordStore(first),
  settings: SETTINGS,
  now: () => new Date(present).toISOString(),
});

const bothLook = () => Promise.all([one.look(), other.look(), one.look()]);
const lookAt = async (instant: string): Promise<void> => {
  present = Date.parse(instant);
  await bothLook();
};

async function pushed({ kind, bytes }: Sent): Promise<string> {
  const receipt = await service.receive(kind, bytes, {});
  if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
  return receipt.receipt.caseId;
}

/** What we ourselves have told a case. */
async function toldTo(caseId: string): Promise<readonly string[]> {
  const view = await service.readCase(caseId, {});
  return (view?.messages ?? [])
    .filter(({ kind }) => kind === 'as-of')
    .map(({ sentAt, revision, standing }) => [sentAt, revision, standing].join(' '));
}

/** Messages about the invented case under another number. */
const about = (message: Sent, n: number) =>
  altered(message, { case: { system: 'urn:oid:2.999.1.2', value: `EX-C-8${n}` } });
const CASE = example('case', 'stomach-dual-antiplatelet');
const REPORT = example('pathology', 'stomach-high-risk');

describe('a case for which time passes', () => {
  let caseId = '';

  it('is not told while nothing is due, to the moment', async () => {
    caseId = await pushed(about(CASE, 1));
    await lookAt('2026-05-18T21:59:59.999Z');
    expect(await toldTo(caseId)).toEqual([]);
    expect(await service.readCase(caseId, {})).not.toHaveProperty('pathologyOverdue');
  });

  it('is told once that its pathology is overdue, by however many programs and looks', async () => {
    await lookAt(DAY_14);
    await bothLook();
    expect(await toldTo(caseId)).toEqual([`${DAY_14} 1 applied`]);
    const view = await service.readCase(caseId, {});
    expect(view).toMatchObject({ state: 2, pathologyOverdue: true });
    expect(view?.timeline.map(({ event, detail }) => detail ?? event)).toEqual([
      ...['case, revision 1', 'assessed', 'queued'],
      ...['as-of, revision 1: time-passed', 'assessed', 'superseded', 'queued'],
    ]);
  });

  it('is told once more that 30 days are over, and never again', async () => {
    await lookAt('2026-06-04T21:59:59.999Z');
    expect(await toldTo(caseId)).toHaveLength(1);
    await lookAt(DAY_31);
    await lookAt('2027-06-01T00:00:00.000Z');
    expect(await toldTo(caseId)).toEqual([`${DAY_14} 1 superseded`, `${DAY_31} 2 applied`]);
    expect((await service.readCase(caseId, {}))?.state).toBe(3);
  });

  it('still takes the report of before, which ends the reminder', async () => {
    await pushed(about(REPORT, 1));
    const view = await service.readCase(caseId, {});
    expect(view).toMatchObject({ state: 4 });
    expect(view).not.toHaveProperty('pathologyOverdue');
    await lookAt('2027-07-01T00:00:00.000Z');
    expect(await toldTo(caseId)).toHaveLength(2);
  });
});

describe('a case for which time changes nothing', () => {
  it('is told nothing: its report is there, and somebody said what happened in 30 days', async () => {
    const status = altered(example('event', 'stomach-status'), {
      patient: { system: 'urn:oid:2.999.1.1', value: CASE.document.patient.value },
      ...{ sentAt: '2026-06-06T08:00:00Z', occurredOn: '2026-06-05' },
      status: { untilOn: '2026-06-04', learntFrom: 'patient' },
    });
    present = Date.parse('2026-06-10T00:00:00Z');
    const caseId = await pushed(about(CASE, 2));
    await pushed(about(REPORT, 2));
    await pushed(about(status, 2));
    await lookAt('2026-09-01T00:00:00.000Z');
    expect(await toldTo(caseId)).toEqual([]);
    // Of a status that ends a day earlier the 30th day is not known.
    const short = { untilOn: '2026-06-03', learntFrom: 'patient' };
    await pushed(about(altered(status, { revision: 2, status: short }), 2));
    await lookAt('2026-09-01T00:00:00.000Z');
    expect(await toldTo(caseId)).toHaveLength(1);
  });

  it('is one that was withdrawn', async () => {
    const withdrawal = altered(example('withdrawal', 'minimal-wrong-patient'), {
      patient: { system: 'urn:oid:2.999.1.1', value: CASE.document.patient.value },
    });
    present = Date.parse('2026-06-10T00:00:00Z');
    const caseId = await pushed(about(CASE, 3));
    await pushed(about(withdrawal, 3));
    await lookAt('2026-09-02T00:00:00.000Z');
    expect(await toldTo(caseId)).toEqual([]);
  });

  it('is one that an earlier release has not said anything of: it is told when to look', async () => {
    const caseId = await pushed(about(CASE, 4));
    const deadlines = async () =>
      (
        await first.pool.query('select deadline_at from outbox where case_id = $1', [caseId])
      ).rows.map(({ deadline_at }) => deadline_at.toISOString());
    expect(await deadlines()).toEqual([DAY_14]);
    const text = `update outbox set deadline_at = '2026-05-01' where case_id = $1`;
    await first.pool.query(text, [caseId]);
    await lookAt('2026-05-07T00:00:00.000Z');
    expect(await deadlines()).toEqual([DAY_14]);
    expect(await toldTo(caseId)).toEqual([]);
  });
});

describe('the log', () => {
  const warned = () => logged.filter(({ event }) => event === 'waiting-case-overdue');

  it('says once a day how many cases have not come in time, and nothing of them', async () => {
    present = Date.parse('2026-09-03T00:00:00Z');
    await pushed(about(REPORT, 5));
    const { rows } = await first.pool.query(
      `select since from outbox where status = 'waiting-case'`,
    );
    const since: Date = rows[0].since;
    const lookAfter = (days: number) =>
      lookAt(new Date(since.getTime() + days * 86_400_000 + 1).toISOString());
    await lookAfter(13.99);
    expect(warned()).toEqual([]);
    await lookAfter(14);
    await lookAfter(14.5);
    expect(warned()).toEqual([{ event: 'waiting-case-overdue', count: 1 }]);
    await lookAfter(15.01);
    expect(warned()).toHaveLength(2);
  });

  it('says how many were told, and of none why it is whose', () => {
    const told = logged.filter(({ event }) => event === 'time-told');
    expect(told.length).toBeGreaterThan(2);
    for (const line of told) expect(Object.keys(line).sort()).toEqual(['count', 'event']);
    expect(logged.filter(({ event }) => event === 'time-not-told')).toEqual([]);
  });
});

describe('the looks', () => {
  it('come again by themselves until they are stopped', async () => {
    const looks = createPassingTime({
      ...{ store: createRecordStore(first), settings: SETTINGS, clock, log },
      chance: () => 0.5,
    });
    looks.start();
    expect(timers).toHaveLength(1);
    timers.splice(0)[0]?.();
    while (timers.length === 0) await new Promise((resolve) => setTimeout(resolve, 5));
    await looks.stop();
    expect(timers).toHaveLength(0);
  });
});
