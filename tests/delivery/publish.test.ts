import type { Measure, MeasureReport } from 'fhir/r4.js';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import type { CheckedBundle } from '../../src/conformance/index.js';
import { createFhirClient, type IdentityMode, publish } from '../../src/delivery/index.js';
import type { KeptMode, TargetConfig } from '../../src/delivery/target.js';
import { keyedUuid } from '../../src/kernel/index.js';
import type { Published } from '../../src/pipeline/index.js';
import { createFaults, type SandboxOptions, wipeSandbox } from '../../src/sandbox/index.js';
import { sandboxDatabase } from '../sandbox/support/sandbox-database.js';
import { startServer, type TestServer } from '../sandbox/support/server.js';
import { manualClock } from './support/manual-clock.js';
import { checked, SID } from './support/sample-bundle.js';
import { reply, startStub } from './support/stub-server.js';

/*
 * Outcomes put on a server that really keeps transactions, by HTTP.
 * Sources: FHIR R4 (4.0.1), http: transaction, update, conditional update; RFC 9110, 15, for
 * statuses; project definition for what is refused and what can be repeated.
 */
const { db } = await sandboxDatabase();
const faults = createFaults();
const servers: TestServer[] = [];
afterAll(() => Promise.all(servers.map((server) => server.stop())));
beforeEach(async () => {
  faults.clear();
  await wipeSandbox(db);
});

const forever = new AbortController().signal;

async function server(supports: NonNullable<SandboxOptions['supports']> = {}) {
  const started = await startServer(db, { supports, faults });
  servers.push(started);
  return started;
}
const byId = await server();
const bySearch = await server({ updateCreate: false });

const config = (baseUrl: string, more: Partial<TargetConfig> = {}): TargetConfig => ({
  client: createFhirClient({ baseUrl, deadlineMs: 5_000 }),
  baseUrl,
  needs: { types: ['Measure', 'MeasureReport'], mode: 'auto', largestBundle: 2 },
  missingPatient: 'require',
  allowed: { allowHttp: false, allowedHosts: [] },
  clock: manualClock(),
  ...more,
});

const MEASURE: Omit<Measure, 'id'> = {
  resourceType: 'Measure',
  url: 'https://unit.example/Measure/rates',
  version: '1',
  identifier: [{ system: `${SID}/measure`, value: 'rates/1' }],
  status: 'active',
};

/** A report of an invented unit: so many of 40. */
function outcomes(count: number, year = '2025', date = '2026-01-05T10:00:00Z'): CheckedBundle {
  const value = `rates/${year}`;
  const report: MeasureReport = {
    resourceType: 'MeasureReport',
    identifier: [{ system: `${SID}/measurereport`, value }],
    status: 'complete',
    type: 'summary',
    measure: `${MEASURE.url}|1`,
    date,
    period: { start: `${year}-01-01`, end: `${year}-12-31` },
    group: [{ population: [{ count }], measureScore: { value: count / 40 } }],
  };
  const entry = [MEASURE, report].map((resource) => {
    const { system = '', value: key = '' } = resource.identifier?.[0] ?? {};
    return {
      fullUrl: `urn:uuid:${keyedUuid('an invented secret of thirty-two', system, key)}`,
      resource,
      request: {
        method: 'PUT' as const,
        url: `${resource.resourceType}?identifier=${encodeURIComponent(`${system}|${key}`)}`,
      },
    };
  });
  return checked(entry);
}

const put = (bundle: CheckedBundle, to: TestServer, more: Partial<TargetConfig> = {}) =>
  publish(bundle, config(to.base, more), forever);

/** Version and count of each report that the server holds, by period. */
async function reportsOn(at: TestServer) {
  const { json } = await at.get('/MeasureReport?_sort=period');
  return (json.entry ?? []).map(({ resource }: { resource: MeasureReport }) => [
    resource.period.start,
    resource.meta?.versionId,
    resource.group?.[0]?.population?.[0]?.count,
  ]);
}

const measuresOn = async (at: TestServer) => (await at.get('/Measure?_summary=count')).json.total;

