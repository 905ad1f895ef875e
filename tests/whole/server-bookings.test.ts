import { createServer } from 'node:http';
import type { Appointment, Bundle, ServiceRequest } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createFhirClient, createTarget } from '../../src/delivery/index.js';
import type { Log } from '../../src/http/index.js';
import { caseIdOf, createService, prepareStored, SENT_TYPES } from '../../src/pipeline/index.js';
import { presentOf, readVersion } from '../../src/record/index.js';
import { prepareSandbox } from '../../src/sandbox/index.js';
import { createServerBookings } from '../../src/server-bookings.js';
import { createRecordStore, createSeenMark } from '../../src/store/index.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * A scheduler that knows the FHIR server alone: it reads requests, books Appointments on them,
 * moves and cancels them. Oracles: FHIR R4 (4.0.1), Appointment (basedOn, status, start, end),
 * ServiceRequest (status, occurrence), search (_lastUpdated, _include, paging). That a plan never
 * changes what is booked is the definition of the project.
 */
const database = await (await testDatabase()).open();
await prepareSandbox(database.db);
const store = createRecordStore(database);
const settings = {
  unit: { ...DEFAULT_UNIT_SETTINGS, proposedAppointments: true },
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};
const forever = new AbortController().signal;

/** Every step of the story is a minute after the one before. */
let nowMs = Date.UTC(2026, 3, 1, 8);
const clock = { now: () => nowMs, after: () => () => undefined };
const service = createService({ store, settings, now: () => new Date(nowMs).toISOString() });

const said: Record<string, unknown>[] = [];
const keep = (line: unknown) => {
  said.push(typeof line === 'object' ? { ...line } : {});
};
const log: Log = { debug: keep, info: keep, warn: keep, error: keep };

let server: TestServer;
const caseId = caseIdOf(settings.secret, example('case', 'stomach-differentiated').document.case);
beforeAll(async () => {
  server = await startServer(database.db, { nowMs: () => nowMs });
  const { patient } = example('pathology', 'stomach-differentiated').document;
  await server.post('/Patient', { resourceType: 'Patient', identifier: [patient] });
  await receive(example('case', 'stomach-differentiated'));
  await receive(REPORT);
  await deliver();
});
afterAll(() => server.stop());

const REPORT = example('pathology', 'stomach-differentiated');
const FIRST = 'GAS-1.1';

async function receive({ kind, bytes }: Sent): Promise<void> {
  const receipt = await service.receive(kind, bytes, {});
  expect(receipt).toMatchObject({ kind: 'accepted' });
}

const stored = async () => {
  const version = (await store.read(caseId))?.version;
  if (version === undefined) throw new Error('the case has a record');
  return version;
};
const itemOf = async (key: string) =>
  presentOf(readVersion(await stored())).plan.items.find((item) => item.key === key);

async function deliver(): Promise<void> {
  nowMs += 60_000;
  const target = createTarget({
    client: createFhirClient({ baseUrl: server.base }),
    baseUrl: server.base,
    needs: { types: SENT_TYPES, mode: 'auto', largestBundle: 150 },
    missingPatient: 'require',
    allowed: { allowHttp: true, allowedHosts: [] },
    clock,
  });
  await target.probe(forever);
  const prepared = prepareStored(settings)(await stored());
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.problems));
  const verdict = await target.deliver(prepared.value, forever);
  if (verdict.kind !== 'delivered') throw new Error(JSON.stringify(verdict));
}

/** One look of the service at the server, some time later. */
async function look(baseUrl = server.base): Promise<readonly unknown[]> {
  nowMs += 60_000;
  said.length = 0;
  const client = createFhirClient({ baseUrl, deadlineMs: 5_000 });
  const { identifierBase } = settings.unit;
  const mark = createSeenMark(database);
  const deps = { client, baseUrl, clock, identifierBase, store, settings, mark, log };
  await createServerBookings(deps).look();
  return said.map(({ event, count }) => (count === undefined ? event : `${event} ${count}`));
}

/** What a client finds, without the resources that were included. */
async function found<T>(type: string, form: Readonly<Record<string, string>>): Promise<T[]> {
  const { json } = await server.search(type, new URLSearchParams(form).toString());
  const bundle: Bundle = json;
  return (bundle.entry ?? []).flatMap(({ resource, search }) =>
    search?.mode === 'match' ? [JSON.parse(JSON.stringify(resource))] : [],
  );
}

