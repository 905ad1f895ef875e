import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { type BookingReceipt, createService } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { faultsOf } from '../calendar/grammar.js';
import { readByIcalJs, readByNodeIcal } from '../calendar/readers.js';
import { testDatabase } from '../support/database.js';
import { EXAMPLES } from '../support/example-messages.js';
import { jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';

/* The routes of follow-ups over the real service and a real PostgreSQL, filled with the examples. */

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0',
};
let now = '2027-06-01T10:00:00.000Z';
const test = await testDatabase();
const database = await test.open();
const service = createService({
  store: createRecordStore(database),
  settings: SETTINGS,
  now: () => now,
});
const caseIds = new Set<string>();
for (const { kind, bytes } of EXAMPLES) {
  const receipt = await service.receive(kind, bytes, {});
  if (receipt.kind === 'accepted') caseIds.add(receipt.receipt.caseId);
}

let app: RunningApp;
beforeEach(async () => {
  now = '2027-06-01T10:00:00.000Z';
  app = await runApp({ service });
});
afterEach(stopApps);
afterAll(stopApps);

const ask = (path: string) => app.get(path, { role: 'scheduler' });

interface Shown {
  readonly id: string;
  readonly overdue: boolean;
  readonly item: Readonly<Record<string, unknown>>;
}

async function listed(query: string, role: 'scheduler' | 'records-team' = 'scheduler') {
  const response = await app.get(`/follow-ups?${query}`, { role });
  expect(response.status).toBe(200);
  const { followUps, ...rest } = await jsonOf(response);
  if (!Array.isArray(followUps)) throw new TypeError('no list');
  return { followUps: followUps as readonly Shown[], ...rest };
}

const EVERY_STATE = 'state=provisional,open,to-confirm,done,superseded,revoked&limit=500';

describe('the list of follow-ups', () => {
  it('has every item of every plan, once', async () => {
    const { followUps, next } = { next: undefined, ...(await listed(EVERY_STATE)) };
    expect(next).toBeUndefined();
    const plans = await Promise.all([...caseIds].map((id) => service.readCase(id, {})));
    const items = plans.flatMap((view) => (view && 'plan' in view ? view.plan.items : []));
    expect(items.length).toBeGreaterThan(30);
    expect(followUps.length).toBe(items.length);
    expect(new Set(followUps.map(({ id }) => id)).size).toBe(items.length);
  });

  it('comes in pages that together are the whole', async () => {
    const whole = (await listed(EVERY_STATE)).followUps.map(({ id }) => id);
    const ids: string[] = [];
    let query = EVERY_STATE.replace('500', '7');
    for (;;) {
      const page = { next: undefined, ...(await listed(query)) };
      ids.push(...page.followUps.map(({ id }) => id));
      if (page.next === undefined) break;
      query = `${EVERY_STATE.replace('500', '7')}&after=${page.next}`;
    }
    expect(ids).toEqual(whole);
  });

  it('tells nothing anew after its cursor, and one follow-up by its id', async () => {
    const { followUps } = await listed('limit=1');
    expect((await listed(`since=${await settledCursor()}&limit=500`)).followUps).toEqual([]);
    const [first] = followUps;
    const response = await ask(`/follow-ups/${first?.id}`);
    expect(await response.json()).toEqual(first);
  });

  it('has what is overdue today, and all of it is', async () => {
    const { followUps } = await listed('due=overdue&limit=500');
    expect(followUps.length).toBeGreaterThan(0);
    expect(followUps.every(({ overdue }) => overdue)).toBe(true);
    const others = (await listed('limit=500')).followUps.filter(({ overdue }) => overdue);
    expect(others.map(({ id }) => id)).toEqual(followUps.map(({ id }) => id));
  });

  it.each(['overdue', 'unbooked-soon'])(
    'has nothing that is done and %s: what is over is not due',
    async (due) => {
      expect((await listed('state=done')).followUps.length).toBeGreaterThan(0);
      expect((await listed(`due=${due}&state=done,superseded,revoked`)).followUps).toEqual([]);
      const [open, both] = [await listed(`due=${due}`), await listed(`due=${due}&state=open,done`)];
      const isOpen = ({ item }: Shown) => item['state'] === 'open';
      expect(both.followUps).toEqual(open.followUps.filter(isOpen));
    },
  );

  it.each(['00000000-0000-8000-8000-000000000000', 'not-an-id', '%27%3B'])(
    'has no follow-up %s',
    async (id) => {
      const response = await ask(`/follow-ups/${id}`);
      expect(response.status).toBe(404);
      expect((await jsonOf(response))['type']).toMatch(/\/not-found$/);
    },
  );
});

