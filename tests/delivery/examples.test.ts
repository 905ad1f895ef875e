import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CheckedBundle, checkBundle } from '../../src/conformance/index.js';
import { addressBundle } from '../../src/delivery/address.js';
import { createFhirClient, createTarget, systemClock } from '../../src/delivery/index.js';
import { patientIdentifierOf } from '../../src/delivery/patient.js';
import { prepareSandbox } from '../../src/sandbox/index.js';
import { bundleOf, EXAMPLES } from '../mapping/records.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { testDatabase } from '../support/database.js';

function checkedExample(text: string): CheckedBundle {
  const result = checkBundle(bundleOf(text));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const FORMS = [
  { mode: 'client-id', link: { kind: 'logical' } },
  { mode: 'client-id', link: { kind: 'literal', reference: 'Patient/p-1' } },
  { mode: 'conditional', link: { kind: 'logical' } },
  { mode: 'conditional', link: { kind: 'literal', reference: 'Patient/p-1' } },
] as const;

describe('the examples, addressed', () => {
  it.each(EXAMPLES)('$name passes every published rule in each mode', ({ text }) => {
    const bundle = checkedExample(text);
    for (const { mode, link } of FORMS) {
      expect(checkBundle(addressBundle(bundle, mode, link))).toMatchObject({ ok: true });
    }
  });

  it('would be caught if a reference were lost on the way', () => {
    const [first] = EXAMPLES;
    const addressed = addressBundle(checkedExample(first?.text ?? ''), 'client-id', FORMS[0].link);
    const broken = { ...addressed, entry: addressed.entry?.slice(1) };
    expect(checkBundle(broken)).toMatchObject({
      ok: false,
      problems: expect.arrayContaining([expect.objectContaining({ rule: 'dr-bdl-4' })]),
    });
  });
});

/** One in full, one in pieces, one without a resection. */
const THREE = ['complete.json', 'colon-piecemeal.json', 'colon-never-started.json'];

describe('examples at a server that finds resources by their identifier', async () => {
  const test = await testDatabase();
  let server: TestServer;
  beforeAll(async () => {
    const { db } = await test.open();
    await prepareSandbox(db);
    server = await startServer(db, { supports: { updateCreate: false } });
  });
  afterAll(() => server.stop());

  const some = EXAMPLES.filter(({ name }) => THREE.includes(name));
  it.each(some)('$name arrives, and once only when it is sent twice', async ({ text }) => {
    const bundle = checkedExample(text);
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
    expect(await target.probe(forever)).toEqual({ kind: 'usable', mode: 'conditional' });

    const identifier = [patientIdentifierOf(bundle)];
    const search = new URLSearchParams(`identifier=${identifier[0]?.value}`).toString();
    const known = await server.search('Patient', search);
    if (known.json.total === 0) {
      await server.post('/Patient', { resourceType: 'Patient', identifier });
    }
    expect(await target.deliver(bundle, forever)).toMatchObject({ kind: 'delivered' });
    const again = await target.deliver(bundle, forever);
    expect(again).toMatchObject({ detail: `0 created, ${types.length} updated` });
  });
});