const REQUEST_KIND = 'https://dissection-records.example/fhir/CodeSystem/request-kind';
async function openRequest(): Promise<ServiceRequest> {
  const [request] = await found<ServiceRequest>('ServiceRequest', {
    status: 'active',
    code: `${REQUEST_KIND}|upper-follow-up-endoscopy`,
    occurrence: 'lt2026-12-31',
    _lastUpdated: 'ge2026-04-01',
    _sort: 'occurrence',
  });
  if (request === undefined) throw new Error('a request is open');
  return request;
}

const appointmentsOn = ({ id }: ServiceRequest): Promise<Appointment[]> =>
  found('Appointment', { 'based-on': `ServiceRequest/${id}`, _include: 'Appointment:based-on' });

const visit = (request: ServiceRequest, on: string): Appointment => ({
  resourceType: 'Appointment',
  status: 'booked',
  start: `${on}T09:00:00+02:00`,
  end: `${on}T09:30:00+02:00`,
  basedOn: [{ reference: `ServiceRequest/${request.id}` }],
  participant: [{ actor: { display: 'Room 2' }, status: 'accepted' }],
});

async function book(appointment: Appointment): Promise<Appointment> {
  nowMs += 60_000;
  const { json, status } = await server.post('/Appointment', appointment);
  expect(status).toBe(201);
  return json;
}
async function change(appointment: Appointment): Promise<void> {
  nowMs += 60_000;
  const { status } = await server.put(`/Appointment/${appointment.id}`, appointment);
  expect(status).toBe(200);
}

describe('a scheduler that knows the FHIR server alone', () => {
  it('finds the open request with its days, and one proposal on it', async () => {
    const request = await openRequest();
    expect(request.occurrencePeriod?.start).toBe((await itemOf(FIRST))?.due?.earliest);
    const proposals = await appointmentsOn(request);
    expect(proposals.map(({ status }) => status)).toEqual(['proposed']);
    expect(await look()).toEqual([]);
    expect((await itemOf(FIRST))?.booking).toBeUndefined();
  });

  it('books an Appointment of its own, and the plan shows it; said once, not again', async () => {
    const request = await openRequest();
    const theirs = await book(visit(request, '2026-07-01'));
    expect(await look()).toEqual(['bookings-learnt 1']);
    expect((await itemOf(FIRST))?.booking).toMatchObject({
      status: 'booked',
      on: '2026-07-01',
      startsAt: '2026-07-01T09:00:00+02:00',
      heldBy: 'server',
      appointment: `Appointment/${theirs.id}`,
    });
    expect(await look()).toEqual([]);
    const listed = await service.listFollowUps({ booked: true, limit: 10 }, { role: 'scheduler' });
    expect(JSON.stringify(listed)).toContain('2026-07-01T09:00:00+02:00');
  });

  it('keeps its Appointment when the record is sent again; the proposal gives way', async () => {
    const request = await openRequest();
    const before = (await appointmentsOn(request)).find(({ identifier }) => !identifier);
    await deliver();
    const after = await appointmentsOn(request);
    expect(after.find(({ identifier }) => !identifier)).toEqual(before);
    expect(after.find(({ identifier }) => identifier)?.status).toBe('cancelled');
  });

  it('moves and misses the visit on its Appointment, and each is learnt', async () => {
    const [theirs] = (await appointmentsOn(await openRequest())).filter((one) => !one.identifier);
    if (theirs === undefined) throw new Error('the Appointment is there');
    const moved = { start: '2026-07-08T10:00:00+02:00', end: '2026-07-08T10:30:00+02:00' };
    await change({ ...theirs, ...moved });
    expect(await look()).toEqual(['bookings-learnt 1']);
    expect((await itemOf(FIRST))?.booking).toMatchObject({ on: '2026-07-08', moved: true });
    await change({ ...theirs, ...moved, status: 'cancelled' });
    expect(await look()).toEqual(['bookings-learnt 1']);
    expect((await itemOf(FIRST))?.booking?.status).toBe('cancelled');
    await deliver();
    const ours = (await appointmentsOn(await openRequest())).find((one) => one.identifier);
    expect(ours?.status).toBe('proposed');
  });

  it('may book what we propose: it is learnt and never written over', async () => {
    const request = await openRequest();
    const ours = (await appointmentsOn(request)).find((one) => one.identifier);
    if (ours === undefined) throw new Error('the proposal is there');
    const { start, end } = visit(request, '2026-07-15');
    const participant = [...ours.participant, { actor: { display: 'Room 2' }, status: 'accepted' }];
    const booked = { ...ours, status: 'booked', start, end, participant } as Appointment;
    await change(booked);
    await deliver();
    const kept = (await appointmentsOn(request)).find((one) => one.identifier);
    expect([kept?.status, kept?.participant.length]).toEqual(['booked', 2]);
    expect(await look()).toEqual(['bookings-learnt 1']);
    expect((await itemOf(FIRST))?.booking).toMatchObject({ status: 'booked', on: '2026-07-15' });
    expect(await look()).toEqual([]);
  });

  it('keeps its visit when the plan changes, and a task says that it no longer fits', async () => {
    const request = await openRequest();
    const before = await appointmentsOn(request);
    nowMs += 60_000;
    const { findings, report } = REPORT.document;
    await receive(
      altered(REPORT, {
        revision: 2,
        sentAt: '2026-04-01T09:00:00+02:00',
        report: { ...report, version: 2, amendmentReason: 'further-sections' },
        findings: { ...findings, ly: '1' },
      }),
    );
    expect((await itemOf(FIRST))?.booking).toMatchObject({ status: 'booked', on: '2026-07-15' });
    expect((await itemOf(`booking-check-${FIRST}`))?.state).toBe('open');
    await deliver();
    expect((await appointmentsOn(request)).map(({ status }) => status).sort()).toEqual(
      before.map(({ status }) => status).sort(),
    );
    const [task] = await found<{ readonly focus: { readonly reference: string } }>('Task', {
      code: `${REQUEST_KIND}|booking-check`,
      status: 'requested',
    });
    expect(task?.focus.reference).toBe(`ServiceRequest/${request.id}`);
  });
});