describe('a query that breaks rules', () => {
  it('is refused with every problem at once, each naming its parameter, none its value', async () => {
    const canary = 'EX-CANARY';
    const response = await ask(
      `/follow-ups?from=${canary}&state=open,${canary}&limit=0&booked=perhaps&route=upper&route=lower`,
    );
    expect(response.status).toBe(400);
    const text = await response.text();
    expect(text).not.toContain(canary);
    const { type, errors } = JSON.parse(text);
    expect(type).toMatch(/\/invalid-query$/);
    const named = errors.map(({ pointer, rule }: Record<string, string>) => `${pointer} ${rule}`);
    expect(named.sort()).toEqual([
      '/booked not-in-list',
      '/from bad-format',
      '/limit out-of-range',
      '/route repeated-parameter',
      '/state bad-format',
    ]);
  });

  it.each([
    ['since=bm90LWEtY3Vyc29y', '/since', 'bad-format'],
    ['after=bm90LWEtY3Vyc29y', '/after', 'bad-format'],
  ])('%s is no token of ours', async (query, pointer, rule) => {
    const response = await ask(`/follow-ups?${query}`);
    expect(response.status).toBe(400);
    expect((await jsonOf(response))['errors']).toMatchObject([{ pointer, rule }]);
  });

  it('is gone with a cursor of another database', async () => {
    const text = 'c|11111111-2222-4333-8444-555555555555|7|';
    const response = await ask(`/follow-ups?since=${Buffer.from(text).toString('base64url')}`);
    expect(response.status).toBe(410);
    expect((await jsonOf(response))['type']).toMatch(/\/cursor-gone$/);
  });
});

describe('a booking', () => {
  const id = '00000000-0000-8000-8000-000000000001';
  const problem = { rule: 'some-rule', pointer: '/x', message: 'A sentence.', expected: 'y' };
  const kept = [
    { followUpId: id, kind: 'accepted', revision: 1, sha256: '0', receivedAt: now, fits: true },
  ] as const;
  /** Source: RFC 9110 section 15 and the table of the interface (project definition). */
  it.each<[number, string, BookingReceipt]>([
    [202, '', { kind: 'accepted', kept }],
    [200, '', { kind: 'repeated', kept }],
    [400, 'unreadable-body', { kind: 'unreadable', problems: [problem] }],
    [422, 'invalid-message', { kind: 'invalid', problems: [problem] }],
    [409, 'conflict', { kind: 'conflict', problem }],
    [404, 'not-found', { kind: 'not-found' }],
  ])('is answered with %d %s', async (status, type, receipt) => {
    const asked: unknown[] = [];
    const receiveBooking: typeof service.receiveBooking = async (followUpId, bytes, caller) => {
      asked.push([followUpId, new TextDecoder().decode(bytes), caller]);
      return receipt;
    };
    app = await runApp({ service: { receiveBooking } });
    const response = await app.post(`/follow-ups/${id}/booking`, '{"a":1}', { role: 'scheduler' });
    expect(response.status).toBe(status);
    expect(asked).toEqual([[id, '{"a":1}', { role: 'scheduler' }]]);
    const body = await jsonOf(response);
    if (type === '') expect(body).toEqual({ kept });
    else expect(body['type']).toMatch(new RegExp(`/${type}$`));
    expect(response.headers.get('location')).toBe(type === '' ? `/follow-ups/${id}` : null);
  });
});

async function newFeed(wish: object = {}) {
  const response = await app.post(
    '/follow-ups/feeds',
    JSON.stringify({ schema: 'feed/1', ...wish }),
    { role: 'scheduler' },
  );
  expect(response.status).toBe(201);
  const { id, path, expiresAt } = await jsonOf(response);
  return { id: String(id), path: String(path), expiresAt };
}

/** Calendars send no key. */
const subscribe = (path: string, headers: Readonly<Record<string, string>> = {}) =>
  fetch(`${app.url}${path}`, { headers });

