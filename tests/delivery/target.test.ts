import type { ServerResponse } from 'node:http';
import { describe, expect, it } from 'vitest';
import { createFhirClient } from '../../src/delivery/fhir-client.js';
import type { IdentityMode } from '../../src/delivery/index.js';
import { createTarget, type KeptMode, type TargetConfig } from '../../src/delivery/target.js';
import { manualClock } from './support/manual-clock.js';
import { doneResponse, PATIENT, RECORD_NUMBER, sampleBundle } from './support/sample-bundle.js';
import {
  capabilityStatement,
  patients,
  reply,
  SAMPLE_TYPES,
  type Script,
  startStub,
} from './support/stub-server.js';

const stub = await startStub();
const identifier = PATIENT.identifier ?? {};
const forever = new AbortController().signal;
const onlyConditional = capabilityStatement({ conditionalUpdate: true, conditionalCreate: true });

const targetWith = (more: Partial<TargetConfig> = {}) =>
  createTarget({
    client: createFhirClient({ baseUrl: stub.baseUrl, deadlineMs: 5_000 }),
    baseUrl: stub.baseUrl,
    needs: { types: SAMPLE_TYPES, mode: 'auto', largestBundle: 60 },
    missingPatient: 'require',
    allowed: { allowHttp: false, allowedHosts: [] },
    clock: manualClock(),
    ...more,
  });

/** A server with one patient that does what a transaction asks, unless told otherwise. */
function server(
  over: {
    readonly metadata?: unknown;
    readonly patient?: (response: ServerResponse) => void;
    readonly transaction?: Script;
    readonly search?: Script;
  } = {},
): void {
  stub.seen.length = 0;
  stub.script = (request, response) => {
    if (request.url === '/fhir/metadata') {
      return reply(response, 200, over.metadata ?? capabilityStatement());
    }
    if (request.url === '/fhir/Patient/_search') {
      const found = () => reply(response, 200, patients(identifier, 'p-1'));
      return over.patient === undefined ? found() : over.patient(response);
    }
    if (request.url !== '/fhir') return over.search?.(request, response);
    if (over.transaction !== undefined) return over.transaction(request, response);
    reply(response, 200, doneResponse(JSON.parse(request.body)));
  };
}

const posted = () => stub.seen.filter(({ url }) => url === '/fhir');

async function deliver(more: Partial<TargetConfig> = {}) {
  const target = targetWith(more);
  await target.probe(forever);
  return target.deliver(sampleBundle(), forever);
}

describe('probing a target', () => {
  it('finds how resources keep their identity there', async () => {
    server();
    expect(await targetWith().probe(forever)).toEqual({ kind: 'usable', mode: 'client-id' });
    server({ metadata: onlyConditional });
    expect(await targetWith().probe(forever)).toEqual({ kind: 'usable', mode: 'conditional' });
  });

  it('stays with the mode that was chosen first, when the server offers more after an upgrade', async () => {
    server({ metadata: onlyConditional });
    const modes: IdentityMode[] = [];
    const kept: KeptMode = {
      read: () => Promise.resolve(modes.at(-1)),
      keep: (mode) => Promise.resolve(void modes.push(mode)),
    };
    const target = targetWith({ kept });
    expect(await target.probe(forever)).toEqual({ kind: 'usable', mode: 'conditional' });
    server();
    expect(await target.probe(forever)).toEqual({ kind: 'usable', mode: 'conditional' });
    const restarted = targetWith({ kept });
    expect(await restarted.probe(forever)).toEqual({ kind: 'usable', mode: 'conditional' });
    expect(modes).toEqual(['conditional']);
    // Without what was kept the same server is used otherwise: what was sent would come twice.
    expect(await targetWith().probe(forever)).toEqual({ kind: 'usable', mode: 'client-id' });
  });

  it('does not use a server that no longer offers the mode in use, unless it is told to', async () => {
    server({ metadata: capabilityStatement({ updateCreate: true }) });
    const kept: KeptMode = {
      read: () => Promise.resolve('conditional'),
      keep: () => Promise.resolve(),
    };
    expect(await targetWith({ kept }).probe(forever)).toMatchObject({
      kind: 'unusable',
      fault: 'no-identity-mode',
    });
    const needs = { types: SAMPLE_TYPES, mode: 'client-id', largestBundle: 60 } as const;
    const told = await targetWith({ kept, needs }).probe(forever);
    expect(told).toEqual({ kind: 'usable', mode: 'client-id' });
  });

  it.each([
    ['batches alone', { ...capabilityStatement(), rest: [] }, 'no-transaction'],
    ['R5', { ...capabilityStatement(), fhirVersion: '5.0.0' }, 'fhir-version'],
  ])('refuses one with %s', async (_what, metadata, fault) => {
    server({ metadata });
    expect(await targetWith().probe(forever)).toMatchObject({ kind: 'unusable', fault });
  });

  it('says what keeps it from answering', async () => {
    stub.script = (_request, response) => reply(response, 401, {});
    expect(await targetWith().probe(forever)).toMatchObject({ fault: 'status-401' });
    stub.script = (_request, response) => response.end('<html>');
    expect(await targetWith().probe(forever)).toMatchObject({ fault: 'unreadable' });
  });

  it('refuses a host that resolves to an address that is not allowed, without a request', async () => {
    server();
    const baseUrl = 'https://fhir.unit.example/r4';
    const resolve = () => Promise.resolve(['169.254.169.254']);
    const probe = await targetWith({ baseUrl, resolve }).probe(forever);
    expect(probe).toMatchObject({ kind: 'unusable', fault: 'address-refused' });
    expect(stub.seen).toEqual([]);
  });

  it('comes before any delivery', async () => {
    const verdict = await targetWith().deliver(sampleBundle(), forever);
    expect(verdict).toMatchObject({ failureClass: 'destination', fault: 'not-probed' });
  });
});

