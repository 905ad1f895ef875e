import { readdirSync, readFileSync } from 'node:fs';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '../../src/kernel/index.js';
import { sandboxDatabase } from '../sandbox/support/sandbox-database.js';
import { until } from '../store/waiting.js';
import type { Draft } from '../support/consistent-case.js';
import { testDatabase } from '../support/database.js';
import { censusFaults } from './census.js';
import { type ServiceProgram, unitOver } from './service-program.js';
import { startTwoDoors } from './two-doors.js';

/*
 * Two whole services, each a process of its own, share one PostgreSQL and one FHIR server. The
 * first is killed while it holds cases. Ids are left to the FHIR server, so that nothing but our
 * care keeps a resource from being there twice.
 *
 * Oracles: what each sender was told, counted against what a search of the FHIR server finds by
 * the sender's own identifier (FHIR R4, Procedure.identifier); 202 and 409 as RFC 9110 has them.
 */

const fhir = await sandboxDatabase();
const records = await testDatabase('none');
const pool = new pg.Pool({ connectionString: records.url, max: 2 });
afterAll(() => pool.end());
const doors = await startTwoDoors(fhir);
const unit = await unitOver(records.url, 'conditional');

const BURST = 40;
/** Cases that one service sends at the same time. */
const IN_FLIGHT = 4;
/** How long a case belongs to a service that gives no sign of life. */
const LEASE_SECONDS = 60;

const EXAMPLES = readdirSync('examples/cases').sort();
const PATIENTS = readFileSync('examples/patients.json', 'utf8');

interface Told {
  readonly status: number;
  readonly body: Draft;
}