describe('a booked examination', () => {
  it('is in the list as booked and in the calendar on its day, until it is cancelled', async () => {
    const { path } = await newFeed();
    const [one] = (await listed('state=open&kind=endoscopy&from=2026-06-01')).followUps;
    if (one === undefined) throw new Error('an examination is open');
    const { id } = one;
    const { latest: day } = one.item['due'] as { readonly latest: string };
    const times = { startsAt: `${day}T09:00:00+02:00`, endsAt: `${day}T09:30:00+02:00` };
    const say = (revision: number, said: object) => {
      const sentAt = `2027-05-0${revision}T09:00:00+02:00`;
      const body = JSON.stringify({ schema: 'booking/1', revision, sentAt, ...said });
      return app.post(`/follow-ups/${id}/booking`, body, { role: 'scheduler' });
    };
    const shown = async () => {
      const events = readByIcalJs(await (await subscribe(path)).text());
      const event = events.find(({ uid }) => uid.startsWith(id));
      return { status: event?.status, start: event?.start, sequence: event?.sequence ?? -1 };
    };
    const bookedIds = async () => (await listed('booked=true')).followUps.map((each) => each.id);
    const before = await shown();
    expect(before).toMatchObject({ status: 'TENTATIVE' });
    expect(await bookedIds()).not.toContain(id);
    const { cursor } = { cursor: '', ...(await listed('limit=1')) };

    expect((await say(1, { status: 'booked', ...times })).status).toBe(202);
    expect((await say(1, { status: 'booked', ...times })).status).toBe(200);
    const after = await shown();
    expect(after).toMatchObject({ status: 'CONFIRMED', start: day });
    expect(after.sequence).toBeGreaterThan(before.sequence);
    expect(await bookedIds()).toContain(id);
    const changes = await settledChanges(String(cursor), id);
    expect(changes.find((each) => each.id === id)?.item).toMatchObject({
      booking: { status: 'booked', startsAt: times.startsAt },
    });

    const cancelled = await say(2, { status: 'cancelled', ...times });
    expect(cancelled.status).toBe(202);
    const last = await shown();
    expect(last).toMatchObject({ status: 'TENTATIVE', start: before.start });
    expect(last.sequence).toBeGreaterThan(after.sequence);
    expect(await bookedIds()).not.toContain(id);
  });
});

describe('an appointment that no plan asks for', () => {
  it.each(['revoked', 'superseded'])('is listed with those that are booked: %s', async (state) => {
    const [gone] = (await listed(`state=${state}&kind=endoscopy`)).followUps;
    if (gone === undefined) throw new Error('an examination is not wanted any more');
    const [day, sentAt] = ['2029-01-15', '2027-05-20T09:00:00+02:00'];
    const times = { startsAt: `${day}T09:00:00+01:00`, endsAt: `${day}T09:30:00+01:00` };
    const body = { schema: 'booking/1', revision: 1, sentAt, status: 'booked', ...times };
    const path = `/follow-ups/${gone.id}/booking`;
    expect((await app.post(path, JSON.stringify(body), { role: 'scheduler' })).status).toBe(202);
    const ids = async (query: string) => (await listed(query)).followUps.map(({ id }) => id);
    expect(await ids(`booked=true&from=${day}&to=${day}`)).toContain(gone.id);
    expect(await ids('limit=500')).not.toContain(gone.id);
    expect(await ids('booked=true&due=overdue&limit=500')).not.toContain(gone.id);
  });
});