describe.each([
  ['ids of ours', byId],
  ['conditional updates', bySearch],
] as const)('outcomes on a server with %s', (_mode, at) => {
  it('come in one transaction, Measure and report', async () => {
    const written = await put(outcomes(20), at);
    expect(written).toMatchObject({ kind: 'written', detail: '2 created, 0 updated' });
    expect(await reportsOn(at)).toEqual([['2025-01-01', '1', 20]]);
    expect(await measuresOn(at)).toBe(1);
  });

  it('are left as they are when the numbers are the same, whenever they were counted', async () => {
    await put(outcomes(20), at);
    const again = await put(outcomes(20, '2025', '2026-06-06T06:00:00Z'), at);
    expect(again).toMatchObject({
      kind: 'unchanged',
      locations: [expect.stringMatching(/^Measure\//), expect.stringMatching(/^MeasureReport\//)],
    });
    expect(await reportsOn(at)).toEqual([['2025-01-01', '1', 20]]);
  });

  it('are replaced by other numbers, and never doubled', async () => {
    await put(outcomes(20), at);
    const again = await put(outcomes(21), at);
    expect(again).toMatchObject({ kind: 'written', detail: '0 created, 1 updated' });
    expect(await reportsOn(at)).toEqual([['2025-01-01', '2', 21]]);
    expect(await measuresOn(at)).toBe(1);
  });

  it('stand beside those of another period', async () => {
    await put(outcomes(20), at);
    await put(outcomes(30, '2026'), at);
    expect(await reportsOn(at)).toEqual([
      ['2025-01-01', '1', 20],
      ['2026-01-01', '1', 30],
    ]);
  });

  it('can be sent again after a server that was not available', async () => {
    const isTransaction = ({ method, path }: { method: string; path: string }) =>
      method === 'POST' && path === '/';
    const headers = { 'Retry-After': '7' };
    faults.next({ kind: 'answer', status: 503, headers }, { matching: isTransaction });
    const away = await put(outcomes(20), at);
    expect(away).toMatchObject({ fault: 'status-503', passing: true, waitMs: 7_000 });
    expect(await reportsOn(at)).toEqual([]);
    expect(await put(outcomes(20), at)).toMatchObject({ kind: 'written' });
    expect(await reportsOn(at)).toEqual([['2025-01-01', '1', 20]]);
  });

  it('are there once after an answer that got lost', async () => {
    faults.next(
      { kind: 'cut', committed: true },
      { matching: ({ method, path }) => method === 'POST' && path === '/' },
    );
    expect(await put(outcomes(20), at)).toMatchObject({ fault: 'cut', passing: true });
    expect(await put(outcomes(20), at)).toMatchObject({ kind: 'unchanged' });
    expect(await reportsOn(at)).toEqual([['2025-01-01', '1', 20]]);
  });
});

describe('a server that cannot take outcomes', () => {
  it('is not used where it lacks the identity mode in use', async () => {
    const needs = {
      types: ['Measure', 'MeasureReport'],
      mode: 'client-id',
      largestBundle: 2,
    } as const;
    const refused = await put(outcomes(20), bySearch, { needs });
    expect(refused).toMatchObject({ fault: 'no-identity-mode', passing: false });
    expect(await reportsOn(byId)).toEqual([]);
  });

  it('keeps the mode in which cases go there', async () => {
    const kept: KeptMode = {
      read: () => Promise.resolve<IdentityMode>('conditional'),
      keep: () => Promise.reject(new Error('nothing to keep')),
    };
    await put(outcomes(20), byId, { kept });
    const { json } = await byId.get('/MeasureReport');
    expect(json.entry[0].resource.id).not.toBe(outcomes(20).entry?.[1]?.fullUrl?.slice(9));
  });

  it('is not given the same under another id', async () => {
    await put(outcomes(20), bySearch);
    const twice = await put(outcomes(21), byId);
    expect(twice).toMatchObject({ fault: 'other-id', passing: false });
    expect(await reportsOn(byId)).toEqual([['2025-01-01', '1', 20]]);
  });

  it('is told of when it holds several of one identifier: a person must choose', async () => {
    const report = outcomes(20).entry?.[1]?.resource;
    for (const _ of [1, 2]) await byId.post('/MeasureReport', report);
    const refused = await put(outcomes(21), bySearch);
    expect(refused).toMatchObject({ fault: 'several-matches', passing: false });
  });

  it('is not asked at an address that is not allowed', async () => {
    const baseUrl = 'https://fhir.unit.example/r4';
    const resolve = () => Promise.resolve(['169.254.169.254']);
    const refused = await publish(outcomes(20), config(baseUrl, { resolve }), forever);
    expect(refused).toMatchObject({ fault: 'address-refused', passing: false });
  });

  it('that is not there can be asked again', async () => {
    const gone = await startServer(db);
    await gone.stop();
    expect(await put(outcomes(20), gone)).toMatchObject({ fault: 'refused', passing: true });
  });
});

describe('a server that refuses', () => {
  const NONE = { resourceType: 'Bundle', type: 'searchset', total: 0 };
  const issue = (more: object) => ({ severity: 'error', code: 'invalid', ...more });

  async function refusedWith(status: number, body: unknown, search = NONE): Promise<Published> {
    const stub = await startStub();
    const { json: capabilities } = await byId.get('/metadata');
    stub.script = ({ url }, response) => {
      if (url === '/fhir/metadata') return reply(response, 200, capabilities);
      if (url !== '/fhir') return reply(response, 200, search);
      reply(response, status, body);
    };
    return publish(outcomes(20), config(stub.baseUrl), forever);
  }

  it('is quoted with its OperationOutcome, and is not asked again', async () => {
    const refused = await refusedWith(422, {
      resourceType: 'OperationOutcome',
      issue: [
        issue({ details: { text: 'no group here' }, expression: ['MeasureReport.group[0]'] }),
        issue({ code: 'business-rule', diagnostics: 'line\none\u001b[31m' }),
      ],
    });
    expect(refused).toMatchObject({
      fault: 'status-422',
      passing: false,
      issues: [
        'error invalid at MeasureReport.group[0]: no group here',
        'error business-rule: line one [31m',
      ],
    });
  });

  it.each([
    [401, false],
    [403, false],
    [409, true],
    [429, true],
    [500, true],
  ])('with %i can be repeated: %s', async (status, passing) => {
    expect(await refusedWith(status, undefined)).toMatchObject({ passing });
  });

  it('in one entry alone has not kept a transaction', async () => {
    const response = {
      status: '422 Unprocessable',
      outcome: { resourceType: 'OperationOutcome', issue: [issue({ diagnostics: 'why' })] },
    };
    const refused = await refusedWith(200, {
      resourceType: 'Bundle',
      type: 'batch-response',
      entry: [{ response: { status: '200' } }, { response }],
    });
    expect(refused).toMatchObject({ fault: 'entry-422', issues: ['error invalid: why'] });
  });

  it('may not ask for a patient', async () => {
    const diagnostics = 'Patient/7 not found';
    const body = { resourceType: 'OperationOutcome', issue: [issue({ diagnostics })] };
    expect(await refusedWith(422, body)).toMatchObject({ fault: 'patient', passing: false });
  });
});

describe('a server that cannot be searched', () => {
  it.each([404, 405, 500, 501])('gets what is to be put there all the same: %i', async (status) => {
    const isSearch = ({ path }: { readonly path: string }) => path.endsWith('/_search');
    faults.next({ kind: 'answer', status }, { times: 2, matching: isSearch });
    expect(await put(outcomes(20), byId)).toMatchObject({ kind: 'written' });
    expect(faults.pending()).toBe(0);
  });
});

describe('a server that answers a search with what was not asked', () => {
  it('is not believed to hold the same', async () => {
    const stub = await startStub();
    const { json: capabilities } = await byId.get('/metadata');
    const [, sent] = outcomes(20).entry ?? [];
    const other = {
      ...sent?.resource,
      id: 'x',
      identifier: [{ system: `${SID}/measurereport`, value: 'rates/2020' }],
    };
    stub.script = ({ url, body }, response) => {
      if (url === '/fhir/metadata') return reply(response, 200, capabilities);
      if (url !== '/fhir') {
        return reply(response, 200, {
          resourceType: 'Bundle',
          type: 'searchset',
          entry: [{ resource: other }],
        });
      }
      const { entry } = JSON.parse(body);
      reply(response, 200, {
        resourceType: 'Bundle',
        type: 'transaction-response',
        entry: entry.map(() => ({ response: { status: '200' } })),
      });
    };
    const written = await publish(outcomes(20), config(stub.baseUrl), forever);
    expect(written).toMatchObject({ kind: 'written', detail: '0 created, 2 updated' });
  });
});
