import { describe, expect, it } from 'vitest';
import { StoreUnavailable } from '../../src/kernel/index.js';
import { createOutbox, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept, entry, state } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const other = await test.open();
const store = createRecordStore(database);
const second = createRecordStore(other);

const entriesOf = (caseId: string) => store.inCase(caseId, (journal) => journal.entries());

describe('a case that is saved', () => {
  it('is read back with its version, its delivery and its timeline in order', async () => {
    await store.inCase('read', accept('read'));
    const found = await store.read('read');
    expect(found).toMatchObject({
      caseId: 'read',
      source: 'unit-a',
      state: 1,
      version: '{"state":1}',
      delivery: { name: 'queued', state: 1, attempts: 0 },
    });
    expect(found?.timeline.map(({ event, state }) => [event, state])).toEqual([
      ['received', 1],
      ['assessed', 1],
      ['queued', 1],
    ]);
    expect(found?.timeline[0]?.at).toBe(entry('read').receivedAt);
  });

  it('is not there under another id', async () => {
    expect(await store.read('nobody')).toBeUndefined();
  });

  it('keeps its messages in the order of arrival, with every field', async () => {
    await store.inCase('order', accept('order', 1));
    await store.inCase('order', accept('order', 3));
    expect(await entriesOf('order')).toEqual(
      [entry('order', 1), entry('order', 3)].map((sent) => ({
        ...sent,
        bytes: Buffer.from(sent.bytes),
      })),
    );
  });

  it('shows a message appended in this turn before it is committed', async () => {
    const revisions = await store.inCase('turn', async (journal) => {
      await journal.append(entry('turn'));
      return (await journal.entries()).map(({ revision }) => revision);
    });
    expect(revisions).toEqual([1]);
  });

  it('has its newest facts and search keys alone', async () => {
    await store.inCase('facts', accept('facts', 1));
    await store.inCase('facts', async (journal) => {
      const newer = state('facts', 2);
      const facts = { ...newer.facts, organ: 'colon', pieces: null, perforation: true };
      await journal.saveState({ ...newer, facts, searchKeys: { session: 's-1' } });
    });
    const rows = await database.db
      .selectFrom('facts')
      .selectAll()
      .where('case_id', '=', 'facts')
      .execute();
    expect(rows).toMatchObject([
      { state: 2, organ: 'colon', pieces: null, perforation: true, lesion_long_axis_mm: 22.5 },
    ]);
    const keys = await database.db
      .selectFrom('search_keys')
      .select(['name', 'value'])
      .where('case_id', '=', 'facts')
      .execute();
    expect(keys).toEqual([{ name: 'session', value: 's-1' }]);
  });
});

describe('a message that a higher revision came before', () => {
  it('is kept, and said to be stale in the timeline', async () => {
    await store.inCase('stale', accept('stale', 2));
    await store.inCase('stale', (journal) => journal.appendStale(entry('stale', 1)));
    expect((await entriesOf('stale')).map(({ revision }) => revision)).toEqual([2, 1]);
    const found = await store.read('stale');
    expect(found?.timeline.at(-1)).toMatchObject({ event: 'received-stale', state: 2 });
    expect(found?.state).toBe(2);
  });

  it('is said to be stale as well where a state follows it', async () => {
    await store.inCase('overtaken', accept('overtaken', 2));
    await store.inCase('overtaken', async (journal) => {
      await journal.appendStale(entry('overtaken', 1));
      await journal.saveState(state('overtaken', 3));
    });
    const timeline = (await store.read('overtaken'))?.timeline ?? [];
    expect(timeline.map(({ event, state }) => `${event} ${state}`)).toEqual([
      ...['received 2', 'assessed 2', 'queued 2'],
      ...['received-stale 3', 'assessed 3', 'superseded 2', 'queued 3'],
    ]);
  });
});

