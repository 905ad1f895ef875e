import { afterAll, describe, expect, it } from 'vitest';
import { createFhirClient, createTarget, systemClock } from '../../src/delivery/index.js';
import { prepareSandbox, type SandboxOptions } from '../../src/sandbox/index.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';
import { PATIENT, sampleBundle } from './support/sample-bundle.js';
import { SAMPLE_TYPES } from './support/stub-server.js';

/*
 * Delivery against a server that really keeps transactions: what arrives can be read back, and
 * a second delivery leaves no second copy.
 */
const test = await testDatabase();
const { db } = await test.open();
await prepareSandbox(db);
const servers: TestServer[] = [];
afterAll(() => Promise.all(servers.map((server) => server.stop())));

const identifier = [PATIENT.identifier];
const forever = new AbortController().signal;

async function targetOn(supports: NonNullable<SandboxOptions['supports']>) {
  const server = await startServer(db, { supports });
  servers.push(server);
  const target = createTarget({
    client: createFhirClient({ baseUrl: server.base, deadlineMs: 10_000 }),
    baseUrl: server.base,
    needs: { types: SAMPLE_TYPES, mode: 'auto', largestBundle: 10 },
    missingPatient: 'require',
    allowed: { allowHttp: false, allowedHosts: [] },
    clock: systemClock,
  });
  return { server, target, probe: await target.probe(forever) };
}

describe('delivery into a server that keeps transactions', () => {
  it('waits for the patient, then delivers, in each mode, once for all', async () => {
    const byId = await targetOn({});
    expect(byId.probe).toEqual({ kind: 'usable', mode: 'client-id' });
    const deliver = () => byId.target.deliver(sampleBundle(), forever);
    expect(await deliver()).toMatchObject({ kind: 'waiting-patient' });

    await byId.server.post('/Patient', { resourceType: 'Patient', identifier });
    expect(await deliver()).toMatchObject({ kind: 'delivered', detail: '5 created, 0 updated' });
    expect(await deliver()).toMatchObject({ kind: 'delivered', detail: '0 created, 5 updated' });

    const conditional = await targetOn({ updateCreate: false });
    expect(conditional.probe).toEqual({ kind: 'usable', mode: 'conditional' });
    const again = await conditional.target.deliver(sampleBundle(), forever);
    expect(again).toMatchObject({ kind: 'delivered' });

    for (const [type, count] of [
      ['Procedure', 1],
      ['Condition', 1],
      ['Observation', 2],
    ] as const) {
      const found = await byId.server.get(`/${type}?_count=50`);
      expect([type, found.json.entry.length]).toEqual([type, count]);
    }
    const { json } = await byId.server.get('/Observation?_count=50');
    const { subject, partOf } = json.entry[0].resource;
    expect(subject).toMatchObject({ reference: expect.stringMatching(/^Patient\//), ...PATIENT });
    expect(partOf[0].reference).toMatch(/^Procedure\/[0-9a-f-]{36}$/);
  });

  it('refuses a server without transactions, or without a way to keep identity', async () => {
    const none = await targetOn({ transaction: false });
    expect(none.probe).toMatchObject({ kind: 'unusable', fault: 'no-transaction' });
    const neither = await targetOn({ updateCreate: false, conditionalUpdate: false });
    expect(neither.probe).toMatchObject({ kind: 'unusable', fault: 'no-identity-mode' });
  });
});
