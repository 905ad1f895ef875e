import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadBatch } from '../../scripts/synthetic/load-batch.js';
import { checkOutcomeReport } from '../../src/conformance/index.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { INDICATOR_IDS } from '../../src/outcomes/index.js';
import { createService, type StateToStore } from '../../src/pipeline/index.js';
import { readUnitReport } from '../../src/read-unit-report.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { WANTED as ANY } from '../synthetic/samples.js';
import { jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';

/* The MeasureReport over the real service and a real PostgreSQL, filled with invented cases. */

const COUNT = 120;
/** All in two years, so that the counts of a year are not all small. */
const WANTED = { ...ANY, untilOn: '2019-12-31' };
const NOW = '2026-07-02T06:00:00Z';
/** The unit shows small counts to its own people; what is given out hides them all the same. */
const SETTINGS = {
  unit: { ...DEFAULT_UNIT_SETTINGS, smallCells: 'show' as const, smallCellThreshold: 2 },
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
let facts: readonly StateToStore['facts'][] = [];
let app: RunningApp;

beforeAll(async () => {
  await loadBatch(database, SETTINGS, WANTED, { from: 0, to: COUNT }, NOW);
  for await (const page of store.facts({ filters: {} })) facts = [...facts, ...page];
  app = await runApp({ service: createService({ store, settings: SETTINGS, now: () => NOW }) });
}, 60_000);
afterAll(stopApps);

const ask = (query: string) =>
  app.get(`/outcomes/measure-report${query}`, { role: 'records-team' });

const ALL = '?from=2018-01-01&to=2019-12-31';

/** Below the threshold of this unit. */
const isSmall = (count: number): boolean => count === 1;

describe('GET /outcomes/measure-report', () => {
  it('answers with a MeasureReport that passes every check', async () => {
    const response = await ask(`${ALL}&by=organ`);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/fhir+json');
    const report = await jsonOf(response);
    expect(checkOutcomeReport(report).ok).toBe(true);
    expect(report).toMatchObject({
      resourceType: 'MeasureReport',
      date: NOW,
      period: { start: '2018-01-01', end: '2019-12-31' },
      reporter: { identifier: { value: SETTINGS.unit.identifierBase } },
    });
  });

  it('counts what a count of the facts, row after row, finds, and hides what is small', async () => {
    const response = await ask(ALL);
    const read = readUnitReport(new Uint8Array(await response.arrayBuffer()));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(facts).toHaveLength(COUNT);
    let shown = 0;
    for (const [i, id] of INDICATOR_IDS.entries()) {
      const count = (word: string) => facts.filter((row) => row[id] === word).length;
      const result = read.value.results[i];
      expect(result?.id).toBe(id);
      if (result?.kind !== 'rate') continue;
      shown += 1;
      expect([result.numerator, result.denominator, result.missing, result.windowOpen]).toEqual([
        count('yes'),
        count('yes') + count('no'),
        count('missing'),
        count('window-open'),
      ]);
      expect(isSmall(count('yes')) || isSmall(count('no'))).toBe(false);
    }
    expect(shown).toBeGreaterThan(0);
    expect(shown).toBeLessThan(INDICATOR_IDS.length);
  });

  it.each([
    ['', ['report-period', 'report-period']],
    ['?from=2018-01-01', ['report-period']],
    [`${ALL}&organ=colon`, ['report-all-cases']],
    ['?from=2025-01-02&to=2025-12-31', ['period-too-fine']],
  ])('refuses "%s"', async (query, rules) => {
    const response = await ask(query);
    expect(response.status).toBe(400);
    const { errors } = await jsonOf(response);
    expect(errors).toMatchObject(rules.map((rule) => ({ rule })));
  });

  it('is for the records team alone', async () => {
    const response = await app.get(`/outcomes/measure-report${ALL}`, { role: 'scheduler' });
    expect(response.status).toBe(403);
  });
});
