import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Service } from '../../src/pipeline/index.js';
import { prepareSandbox } from '../../src/sandbox/index.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';
import { EXAMPLES as ALL } from '../support/example-messages.js';
import { untilDelivery, wholeService } from '../support/whole-service.js';

const test = await testDatabase();
const EXAMPLES = readdirSync('examples/cases').filter((name) => name.endsWith('.json'));
/** What comes after the cases, a correction after what it corrects, a withdrawal last of all. */
const LATER = ALL.filter(({ kind }) => kind !== 'case').sort(
  (a, b) =>
    Number(a.kind === 'withdrawal') - Number(b.kind === 'withdrawal') ||
    a.document.revision - b.document.revision,
);
const NUMBERS = [...new Set(LATER.map(({ document }) => document.case.value))];
const bytesOf = (name: string): Uint8Array => readFileSync(`examples/cases/${name}`);
const PATIENTS = JSON.parse(readFileSync('examples/patients.json', 'utf8'));

let sandbox: TestServer;
let service: Service;
let stop: () => Promise<void>;

beforeAll(async () => {
  const database = await test.open();
  await prepareSandbox(database.db);
  sandbox = await startServer(database.db);
  const whole = wholeService(database, sandbox.base);
  service = whole.service;
  await whole.worker.start();
  stop = async () => {
    await whole.worker.stop();
    await sandbox.stop();
  };
});

afterAll(() => stop());

/** Each resource of the Bundle is on the server, and is there once. */
async function expectOnce(caseId: string): Promise<void> {
  const sent = await service.readBundle(caseId, {});
  const identifiers = (sent?.entry ?? []).flatMap(({ resource }) =>
    resource !== undefined && 'identifier' in resource && Array.isArray(resource.identifier)
      ? [{ type: resource.resourceType, ...resource.identifier[0] }]
      : [],
  );
  expect(identifiers.length).toBe((sent?.entry?.length ?? 0) - 1);
  for (const { type, system, value } of identifiers) {
    const criteria = `identifier=${encodeURIComponent(`${system}|${value}`)}&_summary=count`;
    const found = await sandbox.search(type, criteria);
    expect(found.json.total, `${type} ${value}`).toBe(1);
  }
}

describe('the whole way of a case, from the push to the FHIR server', () => {
  it('waits for a patient whom the server does not know, and goes on when it does', async () => {
    const [name = ''] = EXAMPLES;
    const receipt = await service.receive('case', bytesOf(name), {});
    expect(receipt.kind).toBe('accepted');
    const caseId = receipt.kind === 'accepted' ? receipt.receipt.caseId : '';
    await untilDelivery(service, caseId, 'waiting-patient');
    await sandbox.post('/', PATIENTS);
    // A new state of the case makes it due at once.
    const next = JSON.parse(readFileSync(`examples/cases/${name}`, 'utf8'));
    const bytes = new TextEncoder().encode(JSON.stringify({ ...next, revision: 2 }));
    expect((await service.receive('case', bytes, {})).kind).toBe('accepted');
    await untilDelivery(service, caseId, 'delivered');
  });

  it.each(EXAMPLES.slice(1))('%s arrives, each resource once', async (name) => {
    const bytes = bytesOf(name);
    const receipt = await service.receive('case', bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    const { caseId } = receipt.receipt;
    await untilDelivery(service, caseId, 'delivered');

    await expectOnce(caseId);
  });

  it('answers an exact repetition with the first receipt, and keeps one case', async () => {
    const bytes = bytesOf('minimal.json');
    const [first, second] = [
      await service.receive('case', bytes, {}),
      await service.receive('case', bytes, {}),
    ];
    expect([first.kind, second.kind]).toEqual(['repeated', 'repeated']);
    expect(first).toEqual(second);
  });

  it('refuses another content under a used revision, and a stale one, each by its rule', async () => {
    const sent = JSON.parse(readFileSync('examples/cases/minimal.json', 'utf8'));
    const encode = (change: object): Uint8Array =>
      new TextEncoder().encode(JSON.stringify({ ...sent, ...change }));
    const other = await service.receive('case', encode({ lesionsInSession: 3 }), {});
    expect(other).toMatchObject({ kind: 'conflict', problem: { rule: 'revision-used' } });
    const newest = await service.receive('case', encode({ revision: 5 }), {});
    if (newest.kind !== 'accepted') throw new Error(newest.kind);
    const stale = await service.receive('case', encode({ revision: 3 }), {});
    expect(stale).toMatchObject({ kind: 'conflict', problem: { rule: 'revision-stale' } });
    expect(await service.receive('case', encode({ revision: 3 }), {})).toEqual(stale);
    const view = await service.readCase(newest.receipt.caseId, {});
    expect(view).toMatchObject({ revision: 5 });
    const received = view?.timeline.filter(({ event }) => event.startsWith('received'));
    expect(received?.map(({ event }) => event)).toEqual([
      ...['received', 'received'],
      'received-stale',
    ]);
  });

  it('hides a case from another source, and refuses to write it', async () => {
    const bytes = bytesOf('minimal.json');
    const refused = await service.receive('case', bytes, { source: 'another' });
    expect(refused).toMatchObject({ kind: 'forbidden', problem: { rule: 'source-of-another' } });
    const own = await service.receive('case', bytes, {});
    const caseId = own.kind === 'repeated' ? own.receipt.caseId : '';
    expect(await service.readCase(caseId, { source: 'another' })).toBeUndefined();
    expect(await service.readBundle(caseId, { source: 'another' })).toBeUndefined();
    expect(await service.readCase(caseId, {})).toMatchObject({ caseId });
  });

  it('says the same in a dry run as in the push', async () => {
    const name = EXAMPLES.find((file) => file.startsWith('duodenum')) ?? '';
    const dry = await service.check('case', bytesOf(name), {});
    const pushed = await service.receive('case', bytesOf(name), {});
    if (dry.kind !== 'valid' || pushed.kind !== 'repeated') throw new Error('both are good');
    expect(dry.view).toEqual(JSON.parse(JSON.stringify(pushed.view)));
    expect(dry.bundle).toEqual(await service.readBundle(pushed.receipt.caseId, {}));
  });

  it.each(NUMBERS)('everything that comes after %s arrives, each resource once', async (number) => {
    let caseId = '';
    for (const { kind, bytes } of LATER.filter(({ document }) => document.case.value === number)) {
      const receipt = await service.receive(kind, bytes, {});
      if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
      caseId = receipt.receipt.caseId;
    }
    await untilDelivery(service, caseId, 'delivered');
    await expectOnce(caseId);
  });
});
