import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import type { ExitCode, Publication } from '../../src/cli/index.js';
import type { OutcomeQuestion } from '../../src/pipeline/index.js';
import { publishOutcomes } from '../../src/publish-outcomes.js';
import { createFaults, prepareSandbox } from '../../src/sandbox/index.js';
import { markInvented } from '../../src/store/index.js';
import { runProgram } from '../cli/program.js';
import { startServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';

/*
 * From the database to a FHIR server that is reached by HTTP.
 * Sources: FHIR R4 (4.0.1), http, update and conditional update; project definition: exit codes.
 */
const records = await testDatabase();
const fhir = await testDatabase();
const { db } = await fhir.open();
await prepareSandbox(db);
const faults = createFaults();
const server = await startServer(db, { faults });
const folder = mkdtempSync(join(tmpdir(), 'publish-'));
afterEach(() => vi.unstubAllEnvs());
afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true });
});

const ENVIRONMENT = {
  DATABASE_URL: records.url,
  DISSECTION_DATA_DIR: folder,
  DISSECTION_SITE_SECRET: 'k9Xw2mQ7vT4pLz8sRb3nYd6hGf1jCaUe',
  DISSECTION_FHIR_BASE_URL: server.base,
};

const YEAR: OutcomeQuestion = {
  from: '2025-01-01',
  to: '2025-12-31',
  filters: {},
  by: [],
  interval: 'wilson',
};

/** In this process, under an environment of its own. */
async function publish(
  question: Partial<OutcomeQuestion> = {},
  env: Readonly<Record<string, string>> = {},
) {
  for (const [name, value] of Object.entries({ ...ENVIRONMENT, ...env })) vi.stubEnv(name, value);
  let became: Publication | undefined;
  let err = '';
  const tell = (publication: Publication): ExitCode => {
    became = publication;
    return 0;
  };
  const code = await publishOutcomes({ ...YEAR, ...question }, tell, (text) => {
    err += text;
  });
  return { code, became, err };
}

const total = async (type: string) => (await server.get(`/${type}?_summary=count`)).json.total;

describe('publishing outcomes', () => {
  it('puts Measure and report on the server, as a process', async () => {
    const period = ['--from', '2025-01-01', '--to', '2025-12-31'];
    const ran = await runProgram(['outcomes', 'publish', ...period], ENVIRONMENT);
    expect([ran.code, ran.err]).toEqual([0, '']);
    expect(ran.out).toContain('2 created, 0 updated');
    expect([await total('Measure'), await total('MeasureReport')]).toEqual([1, 1]);
  });

  it('then sends nothing again, and puts those by organ beside them', async () => {
    expect((await publish()).became).toMatchObject({ kind: 'unchanged' });
    const byOrgan = await publish({ by: ['organ'] });
    expect(byOrgan.became).toMatchObject({ detail: '1 created, 0 updated' });
    expect([await total('Measure'), await total('MeasureReport')]).toEqual([1, 2]);
  });

  // DEQM, summary MeasureReport (from memory): status, type, measure, period, date, reporter.
  it('says of each report whose it is, by which Measure, of when', async () => {
    const { json } = await server.get('/MeasureReport');
    expect(json.entry).toHaveLength(2);
    for (const { resource } of json.entry) {
      expect(resource).toMatchObject({
        status: 'complete',
        type: 'summary',
        measure: expect.stringMatching(/^https:.*[|]\d+\.\d+\.\d+$/),
        period: { start: '2025-01-01', end: '2025-12-31' },
        date: expect.stringMatching(/Z$/),
        reporter: { type: 'Organization', identifier: { value: expect.any(String) } },
      });
    }
  });

  it('keeps the identity mode for all that is sent: cases and later reports', async () => {
    const { pool } = await records.open();
    const { rows } = await pool.query('select mode from identity_mode');
    expect(rows).toEqual([{ mode: 'client-id' }]);
    const other = await publish({ by: ['fibrosis'] }, { DISSECTION_FHIR_MODE: 'conditional' });
    // By a search the Measure of ours is found too: nothing of it is written twice.
    expect(other.became).toMatchObject({ detail: '1 created, 0 updated' });
    const back = await publish({ by: ['fibrosis'] });
    expect(back.became).toMatchObject({ kind: 'unchanged' });
    expect(await total('Measure')).toBe(1);
  });

  it('passes on what the server says when it refuses, and that it is away', async () => {
    const body = JSON.stringify({
      resourceType: 'OperationOutcome',
      issue: [{ severity: 'error', code: 'business-rule', diagnostics: 'not on a Sunday' }],
    });
    const headers = { 'content-type': 'application/fhir+json' };
    const matching = ({ method, path }: { readonly method: string; readonly path: string }) =>
      method === 'POST' && path === '/';
    faults.next({ kind: 'answer', status: 422, body, headers }, { matching });
    expect((await publish({ by: ['technique'] })).became).toMatchObject({
      passing: false,
      issues: ['error business-rule: not on a Sunday'],
    });
    faults.next({ kind: 'answer', status: 503 });
    expect((await publish({ by: ['technique'] })).became).toMatchObject({ passing: true });
    expect(await total('MeasureReport')).toBe(3);
  });

  it.each([
    ['an address that is not allowed', 'http://169.254.169.254/latest', 'reserved address'],
    ['no address', '', 'No FHIR server is named'],
  ])('does not start with %s', async (_what, DISSECTION_FHIR_BASE_URL, sentence) => {
    const { code, err, became } = await publish({}, { DISSECTION_FHIR_BASE_URL });
    expect([code, became]).toEqual([2, undefined]);
    expect(err).toContain(sentence);
  });

  it('uses the sandbox of the database where that is the server', async () => {
    const sandbox = { DISSECTION_FHIR_BASE_URL: '', DISSECTION_SANDBOX: 'true' };
    expect((await publish({}, sandbox)).became).toMatchObject({ detail: '2 created, 0 updated' });
    expect((await publish({}, sandbox)).became).toMatchObject({ kind: 'unchanged' });
    const { pool } = await records.open();
    const { rows } = await pool.query('select type from sandbox.resource order by type');
    expect(rows).toEqual([{ type: 'Measure' }, { type: 'MeasureReport' }]);
  });

  it('sends nothing of invented cases that are held back', async () => {
    await markInvented(await records.open(), 'held');
    const { became } = await publish({ by: ['traineeBand'] });
    expect(became).toMatchObject({ fault: 'held-back', passing: false });
    expect(await total('MeasureReport')).toBe(3);
  });
});
