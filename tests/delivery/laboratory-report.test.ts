import { readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CheckedBundle, checkBundle } from '../../src/conformance/index.js';
import { createFhirClient, createTarget, systemClock } from '../../src/delivery/index.js';
import {
  accessionsOf,
  linkReports,
  readReportSearch,
} from '../../src/delivery/laboratory-report.js';
import { patientIdentifierOf } from '../../src/delivery/patient.js';
import { prepareSandbox } from '../../src/sandbox/index.js';
import { bundleOf } from '../mapping/records.js';
import { bundleOfTexts } from '../mapping/reported.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';

const NAME = 'stomach-differentiated.json';
const CASE = readFileSync(`examples/cases/${NAME}`, 'utf8');
const REPORT = readFileSync(`examples/pathology/${NAME}`, 'utf8');
const ACCESSION = JSON.parse(REPORT).accession;

function checked(bundle: Bundle): CheckedBundle {
  const result = checkBundle(bundle);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const record = () => checked(bundleOfTexts([CASE, REPORT]));

const searchset = (...resources: readonly object[]) => ({
  resourceType: 'Bundle',
  type: 'searchset',
  entry: resources.map((resource) => ({ resource })),
});
const ofLaboratory = (more: object = {}) => ({
  resourceType: 'DiagnosticReport',
  id: 'lab-1',
  identifier: [ACCESSION],
  ...more,
});

describe('reports of the laboratory on the server', () => {
  it('are looked for by each accession that the record transcribes, and by no other number', () => {
    expect(accessionsOf(record())).toEqual([ACCESSION]);
    expect(accessionsOf(bundleOf(CASE))).toEqual([]);
  });

  it('are those that carry the number and are not ours', () => {
    expect(readReportSearch(searchset(ofLaboratory()), ACCESSION)).toEqual([
      'DiagnosticReport/lab-1',
    ]);
    const others = [
      ofLaboratory({ identifier: [{ ...ACCESSION, value: 'another' }] }),
      ofLaboratory({ meta: { tag: [{ system: 'x', code: 'transcribed' }] } }),
      ofLaboratory({ resourceType: 'Observation' }),
      ofLaboratory({ id: '../Patient' }),
    ];
    expect(readReportSearch(searchset(...others), ACCESSION)).toEqual([]);
    expect(readReportSearch({ resourceType: 'OperationOutcome' }, ACCESSION)).toEqual([]);
  });

  it('are named by the dissection and the Provenance, and every published rule still holds', () => {
    const linked = linkReports(record(), ['DiagnosticReport/lab-1']);
    checked(linked);
    const text = JSON.stringify(linked);
    expect(text.match(/"DiagnosticReport\/lab-1"/g)).toHaveLength(2);
    expect(linkReports(record(), [])).toEqual(record());
  });
});

// Source: project definition: the laboratory owns its report; ours is a transcription beside it.
describe('a record whose laboratory has reported to the same server', async () => {
  const test = await testDatabase();
  let server: TestServer;
  beforeAll(async () => {
    const { db } = await test.open();
    await prepareSandbox(db);
    server = await startServer(db);
  });
  afterAll(() => server.stop());

  it('refers to the report of the laboratory, and leaves it as it is', async () => {
    const bundle = record();
    const types = (bundle.entry ?? []).map(({ resource }) => resource?.resourceType ?? '');
    const target = createTarget({
      client: createFhirClient({ baseUrl: server.base, deadlineMs: 20_000 }),
      baseUrl: server.base,
      needs: { types, mode: 'auto', largestBundle: types.length },
      missingPatient: 'require',
      allowed: { allowHttp: false, allowedHosts: [] },
      clock: systemClock,
    });
    const forever = new AbortController().signal;
    expect(await target.probe(forever)).toMatchObject({ kind: 'usable' });
    await server.post('/Patient', {
      resourceType: 'Patient',
      identifier: [patientIdentifierOf(bundle)],
    });
    const report = {
      resourceType: 'DiagnosticReport',
      status: 'final',
      code: { text: 'Pathology' },
      identifier: [ACCESSION],
    };
    const made = await server.post('/DiagnosticReport', report);
    const own = `DiagnosticReport/${made.json.id}`;

    expect(await target.deliver(bundle, forever)).toMatchObject({ kind: 'delivered' });
    const procedures = await server.search('Procedure', '_count=10');
    expect(JSON.stringify(procedures.json)).toContain(own);
    const kept = await server.get(`/${own}`);
    expect(kept.json.meta.versionId).toBe(made.json.meta.versionId);
  });
});
