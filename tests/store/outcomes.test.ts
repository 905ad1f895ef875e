import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StoreUnavailable } from '../../src/kernel/index.js';
import {
  type Asked,
  DIMENSIONS,
  type OutcomeCounts,
  SIZE_BANDS,
  type StratumValues,
  TRAINEE_BANDS,
} from '../../src/outcomes/index.js';
import { factColumns } from '../../src/store/fact-columns.js';
import { createRecordStore } from '../../src/store/index.js';
import { createSlots } from '../../src/store/outcome-slots.js';
import { countFacts, type Facts } from '../support/count-facts.js';
import { testDatabase } from '../support/database.js';
import { madeFacts, putFacts } from '../support/made-facts.js';
import { entry, state } from './samples.js';

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);

const maybe = <T>(...values: readonly T[]) =>
  fc.option(fc.constantFrom(...values), { nil: undefined, freq: 2 });
const day = maybe('2025-01-01', '2025-06-15', '2025-12-31');

/** A question, with a filter or none in each dimension. */
const question: fc.Arbitrary<Asked> = fc
  .record({
    from: day,
    to: day,
    organ: maybe('stomach', 'colon', 'rectum'),
    ruleSet: maybe('esge-esd-2022'),
    sizeBand: maybe(...SIZE_BANDS),
    fibrosis: maybe('not-told', 'F0'),
    technique: maybe('not-told', 'esd'),
    operator: maybe('op-1'),
    traineeBand: maybe(...TRAINEE_BANDS),
  })
  .map(({ from, to, ...filters }) => ({
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    filters: Object.fromEntries(Object.entries(filters).filter(([, value]) => value !== undefined)),
  }));
const strata = fc.subarray([...DIMENSIONS], { maxLength: 2 });

/** The values by a part of what tells the cells apart. */
async function tallied(counts: OutcomeCounts, asked: Asked, by: (typeof DIMENSIONS)[number][]) {
  const { cells, values, firstChecks, watched } = await counts.tally(asked, {
    cells: [...new Set([...by, 'ruleSet' as const])],
    values: by,
  });
  return {
    finer: sorted(cells),
    values: sorted(values.map((each) => ({ ...each, values: inOrder(each.values) }))),
    ...{ firstChecks: sorted(firstChecks), watched: sorted(watched) },
  };
}

const inOrder = (values: StratumValues['values']) =>
  Object.entries(values).map(([id, each]) => [id, each.toSorted((a, b) => a.value - b.value)]);

const sorted = (rows: readonly unknown[]) => rows.map((row) => JSON.stringify(row, order)).sort();

/** Everything that is counted for a question, in an order of its own. */
async function everything(counts: OutcomeCounts, asked: Asked, by: (typeof DIMENSIONS)[number][]) {
  return {
    cells: sorted(await counts.cells(asked, by, false)),
    years: sorted(await counts.cells(asked, by, true)),
    ...(await tallied(counts, asked, by)),
    inOrder: await counts.inOrder(asked, 1000),
    first: await counts.inOrder(asked, 3),
  };
}