/** A case of an example under a number of its own. */
/** The example as if it were of these days: of an old case the services would tell that time passed. */
function recent(example: string): Draft {
  const text = readFileSync(`examples/cases/${example}`, 'utf8');
  const days = daysBetween(
    JSON.parse(text).sentAt.slice(0, 10),
    new Date().toISOString().slice(0, 10),
  );
  return JSON.parse(text.replaceAll(/\d{4}-\d{2}-\d{2}(?=[T"])/g, (day) => addDays(day, days - 1)));
}

function message(name: string, change: Draft = {}, example = 'minimal.json'): string {
  const sent = recent(example);
  const { system } = sent.case;
  return JSON.stringify({ ...sent, revision: 1, ...change, case: { system, value: `EX-${name}` } });
}
const burst = Array.from({ length: BURST }, (_, i) =>
  message(`BURST-${i + 1}`, {}, EXAMPLES[i % EXAMPLES.length]),
);
const nameOf = (text: string): string => JSON.parse(text).case.value;

let first: ServiceProgram;
let second: ServiceProgram;
/** Case ids by the messages that were acknowledged. */
const acknowledged = new Map<string, string>();

beforeAll(async () => {
  await doors.first.post('/', PATIENTS);
  // Both find an empty database and want to make the same tables.
  const bases = [doors.first.base, doors.second.base];
  const both = await Promise.all(bases.map((base) => unit.start(base)));
  [first, second] = [both[0] ?? never(), both[1] ?? never()];
});

function never(): never {
  throw new Error('there are two services');
}

/** @throws TypeError when the service is gone before it has answered */
async function push({ url }: ServiceProgram, text: string): Promise<Told> {
  const headers = { authorization: `Bearer ${unit.notesKey}`, 'content-type': 'application/json' };
  const response = await fetch(`${url}/cases`, { method: 'POST', headers, body: text });
  const told: Told = { status: response.status, body: await response.json() };
  if (told.status < 300) acknowledged.set(text, told.body.receipt.caseId);
  return told;
}

const unanswered: string[] = [];

/** As a sender does who was told nothing: the same bytes once more, to whom is left. */
const pushAgainIfUnanswered = (service: ServiceProgram, text: string): Promise<Told> =>
  push(service, text).catch(() => {
    unanswered.push(text);
    return push(second, text);
  });

const read = async (path: string): Promise<Draft> =>
  (
    await fetch(`${second.url}${path}`, { headers: { authorization: `Bearer ${unit.recordsKey}` } })
  ).json();

const statuses = (all: readonly Told[]): readonly number[] =>
  all.map(({ status }) => status).sort((a, b) => a - b);

async function proceduresOf(text: string): Promise<readonly Draft[]> {
  const { system, value } = JSON.parse(text).case;
  const found = await doors.first.search('Procedure', `identifier=${system}|${value}`);
  return (found.json.entry ?? []).map(({ resource }: Draft) => resource);
}

/** The numbers of these cases, each as often as the FHIR server has a Procedure of it. */
async function foundOf(texts: readonly string[]): Promise<readonly string[]> {
  const found = await Promise.all(
    texts.map(async (text) => (await proceduresOf(text)).map(() => nameOf(text))),
  );
  return found.flat();
}

const countOf = async (type: string): Promise<number> =>
  (await doors.first.get(`/${type}?_summary=count`)).json.total;

const heldByFirst = async (): Promise<readonly string[]> => {
  const { rows } = await pool.query(
    `select case_id from outbox where status = 'sending' and worker = $1`,
    [`process ${first.pid}`],
  );
  return rows.map(({ case_id }) => case_id);
};

/** How many cases stand how in the outbox. */
async function outbox(): Promise<Readonly<Record<string, number>>> {
  const { rows } = await pool.query(
    'select status, count(*)::integer as cases from outbox group by status',
  );
  return Object.fromEntries(rows.map(({ status, cases }) => [status, cases]));
}

/** Of the newest revision of each case the message that was acknowledged. */
const newest = (): readonly string[] => {
  const byName = new Map<string, string>();
  for (const text of acknowledged.keys()) {
    const before = byName.get(nameOf(text));
    const later = before === undefined || revisionOf(text) > revisionOf(before);
    if (later) byName.set(nameOf(text), text);
  }
  return [...byName.values()];
};
const revisionOf = (text: string): number => JSON.parse(text).revision;

describe('two services on one PostgreSQL, before one is killed', () => {
  it('take half of a burst between them', async () => {
    doors.faults.next({ kind: 'hang', committed: true }, { times: 2, matching: isTransaction });
    doors.faults.next({ kind: 'hang', committed: false }, { times: 2, matching: isTransaction });
    const half = burst.slice(0, BURST / 2);
    const told = await Promise.all(half.map((text, i) => push(i % 2 ? second : first, text)));
    expect(statuses(told)).toEqual(half.map(() => 202));
  });

  it.each([1, 2, 3, 4])('keep a message once that both are sent at once (%i)', async (n) => {
    const text = message(`SAME-${n}`);
    const told = await Promise.all([first, second].map((service) => push(service, text)));
    expect(statuses(told)).toEqual([200, 202]);
    expect(told[0]?.body.receipt).toEqual(told[1]?.body.receipt);
  });

  it.each([1, 2, 3, 4])('keep one of two contents of the same revision (%i)', async (n) => {
    const texts = ['28', '29'].map((minute) => message(`OTHER-${n}`, endingAt(minute)));
    const [one = '', other = ''] = texts;
    const told = await Promise.all([push(first, one), push(second, other)]);
    expect(statuses(told)).toEqual([202, 409]);
    const refused = told.find(({ status }) => status === 409);
    expect(refused?.body.errors).toMatchObject([{ rule: 'revision-used' }]);
    expect(texts.filter((text) => acknowledged.has(text))).toHaveLength(1);
  });

  it('the first holds as many cases as it may: two are on the FHIR server, unknown to it', async () => {
    await until(() => doors.faults.pending() === 0);
    await until(async () => (await foundOf([...acknowledged.keys()])).length === 2);
    expect(await heldByFirst()).toHaveLength(IN_FLIGHT);
    expect((await outbox())['delivered']).toBeUndefined();
  });
});

describe('two services on one PostgreSQL, when one is killed in the middle of a burst', () => {
  let held: readonly string[] = [];
  const heldMessages = (): readonly string[] =>
    held.map((id) => newest().find((text) => acknowledged.get(text) === id) ?? '');

  it('every sender is answered by the other', async () => {
    held = await heldByFirst();
    const half = burst.slice(BURST / 2, -2);
    const tooLate = burst.slice(-2);
    const sent = half.map((text, i) => pushAgainIfUnanswered(i % 2 ? second : first, text));
    await Promise.any(sent.filter((_, i) => i % 2 === 0));
    await first.kill();
    sent.push(...tooLate.map((text) => pushAgainIfUnanswered(first, text)));
    doors.open();
    for (const { status } of await Promise.all(sent)) expect([200, 202]).toContain(status);
    expect(unanswered).toEqual(expect.arrayContaining(tooLate));
    expect(newest()).toHaveLength(BURST + 8);
  });

  it('what the dead one holds is let alone until its lease ends', async () => {
    await until(async () => (await outbox())['delivered'] === BURST + 8 - IN_FLIGHT, 50_000);
    expect(await outbox()).toEqual({ delivered: BURST + 8 - IN_FLIGHT, sending: IN_FLIGHT });
    expect([...(await heldByFirst())].sort()).toEqual([...held].sort());
  }, 60_000);

  it('a correction of a case that the dead one holds is taken', async () => {
    const [text = ''] = heldMessages();
    const next = JSON.stringify({ ...JSON.parse(text), revision: 2 });
    expect((await push(second, next)).status).toBe(202);
  });

  it('when the lease ends the other takes over, and nothing remains to be delivered', async () => {
    // Time goes on for the dead one alone; one more case makes the other look.
    const { rowCount } = await pool.query(
      `update outbox set due_at = due_at - $2 * interval '1 second'
       where status = 'sending' and worker = $1`,
      [`process ${first.pid}`, LEASE_SECONDS],
    );
    expect(rowCount).toBe(IN_FLIGHT);
    expect((await push(second, message('LATE'))).status).toBe(202);
    await until(async () => (await outbox())['delivered'] === BURST + 9);
    expect(await outbox()).toEqual({ delivered: BURST + 9 });
    const { rows } = await pool.query('select 1 from outbox where delivered_state <> state');
    expect(rows).toEqual([]);
    for (const [i, id] of held.entries()) {
      const { timeline } = await read(`/cases/${id}`);
      const events = timeline.map(({ event }: Draft) => event);
      expect(events.filter((event: string) => event === 'sending')).toHaveLength(2);
      expect(events.filter((event: string) => event === 'delivered')).toHaveLength(1);
      expect(events.includes('superseded')).toBe(i === 0);
    }
  });
});

describe('the FHIR server of two services, after one was killed', () => {
  it('has every case that was acknowledged exactly once', async () => {
    const all = newest();
    expect(all).toHaveLength(BURST + 9);
    expect(censusFaults(all.map(nameOf), await foundOf(all))).toEqual([]);
  });

  it('has of every other kind of resource as many as the records hold, none twice', async () => {
    const bundles = await Promise.all(newest().map((text) => read(bundlePath(text))));
    const types = bundles.flatMap(({ entry }) =>
      entry.map(({ resource }: Draft): string => resource.resourceType),
    );
    // There is a Provenance for each state that arrived, and the Bundle tells of the last.
    const counted = [...new Set(types)].filter((type) => type !== 'Provenance');
    expect(counted.length).toBeGreaterThan(8);
    for (const type of counted) {
      expect(await countOf(type), type).toBe(types.filter((other) => other === type).length);
    }
  });

  it('has the content that was acknowledged, where two were sent', async () => {
    const texts = newest().filter((text) => nameOf(text).startsWith('EX-OTHER'));
    expect(texts).toHaveLength(4);
    for (const text of texts) {
      const [procedure] = await proceduresOf(text);
      expect(procedure.performedPeriod.end).toBe(JSON.parse(text).times.scopeOutAt);
    }
  });

  it('would be seen to have a case twice, to lack one, and to have one uninvited', async () => {
    const all = newest();
    const [text = ''] = all;
    const [{ id: _id, ...copy }] = [...(await proceduresOf(text)), {}];
    expect((await doors.first.post('/Procedure', copy)).status).toBe(201);
    const never = message('NEVER');
    const found = await foundOf([...all, never]);
    expect(censusFaults([...all, never].map(nameOf), found)).toEqual([
      `${nameOf(text)} is there 2 times`,
      'EX-NEVER is missing',
    ]);
    expect(censusFaults(['a'], ['a', 'b'])).toEqual(['b is uninvited']);
  });
});

const isTransaction = ({ method, path }: { readonly method: string; readonly path: string }) =>
  method === 'POST' && path === '/';

/** The times of the least example, with another minute at which the scope left. */
function endingAt(minute: string): object {
  const { times } = JSON.parse(message('TIMES'));
  const scopeOutAt = times.scopeOutAt.replace(':26:', `:${minute}:`);
  return { times: { ...times, scopeOutAt } };
}

const bundlePath = (text: string): string => `/cases/${acknowledged.get(text)}/bundle`;
