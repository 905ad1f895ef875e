import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, type UnitSettings } from '../../src/contract/index.js';
import { createService, type Reassessed, reassess } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * A unit changes its rule set. Source: project definition: records of before keep their verdict
 * until they are judged anew, and then say why. That the two sets differ on the case is told by
 * their published tables, see tests/assessment/curability.
 */

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
const NOW = '2027-01-01T12:00:00.000Z';

const OTHER_RULES: UnitSettings = {
  ...DEFAULT_UNIT_SETTINGS,
  version: 2,
  curabilityRules: { ...DEFAULT_UNIT_SETTINGS.curabilityRules, stomach: 'jges-jgca-2021' },
};
const under = (unit: UnitSettings) => ({
  store,
  settings: { unit, secret: 'a-secret-of-the-tests-that-is-long-enough', softwareVersion: '0' },
  now: () => NOW,
});
const service = createService(under(DEFAULT_UNIT_SETTINGS));

async function pushed({ kind, bytes }: Sent): Promise<string> {
  const receipt = await service.receive(kind, bytes, {});
  if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
  return receipt.receipt.caseId;
}

async function looked(unit: UnitSettings, reason?: string): Promise<readonly Reassessed[]> {
  const found: Reassessed[] = [];
  const options = reason === undefined ? {} : { reason };
  for await (const one of reassess(under(unit), options)) found.push(one);
  return found;
}
const changed = async (unit: UnitSettings, reason?: string) =>
  (await looked(unit, reason)).filter(({ kind }) => kind !== 'same');

const CASE = example('case', 'stomach-dual-antiplatelet');
const REPORT = example('pathology', 'stomach-high-risk');
const stomach = await pushed(CASE);
await pushed(REPORT);
const rectum = await pushed(example('case', 'rectum'));
const waiting = await pushed(example('pathology', 'duodenum'));

describe('records under the rules that made them', () => {
  it('are the same', async () => {
    const all = await looked(DEFAULT_UNIT_SETTINGS);
    expect(all.map(({ caseId }) => caseId).sort()).toEqual([stomach, rectum].sort());
    expect(all.every(({ kind, applied }) => kind === 'same' && !applied)).toBe(true);
    expect(all.map(({ caseId }) => caseId)).not.toContain(waiting);
  });
});

describe('records under other rules', () => {
  const verdict = {
    from: expect.stringContaining('(esge-esd-2022)'),
    to: expect.stringContaining('(jges-jgca-2021)'),
  };

  it('are shown where they differ, and left alone in a dry run', async () => {
    const before = await service.readCase(stomach, {});
    const found = await changed(OTHER_RULES);
    expect(found).toMatchObject([
      { caseId: stomach, kind: 'changed', applied: false, change: { verdict } },
    ]);
    expect(await service.readCase(stomach, {})).toEqual(before);
  });

  it('get a new state that says why, once', async () => {
    expect(await changed(OTHER_RULES, 'guideline-of-2021')).toMatchObject([
      { caseId: stomach, applied: true },
    ]);
    const view = await createService(under(OTHER_RULES)).readCase(stomach, {});
    expect(view).toMatchObject({
      state: 3,
      delivery: { name: 'queued', state: 3 },
      change: { by: { kind: 'as-of', revision: 1, reason: 'guideline-of-2021' }, verdict },
    });
    const details = view?.timeline.map(({ detail }) => detail);
    expect(details).toContain('as-of, revision 1: guideline-of-2021');
    expect(details?.at(-3)).toMatch(/^verdict: .+ \(esge-esd-2022\) -> .+ \(jges-jgca-2021\)/);
    expect(await changed(OTHER_RULES, 'guideline-of-2021')).toEqual([]);
  });

  it('say why in their Provenance', async () => {
    const bundle = await createService(under(OTHER_RULES)).readBundle(stomach, {});
    const texts = (bundle?.entry ?? []).flatMap(({ resource }) =>
      resource !== undefined && 'reason' in resource && Array.isArray(resource.reason)
        ? resource.reason.map(({ text }) => text)
        : [],
    );
    expect(texts[0]).toBe('guideline-of-2021');
    expect(texts[1]).toMatch(/^Verdict from .+\(esge-esd-2022\) to .+\(jges-jgca-2021\)/);
  });

  it('are corrected afterwards like any other', async () => {
    await pushed(altered(REPORT, { revision: 2 }));
    expect((await service.readCase(stomach, {}))?.state).toBe(4);
  });
});

describe('a record of a release that computed no verdict', () => {
  it('is shown and judged like one that differs', async () => {
    const { rows } = await database.pool.query(
      'select state, version from states where case_id = $1 order by state desc limit 1',
      [rectum],
    );
    const version = JSON.parse(rows[0].version);
    const { curability: _none, scores: _neither, ...early } = version.assessment;
    await database.pool.query('update states set version = $3 where case_id = $1 and state = $2', [
      rectum,
      rows[0].state,
      JSON.stringify({ ...version, assessment: early }),
    ]);
    const [found] = (await changed(DEFAULT_UNIT_SETTINGS, 'first-verdict')).filter(
      ({ caseId }) => caseId === rectum,
    );
    expect(found).toMatchObject({ applied: true, change: { verdict: { from: 'not computed' } } });
  });
});

describe('a record that cannot be read', () => {
  it('is named as a fault of ours, and the others are looked at all the same', async () => {
    await database.pool.query(`update states set version = '{"messages":[]}' where case_id = $1`, [
      rectum,
    ]);
    const found = await looked(DEFAULT_UNIT_SETTINGS);
    expect(found.map(({ kind }) => kind).sort()).toContain('failed');
    expect(found).toHaveLength(2);
    expect(found.find(({ kind }) => kind === 'failed')).toMatchObject({ caseId: rectum });
  });
});