/** Names in their order, and numbers that may differ in their last digits alike. */
function order(_name: string, value: unknown): unknown {
  if (typeof value === 'number') return Math.round(value * 1e9) / 1e9;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

const asStored = (asked: Asked, by: (typeof DIMENSIONS)[number][] = []) =>
  store.outcomes.read((counts) => everything(counts, asked, by));

describe('what the database counts, against a count of row after row', () => {
  it('is the same for any facts and any question', { timeout: 120_000 }, async () => {
    const asked = fc.array(fc.tuple(question, strata), { minLength: 3, maxLength: 3 });
    const property = fc.asyncProperty(madeFacts(80), asked, async (facts, questions) => {
      await putFacts(database, facts);
      for (const [one, by] of [...questions, [{ filters: {} }, ['organ']] as const]) {
        const counted = await everything(countFacts(facts), one, [...by]);
        expect(await asStored(one, [...by])).toEqual(counted);
      }
    });
    await fc.assert(property, { numRuns: 25 });
  });

  it('would be caught where a withdrawn case counts, or a silent outcome as "no"', async () => {
    const [one] = fc.sample(
      madeFacts(1).filter(({ length }) => length === 1),
      { numRuns: 1, seed: 1 },
    );
    const told: readonly Facts[] = (one ?? []).map((facts) => ({ ...facts, withdrawn: false }));
    const asked = { filters: {} };
    const right = await everything(countFacts(told), asked, []);
    await putFacts(database, told);
    expect(await asStored(asked)).toEqual(right);
    await putFacts(
      database,
      told.map((facts) => ({ ...facts, withdrawn: true })),
    );
    expect(await asStored(asked)).not.toEqual(right);
    const wider = told.map((facts) => ({
      ...facts,
      specimenAreaCm2: (facts.specimenAreaCm2 ?? 0) + 1,
    }));
    await putFacts(database, wider);
    expect((await asStored(asked)).inOrder).not.toEqual(right.inOrder);
    const silent = told.map((facts) => ({ ...facts, r0: 'missing' as const }));
    const no = told.map((facts) => ({ ...facts, r0: 'no' as const }));
    await putFacts(database, silent);
    expect((await asStored(asked)).cells).not.toEqual(
      (await everything(countFacts(no), asked, [])).cells,
    );
  });

  it('leaves out rows of before the words were computed', async () => {
    await putFacts(database, [{ ...state('case-old').facts, resectedOn: '' }]);
    const asked = { filters: {} };
    const nothing = { cells: [], values: [], firstChecks: [], watched: [] };
    await store.outcomes.read(async (counts) => {
      expect(await counts.cells(asked, [], false)).toEqual([]);
      expect(await counts.tally(asked, { cells: [], values: [] })).toEqual(nothing);
    });
  });
});

describe('one reading', () => {
  it('sees the records of one moment, whatever comes meanwhile', async () => {
    await putFacts(database, [state('case-1').facts]);
    const countIn = async (counts: OutcomeCounts) =>
      (await counts.cells({ filters: {} }, [], false))[0]?.cases;
    const seen = await store.outcomes.read(async (counts) => {
      const before = await countIn(counts);
      await store.inCase('case-2', async (journal) => {
        await journal.append(entry('case-2'));
        await journal.saveState(state('case-2'));
      });
      return [before, await countIn(counts)];
    });
    expect(seen).toEqual([1, 1]);
    expect(await store.outcomes.read(countIn)).toBe(2);
  });

  it('keeps no message waiting, however many read', async () => {
    let go = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      go = resolve;
    });
    const counting = (counts: OutcomeCounts) => counts.inOrder({ filters: {} }, 1).then(() => held);
    const readings = Array.from({ length: 30 }, () => store.outcomes.read(counting));
    await store.inCase('case-3', async (journal) => {
      await journal.append(entry('case-3'));
      await journal.saveState(state('case-3'));
    });
    expect(database.pool.totalCount).toBeLessThan(16);
    go();
    await Promise.all(readings);
  });

  it('gives its place back where the work fails', async () => {
    const fails = () => Promise.reject(new Error('of the work'));
    for (let i = 0; i < 5; i += 1) {
      await expect(store.outcomes.read(fails)).rejects.toThrow('of the work');
    }
    expect(await store.outcomes.read(() => Promise.resolve('read'))).toBe('read');
  });

  it('writes nothing', async () => {
    const { READ_ONLY } = await import('../../src/store/outcome-store.js');
    const client = await database.pool.connect();
    await client.query(READ_ONLY);
    // SQLSTATE 25006: read_only_sql_transaction.
    await expect(client.query('delete from facts')).rejects.toMatchObject({ code: '25006' });
    client.release(true);
  });
});

describe('slots', () => {
  it('are taken in turn, and given back once', async () => {
    const slots = createSlots(1, 5_000);
    const first = await slots.take();
    const turns: string[] = [];
    const named = (name: string) =>
      slots.take().then((back) => {
        turns.push(name);
        return back;
      });
    const second = named('second');
    const third = named('third');
    expect(turns).toEqual([]);
    first();
    first();
    const back = await second;
    expect(turns).toEqual(['second']);
    back();
    (await third)();
    expect(turns).toEqual(['second', 'third']);
  });

  it('are refused to who has waited long enough, and stay for others', async () => {
    const slots = createSlots(1, 10);
    const held = await slots.take();
    await expect(slots.take()).rejects.toThrow(StoreUnavailable);
    held();
    (await slots.take())();
  });
});

describe('the facts of an export', () => {
  const all = async (asked: Asked) => {
    const pages: (readonly Facts[])[] = [];
    for await (const page of store.facts(asked)) pages.push(page);
    return pages;
  };

  it('are those that are asked for, page by page, by day and id', async () => {
    const facts = Array.from({ length: 1203 }, (_, i) => ({
      ...state(`case-${String(i).padStart(5, '0')}`).facts,
      resectedOn: `2026-0${1 + (i % 7)}-02`,
      withdrawn: i % 100 === 0,
    }));
    for (let i = 0; i < facts.length; i += 600) {
      const part = facts.slice(i, i + 600);
      if (i === 0) await putFacts(database, part);
      else await addFacts(part);
    }
    const pages = await all({ from: '2026-02-02', filters: { organ: 'stomach' } });
    const expected = facts
      .filter(({ withdrawn, resectedOn }) => !withdrawn && resectedOn >= '2026-02-02')
      .toSorted((a, b) => (`${a.resectedOn}${a.caseId}` < `${b.resectedOn}${b.caseId}` ? -1 : 1));
    expect(pages.map(({ length }) => length)).toEqual([500, 500, expected.length - 1000]);
    expect(pages.flat()).toEqual(expected);
  });

  it('leave no connection behind where the reader ends early', async () => {
    for (let i = 0; i < 20; i += 1) {
      for await (const page of store.facts({ filters: {} })) {
        expect(page.length).toBe(500);
        break;
      }
    }
    expect((await all({ filters: {} })).flat().length).toBe(1190);
  });
});

async function addFacts(rows: readonly Facts[]): Promise<void> {
  const columns = factColumns().join(', ');
  await database.pool.query(`create table kept as select ${columns} from facts`);
  await putFacts(database, rows);
  await database.pool.query(
    `insert into facts (${columns}) select ${columns} from kept; drop table kept`,
  );
}
