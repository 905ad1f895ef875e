import { describe, expect, it } from 'vitest';
import { loadBatch } from '../../scripts/synthetic/load-batch.js';
import { syntheticCase } from '../../scripts/synthetic/synthetic-case.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { holdsBack } from '../../src/invented-cases.js';
import { createService, siteMarkOf, tellTime } from '../../src/pipeline/index.js';
import {
  bindToSite,
  createRecordStore,
  type Database,
  markInvented,
  readInvented,
} from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { WANTED } from './samples.js';

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};
const NOW = '2026-07-02T06:00:00Z';
const CASES = 40;

const [bulk, single, other] = [await testDatabase(), await testDatabase(), await testDatabase()];

/**
 * What the database holds, without clocks, what only says in which order it was written, and what
 * the plans of states between asked for: a load makes none.
 */
const CONTENT: Readonly<Record<string, string>> = {
  journal:
    "select case_id, kind, source, natural_key, revision, sent_at, hash, encode(bytes, 'hex') " +
    'from journal order by 1, 2, 4, 5',
  states:
    'select case_id, state, version from states ' +
    'where (case_id, state) in (select case_id, state from outbox) order by 1',
  facts: 'select * from facts order by case_id',
  search_keys: 'select * from search_keys order by case_id, name',
  outbox:
    'select case_id, source, state, status, attempts, reason, deadline_at from outbox order by 1',
  follow_ups:
    'select id, case_id, item_key, patient_key, kind, route, item_state, target_on, earliest_on, ' +
    "latest_on, booked_on, document from follow_ups where item_state <> 'superseded' order by id",
};

async function contentOf({ pool }: Database): Promise<Record<string, readonly object[]>> {
  const read = Object.entries(CONTENT).map(async ([table, text]): Promise<[string, object[]]> => {
    return [table, (await pool.query(text)).rows];
  });
  return Object.fromEntries(await Promise.all(read));
}

const load = (database: Database, from: number, to: number) =>
  loadBatch(database, SETTINGS, WANTED, { from, to }, NOW);

/** Sends every message to a service, which answers each before the next, and then tells the time. */
async function sendOneByOne(database: Database, count: number): Promise<void> {
  const deps = { store: createRecordStore(database), settings: SETTINGS, now: () => NOW };
  const service = createService(deps);
  for (let index = 0; index < count; index += 1) {
    for (const { kind, text } of syntheticCase(WANTED, index)) {
      const receipt = await service.receive(kind, new TextEncoder().encode(text), {});
      expect(receipt.kind).toBe('accepted');
    }
  }
  await tellTime(deps);
}

// Oracle: the path by which every message of a real unit comes.
describe('cases that are loaded', () => {
  it('leave the rows that a service leaves that was sent them one by one', async () => {
    const [loaded, sent] = [await bulk.open(), await single.open()];
    expect(await load(loaded, 0, CASES)).toBe(CASES);
    await sendOneByOne(sent, CASES);
    const [found, expected] = [await contentOf(loaded), await contentOf(sent)];
    for (const table of Object.keys(CONTENT)) {
      expect(expected[table]?.length, table).toBeGreaterThan(0);
      expect(found[table], table).toEqual(expected[table]);
    }
    await sent.pool.query("update facts set organ = 'colon' where organ = 'stomach'");
    expect(found['facts']).not.toEqual((await contentOf(sent))['facts']);
  });

  it('are loaded once, wherever a load before them ended', async () => {
    const database = await bulk.open();
    const before = await contentOf(database);
    expect(await load(database, 0, CASES)).toBe(0);
    expect(await contentOf(database)).toEqual(before);
    expect(await load(database, CASES - 5, CASES + 3)).toBe(3);
  });

  it('leave nothing of a batch of which one case is there already', async () => {
    const database = await bulk.open();
    const countOf = async () => (await database.pool.query('select from journal')).rowCount;
    const before = await countOf();
    const twice = [CASES + 10, CASES + 10].map((from) => load(database, from, from + 2));
    const ends = await Promise.allSettled(twice);
    const stored = ends.flatMap((end) => (end.status === 'fulfilled' ? [end.value] : []));
    expect(stored.reduce((sum, count) => sum + count, 0)).toBe(2);
    const messages = [10, 11].flatMap((i) => syntheticCase(WANTED, CASES + i)).length;
    // Each of the two also knows how late it is, unless time changes nothing of it.
    expect((await countOf()) ?? 0).toBeGreaterThanOrEqual((before ?? 0) + messages);
    expect((await countOf()) ?? 0).toBeLessThanOrEqual((before ?? 0) + messages + 2);
  });
});

describe('a database of invented cases', () => {
  it('is marked, and held back until it is let go', async () => {
    const database = await other.open();
    await bindToSite(database, siteMarkOf(SETTINGS.secret));
    expect(await readInvented(database)).toBeUndefined();
    expect(await holdsBack(database, true)).toBe(false);
    await markInvented(database, 'held');
    expect(await holdsBack(database, false)).toBe(true);
    await load(database, 0, 2);
    await markInvented(database, 'delivered');
    expect(await readInvented(database)).toBe('delivered');
    expect(await holdsBack(database, false)).toBe(false);
  });

  it('is not opened where cases of real patients are served', async () => {
    const database = await other.open();
    await expect(holdsBack(database, true)).rejects.toThrow(
      'The cases of this database are invented',
    );
  });

  it('is never one that holds a case that was sent', async () => {
    const database = await single.open();
    await bindToSite(database, siteMarkOf(SETTINGS.secret));
    await expect(markInvented(database, 'held')).rejects.toThrow('holds cases that were sent');
    expect(await readInvented(database)).toBeUndefined();
  });
});