describe('bytes and text, which come back exactly as they came', () => {
  const every = Uint8Array.from({ length: 256 }, (_, i) => i);
  it.each([
    ['every byte there is, NUL included', every],
    ['no byte at all', new Uint8Array()],
    ['text that is no UTF-8', Uint8Array.of(0xc3, 0x28, 0xff, 0xfe)],
    ['a byte order mark, spaces and a line end', Buffer.from('\ufeff {"a" : 1.10 }\r\n')],
    ['a part of a larger buffer', every.subarray(10, 20)],
  ])('%s', async (name, bytes) => {
    await store.inCase(name, (journal) => journal.append({ ...entry(name), bytes }));
    const [kept] = await entriesOf(name);
    expect(Buffer.from(kept?.bytes ?? []).equals(bytes)).toBe(true);
  });

  it('leaves the JSON of a version alone: order, doubled keys, spelling of numbers', async () => {
    const version = '{"b":1.10,"a":1e2,"b":"\\u0000 \\u00e9", "é":"𝔈"}';
    await store.inCase('json', async (journal) => journal.saveState(state('json', 1, version)));
    expect((await store.read('json'))?.version).toBe(version);
  });

  it('would be caught by jsonb, which keeps neither', async () => {
    // https://www.postgresql.org/docs/18/datatype-json.html
    const text = '{"b":1.10,"a":1,"b":2}';
    const { rows } = await database.pool.query('select $1::jsonb::text as kept', [text]);
    expect(rows[0]?.kept).not.toBe(text);
  });

  it('keeps the spelling of the instants that were sent', async () => {
    await store.inCase('instants', (journal) => journal.append(entry('instants')));
    expect((await entriesOf('instants'))[0]).toMatchObject({
      sentAt: '2026-03-02T09:30:00+01:00',
      receivedAt: '2026-03-02T08:30:05.125Z',
    });
  });
});

describe('search', () => {
  const save = (caseId: string, patient: string, source = 'unit-a') =>
    store.inCase(caseId, async (journal) => {
      const base = state(caseId);
      await journal.append({ ...entry(caseId), source });
      await journal.saveState({
        ...base,
        source,
        facts: { ...base.facts, source },
        searchKeys: { patient, case: caseId },
      });
    });

  it('finds the cases that match every key, a page at a time', async () => {
    for (const id of ['s-3', 's-1', 's-2']) await save(id, 'patient-s');
    await save('s-4', 'patient-t');
    const all = { searchKeys: { patient: 'patient-s' }, limit: 10 };
    const ids = async (query: Parameters<typeof store.search>[0]) =>
      (await store.search(query)).map(({ caseId }) => caseId);
    expect(await ids(all)).toEqual(['s-1', 's-2', 's-3']);
    expect(await ids({ ...all, limit: 2 })).toEqual(['s-1', 's-2']);
    expect(await ids({ ...all, limit: 2, after: 's-2' })).toEqual(['s-3']);
    const both = { ...all, searchKeys: { patient: 'patient-s', case: 's-2' } };
    expect(await ids(both)).toEqual(['s-2']);
    expect(await ids({ ...all, searchKeys: { patient: 's-2' } })).toEqual([]);
  });

  it('narrows by source and by delivery, and says when the case first came', async () => {
    await save('u-1', 'patient-u', 'unit-b');
    await save('u-2', 'patient-u', 'unit-c');
    const query = { searchKeys: { patient: 'patient-u' }, limit: 10 };
    expect(await store.search({ ...query, source: 'unit-b' })).toEqual([
      {
        ...{ caseId: 'u-1', state: 1, delivery: 'queued', receivedAt: entry('u-1').receivedAt },
        awaitsPathologySince: state('u-1').facts.scopeInAt,
      },
    ]);
    expect(await store.search({ ...query, delivery: 'delivered' })).toEqual([]);
  });
});

describe('readiness', () => {
  it('is proved by a write, again and again', async () => {
    await store.ready();
    const proved = async () =>
      (await database.pool.query('select proved_at::text as proved_at from readiness')).rows[0]
        ?.proved_at;
    const first = await proved();
    await store.ready();
    expect((await proved()) > first).toBe(true);
  });

  it('is refused when the write cannot be done', async () => {
    const holder = await other.pool.connect();
    await holder.query('begin; lock table readiness in exclusive mode');
    const hasty = createRecordStore(await test.open({ lockMs: 20 }));
    await expect(hasty.ready()).rejects.toThrow(StoreUnavailable);
    await holder.query('rollback');
    holder.release();
    await expect(hasty.ready()).resolves.toBeUndefined();
  });
});

describe('the word that something was queued', () => {
  it('reaches a listener of another program, once it can be claimed there', async () => {
    const outbox = createOutbox(other, { worker: 'listener' });
    let wake: () => void = () => {};
    const woken = new Promise<void>((done) => {
      wake = done;
    });
    const stop = await outbox.onQueued(() => wake());
    await store.inCase('woken', accept('woken'));
    await woken;
    expect(await second.read('woken')).toBeDefined();
    await stop();
  });
});
