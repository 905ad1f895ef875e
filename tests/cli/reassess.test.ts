import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, type Reassessed, siteMarkOf } from '../../src/pipeline/index.js';
import { bindToSite, createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { example } from '../support/example-messages.js';
import { runProgram } from './program.js';
import { run } from './run.js';

const test = await testDatabase();
const folder = mkdtempSync(join(tmpdir(), 'reassess-'));
afterAll(() => rmSync(folder, { recursive: true }));

const SCORE = { rule: 'ecura', from: '3 intermediate', to: '4 intermediate' };
const VERDICT = { from: 'A (x)', to: 'B (x)', because: ['Because.'] };
const CHANGED: Reassessed = {
  ...{ caseId: 'case-1', kind: 'changed', applied: false },
  change: { verdict: VERDICT, scores: [SCORE] },
};
const SAME: Reassessed = { caseId: 'case-2', kind: 'same', applied: false };
const FAILED: Reassessed = { caseId: 'case-3', kind: 'failed', applied: false };

/** Runs the command over cases that are made up, and says what it was asked for. */
async function reassessed(args: readonly string[], cases: readonly Reassessed[] = [CHANGED, SAME]) {
  const asked: object[] = [];
  const ran = await run(
    ['reassess', ...args],
    {},
    {
      reassess: async (options, tell) => {
        asked.push(options);
        for (const one of cases) tell({ ...one, applied: one === CHANGED && 'reason' in options });
        return 0;
      },
    },
  );
  return { ...ran, asked };
}

describe('the command reassess', () => {
  it('shows what differs and writes nothing by itself', async () => {
    const { code, out, asked } = await reassessed([]);
    expect(asked).toEqual([{}]);
    expect([code, out.split('\n')]).toEqual([
      0,
      [
        ...['case-1', '  verdict  A (x) -> B (x)', '  ecura  3 intermediate -> 4 intermediate'],
        ...['cases looked at: 2; they differ: 1; nothing was written.', ''],
      ],
    ]);
  });

  it('writes with a reason', async () => {
    const { out, asked } = await reassessed(['--apply', '--reason', 'erratum-2026-05']);
    expect(asked).toEqual([{ reason: 'erratum-2026-05' }]);
    expect(out).toContain('cases looked at: 2; they differ: 1; new states: 1.');
  });

  it('speaks to machines', async () => {
    const { out } = await reassessed(['--json']);
    expect(
      out
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual([
      { caseId: 'case-1', verdict: VERDICT, scores: [SCORE], applied: false },
      { looked: 2, differ: 1, applied: 0, failed: 0 },
    ]);
  });

  it('says how far it is in a long run, unless it shall be quiet', async () => {
    const many = Array.from({ length: 1_200 }, () => SAME);
    expect((await reassessed([], many)).err).toBe('500 cases ...\n1000 cases ...\n');
    expect(await reassessed(['--quiet'], many)).toMatchObject({ out: '', err: '' });
  });

  it('ends with 1 when a case could not be looked at, and names it', async () => {
    const { code, out, err } = await reassessed([], [FAILED, SAME]);
    expect(code).toBe(1);
    expect(err).toContain('case-3  cannot be assessed');
    expect(out).toContain('cases looked at: 2; they differ: 0; not to be assessed: 1');
  });

  it.each([
    ['--apply asks for --reason', ['--apply']],
    ['--reason is said with --apply', ['--reason', 'erratum']],
    ['lower-case letters, digits and hyphens', ['--apply', '--reason', 'Two words']],
    ['takes no FILE', ['case.json']],
  ])('refuses, with 2: %s', async (sentence, args) => {
    const { code, err, asked } = await reassessed(args);
    expect([code, asked]).toEqual([2, []]);
    expect(err).toContain(sentence);
  });
});

describe('the real program over a database', () => {
  const secret = 'k9Xw2mQ7vT4pLz8sRb3nYd6hGf1jCaUe';
  const settings = join(folder, 'unit.json');
  const env = {
    ...{ DATABASE_URL: test.url, DISSECTION_DATA_DIR: folder, DISSECTION_SITE_SECRET: secret },
    ...{ DISSECTION_SANDBOX: 'true', DISSECTION_SETTINGS_FILE: settings },
  };

  it('judges a kept case by the rules that the unit has chosen since', async () => {
    const database = await test.open();
    await bindToSite(database, siteMarkOf(secret));
    const service = createService({
      store: createRecordStore(database),
      settings: { unit: DEFAULT_UNIT_SETTINGS, secret, softwareVersion: '0' },
      now: () => '2027-01-01T12:00:00.000Z',
    });
    for (const { kind, bytes } of [
      example('case', 'stomach-dual-antiplatelet'),
      example('pathology', 'stomach-high-risk'),
    ]) {
      expect((await service.receive(kind, bytes, {})).kind).toBe('accepted');
    }
    const curabilityRules = { stomach: 'jges-jgca-2021' };
    const unit = { ...DEFAULT_UNIT_SETTINGS, version: 2, curabilityRules };
    writeFileSync(settings, JSON.stringify(unit));
    const apply = ['reassess', '--apply', '--reason', 'other-rules'];
    const first = await runProgram(apply, env);
    expect(first).toMatchObject({ code: 0, err: '' });
    expect(first.out).toMatch(/verdict {2}.+\(esge-esd-2022\) -> .+\(jges-jgca-2021\)/);
    expect(first.out).toContain('cases looked at: 1; they differ: 1; new states: 1.');
    expect((await runProgram(apply, env)).out).toBe(
      'cases looked at: 1; they differ: 0; new states: 0.\n',
    );
  });

  it('ends with 2 without a usable configuration, and with 3 without a database', async () => {
    expect((await runProgram(['reassess'], { ...env, PORT: 'x' })).code).toBe(2);
    const nowhere = { ...env, DATABASE_URL: 'postgresql://u:p@127.0.0.1:1/records' };
    expect((await runProgram(['reassess'], nowhere)).code).toBe(3);
  });
});
