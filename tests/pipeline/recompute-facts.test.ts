import { afterEach, describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, type FactsChecked, recomputeFacts } from '../../src/pipeline/index.js';
import { createFactsStore, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { example, type Sent } from '../support/example-messages.js';

/*
 * The facts are a function of the journal. Source: project definition: what is derived can be
 * derived again, and whoever changes a row by hand is found.
 */

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const facts = createFactsStore(database);
const settings = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0',
};
const service = createService({ store, settings, now: () => '2027-01-01T12:00:00.000Z' });

async function pushed({ kind, bytes }: Sent): Promise<string> {
  const receipt = await service.receive(kind, bytes, {});
  if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
  return receipt.receipt.caseId;
}

async function found(repair = false): Promise<readonly FactsChecked[]> {
  const all: FactsChecked[] = [];
  for await (const one of recomputeFacts({ store, facts, settings }, { repair })) all.push(one);
  return all;
}
const wrong = async (repair = false) => (await found(repair)).filter(({ kind }) => kind !== 'same');

const stomach = await pushed(example('case', 'stomach-dual-antiplatelet'));
await pushed(example('pathology', 'stomach-high-risk'));
const rectum = await pushed(example('case', 'rectum'));
const waiting = await pushed(example('pathology', 'duodenum'));

afterEach(async () => {
  await database.pool.query('delete from facts where case_id = $1', ['nobody']);
  await found(true);
});

describe('facts that are made again from the journal', () => {
  it('are those that lie in the store, for every case', async () => {
    const all = await found();
    expect(all.map(({ caseId }) => caseId).sort()).toEqual([stomach, rectum, waiting].sort());
    expect(all.every(({ kind }) => kind === 'same')).toBe(true);
  });

  it('show which facts of which row were changed', async () => {
    await database.pool.query(
      `update facts set en_bloc = 'no', lesion_long_axis_mm = 1 where case_id = $1`,
      [rectum],
    );
    expect(await wrong()).toEqual([
      { caseId: rectum, kind: 'differ', facts: ['lesionLongAxisMm', 'enBloc'], repaired: false },
    ]);
  });

  it('show a row that is gone, and one that belongs to no case', async () => {
    await database.pool.query('delete from facts where case_id = $1', [stomach]);
    await database.pool.query(
      `insert into facts (case_id, state, source, organ, operator, scope_in_at,
         resection_outcome, lesion_long_axis_mm, awaits_pathology)
       values ('nobody', 1, 's', 'colon', 'o', '', 'en-bloc', 1, false)`,
    );
    expect((await wrong()).map(({ caseId, kind }) => [caseId, kind]).sort()).toEqual(
      [
        [stomach, 'absent'],
        ['nobody', 'stray'],
      ].sort(),
    );
  });

  it('are written anew where that is wanted, and then the same', async () => {
    await database.pool.query('delete from facts where case_id = $1', [stomach]);
    await database.pool.query(`update facts set r0 = 'yes' where case_id = $1`, [rectum]);
    expect((await wrong(true)).map(({ repaired }) => repaired)).toEqual([true, true]);
    expect(await wrong()).toEqual([]);
  });

  it('are not written over those of a newer state', async () => {
    const row = await database.pool.query('select * from facts where case_id = $1', [rectum]);
    const [page] = (await facts.page(10)).filter(({ caseId }) => caseId === rectum);
    const old = JSON.parse(JSON.stringify(page?.facts));
    expect(await facts.repair({ ...old, state: 99, organ: 'colon' })).toBe(false);
    const after = await database.pool.query('select * from facts where case_id = $1', [rectum]);
    expect(after.rows).toEqual(row.rows);
  });
});
