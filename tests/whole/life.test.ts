import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { SentKind } from '../../src/pipeline/index.js';
import { sandboxDatabase } from '../sandbox/support/sandbox-database.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import type { Draft } from '../support/consistent-case.js';
import { testDatabase } from '../support/database.js';
import { life } from '../support/lives.js';
import { unitOver } from './service-program.js';

/*
 * One whole life, pushed over HTTP to the service in a process of its own, as a FHIR server has it
 * in the end. Oracles: 202 as RFC 9110 has it; what a search by the sender's own numbers finds
 * (FHIR R4, Procedure.identifier, Procedure.subject), and event-status entered-in-error.
 */

const fhir = await sandboxDatabase();
const records = await testDatabase('none');
const unit = await unitOver(records.url, 'auto');

let server: TestServer;
beforeAll(async () => {
  server = await startServer(fhir.db);
  await server.post('/', readFileSync('examples/patients.json', 'utf8'));
});
afterAll(() => server.stop());

const PATHS: Readonly<Record<SentKind, string>> = {
  case: '/cases',
  pathology: '/pathology',
  event: '/events',
  examination: '/examinations',
  withdrawal: '/withdrawals',
};

it('a case under the wrong patient is taken back, and the right one stands with its report', async () => {
  const { url } = await unit.start(server.base);
  const call = async (path: string, body?: Uint8Array) => {
    const headers = {
      authorization: `Bearer ${unit.notesKey}`,
      'content-type': 'application/json',
    };
    const sent = body === undefined ? {} : { method: 'POST', body: new Uint8Array(body) };
    const response = await fetch(url + path, { headers, ...sent });
    const json: Draft = await response.json();
    return { status: response.status, location: response.headers.get('location') ?? '', json };
  };
  const { messages } = life('wrong-patient');
  const verdicts: unknown[] = [];
  for (const { kind, bytes } of messages) {
    const pushed = await call(PATHS[kind], bytes);
    expect(pushed.status).toBe(202);
    const delivered = async () => {
      const { json } = await call(pushed.location);
      return json.delivery.name === 'delivered' && json.delivery.state === json.state;
    };
    await expect.poll(delivered, { timeout: 20_000, interval: 50 }).toBe(true);
    verdicts.push(pushed.json.assessment.curability.verdict.outcome.class);
  }
  expect(verdicts.at(-1)).toBe('very-low-risk');

  const wrong = await procedureOf('EX-C-2026-018');
  const right = await procedureOf('EX-C-2026-020');
  expect([wrong.status, right.status]).toEqual(['entered-in-error', 'completed']);
  const patients = await Promise.all([wrong, right].map(patientOf));
  expect(patients).toEqual(['EX-P-0017', 'EX-P-0020']);
  const reports = await server.search('DiagnosticReport', `subject=${right.subject.reference}`);
  const statuses = (reports.json.entry ?? []).map(({ resource }: Draft) => resource.status);
  // The note tells of no specimen, so its own report was final before that of the laboratory came.
  expect(statuses.toSorted()).toEqual(['amended', 'final']);
});

/** The one Procedure of a case by the number that its sender gave it. */
async function procedureOf(number: string): Promise<Draft> {
  const found = await server.search('Procedure', `identifier=urn:oid:2.999.1.2|${number}`);
  expect(found.json.total).toBe(1);
  return found.json.entry[0].resource;
}

const patientOf = async ({ subject }: Draft): Promise<string> =>
  (await server.get(`/${subject.reference}`)).json.identifier[0].value;