describe('a look at the server', () => {
  it('passes over Appointments that refer to nothing of ours, over many pages', async () => {
    const { json } = await server.post('/ServiceRequest', {
      resourceType: 'ServiceRequest',
      status: 'active',
      intent: 'order',
      subject: { display: 'somebody' },
    });
    const other: Appointment = visit({ ...json, id: json.id }, '2026-08-01');
    const entry = Array.from({ length: 250 }, () => ({
      resource: other,
      request: { method: 'POST', url: 'Appointment' },
    }));
    const sent = await server.post('/', { resourceType: 'Bundle', type: 'transaction', entry });
    expect(sent.status).toBe(200);
    expect(await look()).toEqual([]);
    expect(await createSeenMark(database).read()).toBe(new Date(nowMs - 60_000).toISOString());
  });

  it('says that the server is away, and sees later what it missed', async () => {
    const before = await createSeenMark(database).read();
    expect(await look('http://127.0.0.1:9')).toEqual(['bookings-not-learnt']);
    expect(await createSeenMark(database).read()).toBe(before);
  });

  it('does without include and sorting, and follows no link to elsewhere', async () => {
    const poor = createServer(async (request, response) => {
      const parts: Buffer[] = [];
      for await (const part of request) parts.push(part);
      const form = new URLSearchParams(Buffer.concat(parts).toString());
      const isTooMuch = form.has('_include') || form.has('_sort') || form.has('based-on:missing');
      response.setHeader('content-type', 'application/fhir+json');
      if (isTooMuch) return response.writeHead(400).end('{"resourceType":"OperationOutcome"}');
      const type = request.url?.split('/')[1] ?? '';
      const { json } = await server.search(type, form.toString());
      const link = [{ relation: 'next', url: 'https://elsewhere.example/fhir?page=2' }];
      response.end(JSON.stringify({ ...json, link }));
      return response;
    });
    await new Promise<void>((resolve) => poor.listen(0, '127.0.0.1', resolve));
    const address = poor.address();
    const port = typeof address === 'object' ? address?.port : undefined;
    const [request] = await found<ServiceRequest>('ServiceRequest', {
      identifier: `${settings.unit.identifierBase}/servicerequest|${caseId}.${FIRST}`,
    });
    if (request === undefined) throw new Error('the request is there');
    nowMs += 30 * 60_000;
    await book(visit(request, '2026-07-22'));
    nowMs += 15 * 60_000;
    await createSeenMark(database).keep(new Date(nowMs - 15 * 60_000).toISOString());
    expect(await look(`http://127.0.0.1:${port}`)).toEqual([
      'appointments-incomplete',
      'bookings-learnt 1',
    ]);
    expect((await itemOf(FIRST))?.booking?.on).toBe('2026-07-22');
    await new Promise((resolve) => poor.close(resolve));
  });
});