/** A cursor after every change that was made. What is held back is told again until it is past. */
async function settledCursor(): Promise<string> {
  const { rows } = await database.pool.query(
    'select max(changed_tx::text::bigint) as newest from follow_ups',
  );
  for (;;) {
    const { cursor } = { cursor: '', ...(await listed('limit=1')) };
    const [, , transaction = ''] = Buffer.from(String(cursor), 'base64url').toString().split('|');
    if (BigInt(transaction) > BigInt(rows[0]?.newest ?? 0)) return String(cursor);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** Another database of the server may hold back what is told of ours for a moment. */
async function settledChanges(cursor: string, id: string): Promise<readonly Shown[]> {
  for (;;) {
    const { followUps } = await listed(`since=${cursor}&limit=500`);
    if (followUps.some((each) => each.id === id)) return followUps;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

describe('a calendar feed', () => {
  it('is read by two readers of others as the same events, and breaks no rule of RFC 5545', async () => {
    const { path } = await newFeed();
    const response = await subscribe(path);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    const stream = await response.text();
    expect(faultsOf(new TextEncoder().encode(stream))).toEqual([]);
    const events = readByIcalJs(stream);
    expect(events.length).toBeGreaterThan(10);
    const byUid = (a: { uid: string }, b: { uid: string }) => (a.uid < b.uid ? -1 : 1);
    expect([...readByNodeIcal(stream)].sort(byUid)).toEqual([...events].sort(byUid));
  });

  it('has the windows of open examinations, under the ids of the list', async () => {
    const { path } = await newFeed({ route: 'upper' });
    const events = readByIcalJs(await (await subscribe(path)).text());
    const open = (await listed('state=open&kind=endoscopy&route=upper&limit=500')).followUps;
    expect(open.length).toBeGreaterThan(3);
    const tentative = events.filter(({ status }) => status === 'TENTATIVE');
    const wanted = open.map(({ id, item }) => {
      const { earliest } = (item['proposed'] ?? item['due']) as { readonly earliest: string };
      return `${id}@dissection-records.example ${earliest}`;
    });
    const toConfirm = await listed('state=to-confirm&kind=endoscopy&route=upper&limit=500');
    expect(tentative.length).toBe(open.length + toConfirm.followUps.length);
    expect(tentative.map(({ uid, start }) => `${uid} ${start}`)).toEqual(
      expect.arrayContaining(wanted),
    );
  });

  it('is the same octets while nothing changes, and then is not sent again', async () => {
    const { path } = await newFeed();
    const first = await subscribe(path);
    const etag = first.headers.get('etag') ?? '';
    await first.text();
    for (const tag of [etag, `W/${etag}`, `"x", ${etag}`]) {
      const again = await subscribe(path, { 'if-none-match': tag });
      expect(again.status).toBe(304);
      expect(await again.text()).toBe('');
      expect(again.headers.get('etag')).toBe(etag);
    }
    expect((await subscribe(path, { 'if-none-match': '"x"' })).status).toBe(200);
  });

  it('names nothing after it was revoked, for good', async () => {
    const { id, path } = await newFeed();
    const revoke = () => app.post(`/follow-ups/feeds/${id}/revoke`, null, { role: 'scheduler' });
    const revoked = await revoke();
    expect(revoked.status).toBe(200);
    const { revokedAt } = await jsonOf(revoked);
    now = '2027-06-02T10:00:00.000Z';
    expect(await jsonOf(await revoke())).toMatchObject({ revokedAt });
    const response = await subscribe(path);
    expect(response.status).toBe(404);
    expect((await jsonOf(response))['type']).toMatch(/\/not-found$/);
  });

  it('is over on its day, after a year unless another time was wished', async () => {
    const { expiresAt } = await newFeed();
    expect(expiresAt).toBe('2028-05-31T10:00:00.000Z');
    const { path } = await newFeed({ expiresInDays: 2 });
    now = '2027-06-03T09:59:59.999Z';
    expect((await subscribe(path)).status).toBe(200);
    now = '2027-06-03T10:00:00.000Z';
    expect((await subscribe(path)).status).toBe(404);
  });

  it.each([
    `/follow-ups/feeds/${'A'.repeat(43)}.ics`,
    '/follow-ups/feeds/x.ics',
    '/follow-ups/feeds/..ics',
  ])('is not found at %s', async (path) => {
    expect((await subscribe(path)).status).toBe(404);
  });

  it('keeps its secret in no list, no table and no log line', async () => {
    const { id, path } = await newFeed();
    const token = /feeds\/(.+)[.]ics$/.exec(path)?.[1] ?? '';
    expect(Buffer.from(token, 'base64url').length).toBe(32);
    await subscribe(path);
    await subscribe(path.replace('.ics', ''));
    await subscribe(`${path}?secret=${token}`);
    const list = await (await ask('/follow-ups/feeds')).text();
    expect(list).toContain(id);
    const { rows } = await database.pool.query('select feeds::text as text from feeds');
    const kept = [list, ...rows.map(({ text }) => text), ...app.logLines()].join('\n');
    expect(kept).not.toContain(token);
    expect(app.logLines().join('\n')).toContain('/follow-ups/feeds/:token.ics');
  });

  it('is refused with each problem named', async () => {
    const wish = { schema: 'feed/1', expiresInDays: 900, note: 'EX-CANARY' };
    const response = await app.post('/follow-ups/feeds', JSON.stringify(wish), {
      role: 'scheduler',
    });
    expect(response.status).toBe(422);
    const text = await response.text();
    expect(text).not.toContain('EX-CANARY');
    const { errors } = JSON.parse(text);
    expect(errors.map(({ rule }: { rule: string }) => rule).sort()).toEqual([
      'out-of-range',
      'unknown-field',
    ]);
  });
});