describe('delivering a record', () => {
  it('posts one transaction with the patient of the server', async () => {
    server();
    expect(await deliver()).toMatchObject({ kind: 'delivered', detail: '5 created, 0 updated' });
    expect(posted()).toHaveLength(1);
    const sent = JSON.parse(posted()[0]?.body ?? '');
    expect(sent.entry[0].resource.subject).toEqual({ reference: 'Patient/p-1', ...PATIENT });
    expect(sent.entry[0].request.url).toBe(`Procedure/${sent.entry[0].resource.id}`);
  });

  it('never says the record number in a URL', async () => {
    server({ metadata: onlyConditional });
    await deliver();
    expect(posted()[0]?.body).toContain(RECORD_NUMBER);
    const urls = JSON.parse(posted()[0]?.body ?? '').entry.map(
      (e: { request: object }) => e.request,
    );
    const outside = JSON.stringify([urls, stub.seen.map(({ url, headers }) => [url, headers])]);
    expect(outside).not.toContain(RECORD_NUMBER);
  });

  it('keeps a record back that has more entries than the target takes', async () => {
    server();
    const needs = { types: SAMPLE_TYPES, mode: 'auto', largestBundle: 4, entryLimit: 4 } as const;
    const reason = 'The record has 5 entries; the FHIR server takes 4 in one transaction.';
    expect(await deliver({ needs })).toMatchObject({ failureClass: 'case', reason });
    expect(posted()).toEqual([]);
  });
});

describe('the patient at the target', () => {
  const answer = (resource: unknown, status = 200) => ({
    patient: (response: ServerResponse) => reply(response, status, resource),
  });
  const other = { ...identifier, value: 'RN-0' };

  it('is waited for when there is none', async () => {
    server(answer(patients(identifier)));
    expect(await deliver()).toMatchObject({ kind: 'waiting-patient' });
    expect(posted()).toEqual([]);
  });

  it('is referred to by identifier when there is none and the site wants it so', async () => {
    server(answer(patients(identifier)));
    expect(await deliver({ missingPatient: 'logical' })).toMatchObject({ kind: 'delivered' });
    expect(JSON.parse(posted()[0]?.body ?? '').entry[0].resource.subject).toEqual(PATIENT);
  });

  it.each(['require', 'logical'] as const)(
    'is never chosen among several, policy %s',
    async (missingPatient) => {
      server(answer(patients(identifier, 'p-1', 'p-2')));
      expect(await deliver({ missingPatient })).toMatchObject({ failureClass: 'ambiguous' });
      expect(posted()).toEqual([]);
    },
  );

  it.each([
    ['another identifier: the server ignored what was asked', patients(other, 'p-1')],
    ['an id that is none', patients(identifier, '../p')],
    ['another kind of Bundle', { ...patients(identifier, 'p-1'), type: 'collection' }],
    ['another resource', { resourceType: 'OperationOutcome' }],
  ])('is not taken from an answer with %s', async (_what, body) => {
    server(answer(body));
    expect(await deliver()).toMatchObject({ failureClass: 'non-conformant-server' });
    expect(posted()).toEqual([]);
  });

  it('is not taken for missing when the search fails', async () => {
    server(answer({}, 503));
    expect(await deliver()).toMatchObject({ failureClass: 'destination', status: 503 });
  });

  it('is found beside an outcome that the search adds', async () => {
    const found = patients(identifier, 'p-1');
    const outcome = { resource: { resourceType: 'OperationOutcome' }, search: { mode: 'outcome' } };
    server(answer({ ...found, entry: [...(found.entry ?? []), outcome] }));
    expect(await deliver()).toMatchObject({ kind: 'delivered' });
  });
});

describe('a failed precondition where resources are written by identifier', () => {
  const refuse: Script = (_request, response) => reply(response, 412, {});
  const found = (type: string, ...ids: readonly string[]) => ({
    resourceType: 'Bundle',
    type: 'searchset',
    entry: ids.map((id) => ({ resource: { resourceType: type, id } })),
  });

  it('names the doubles that a person must choose from', async () => {
    server({
      metadata: onlyConditional,
      transaction: refuse,
      search: ({ url }, response) => {
        const ids = url === '/fhir/Condition/_search' ? ['c-1', 'c-2'] : ['x'];
        reply(response, 200, found(url.split('/')[2] ?? '', ...ids));
      },
    });
    const reason =
      'The FHIR server has Condition/c-1 and Condition/c-2 with the same identifier; ' +
      'a person must choose.';
    expect(await deliver()).toMatchObject({ failureClass: 'ambiguous', reason });
    const search = stub.seen.find(({ url }) => url === '/fhir/Condition/_search');
    expect(new URLSearchParams(search?.body).get('identifier')).toMatch(/\|case-1\.lesion1$/);
  });

  it('is tried again when there are none', async () => {
    server({
      metadata: onlyConditional,
      transaction: refuse,
      search: ({ url }, response) => reply(response, 200, found(url.split('/')[2] ?? '', 'x')),
    });
    expect(await deliver()).toMatchObject({ failureClass: 'bounded', status: 412 });
  });
});
