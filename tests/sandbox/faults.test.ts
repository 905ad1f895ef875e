import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { createFaults, wipeSandbox } from '../../src/sandbox/index.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { startServer, type TestServer } from './support/server.js';

const faults = createFaults();
const postgres = await sandboxDatabase();
let server: TestServer;

beforeAll(async () => {
  server = await startServer(postgres.db, { faults });
});

beforeEach(async () => {
  await wipeSandbox(postgres.db);
});

afterEach(() => {
  faults.clear();
});

afterAll(async () => {
  await server.stop();
});

const BUNDLE = {
  resourceType: 'Bundle',
  type: 'transaction',
  entry: ['a', 'b'].map((id) => ({
    resource: { resourceType: 'Device', id },
    request: { method: 'PUT', url: `Device/${id}` },
  })),
};

const push = () => server.post('/', BUNDLE);

const kept = async () => (await server.get('/Device?_summary=count')).json.total;

const isPush = ({ method, path }: { method: string; path: string }) =>
  method === 'POST' && path === '/';

/** The bare answer to the transaction, its body not yet read. */
const pushRaw = () =>
  fetch(`${server.base}/`, {
    method: 'POST',
    headers: { 'content-type': 'application/fhir+json' },
    body: JSON.stringify(BUNDLE),
    redirect: 'manual',
  });

/** Counts the bytes of a body until there are enough, or it breaks off. */
async function read(response: Response, enough: number) {
  let bytes = 0;
  try {
    for await (const chunk of response.body ?? []) {
      bytes += chunk.length;
      if (bytes >= enough) return { bytes, end: 'enough' };
    }
    return { bytes, end: 'complete' };
  } catch {
    return { bytes, end: 'broken' };
  }
}

const length = (response: Response) => Number(response.headers.get('content-length'));

describe('faults that come before anything is done', () => {
  it.each([
    ['a busy server', 429, { 'retry-after': '7' }, '{"resourceType":"OperationOutcome"}'],
    ['a gateway', 502, { 'content-type': 'text/html' }, '<html>Bad Gateway</html>'],
    ['another address', 307, { location: 'https://other.example/fhir' }, ''],
    ['no JSON', 200, {}, '{"resourceType":"Bun'],
  ])('answer as %s', async (_what, status, headers, body) => {
    faults.next({ kind: 'answer', status, headers, body });
    const response = await pushRaw();
    expect([response.status, await response.text()]).toEqual([status, body]);
    for (const [name, value] of Object.entries(headers)) {
      expect(response.headers.get(name)).toBe(value);
    }
    expect(await kept()).toBe(0);
  });

  it('cut the connection', async () => {
    faults.next({ kind: 'cut', committed: false });
    await expect(push()).rejects.toThrow();
    expect(await kept()).toBe(0);
  });

  it('hang without a byte until they are cleared', async () => {
    faults.next({ kind: 'hang', committed: false }, { matching: isPush });
    const hanging = expect(pushRaw()).rejects.toThrow();
    await until(async () => faults.pending() === 0);
    expect(await kept()).toBe(0);
    faults.clear();
    await hanging;
    expect(await kept()).toBe(0);
  });
});

describe('faults that come after the commit', () => {
  it('cut the connection', async () => {
    faults.next({ kind: 'cut', committed: true });
    await expect(push()).rejects.toThrow();
    expect(await kept()).toBe(2);
  });

  it('hang without a byte until they are cleared', async () => {
    faults.next({ kind: 'hang', committed: true }, { matching: isPush });
    const hanging = expect(pushRaw()).rejects.toThrow();
    await until(async () => (await kept()) === 2);
    faults.clear();
    await hanging;
  });

  it('cut the answer in the middle', async () => {
    faults.next({ kind: 'truncate' });
    const response = await pushRaw();
    const { bytes, end } = await read(response, Number.POSITIVE_INFINITY);
    expect([bytes > 0, bytes < length(response), end]).toEqual([true, true, 'broken']);
    expect(await kept()).toBe(2);
  });

  it('drip the answer: some bytes come long before the last', async () => {
    faults.next({ kind: 'drip', everyMs: 5 });
    const response = await pushRaw();
    const { bytes, end } = await read(response, 3);
    expect([bytes < length(response) / 2, end]).toEqual([true, 'enough']);
    faults.next({ kind: 'drip', everyMs: 0 });
    expect((await server.get('/Device/a')).json.id).toBe('a');
  });

  it.each([
    ['batch-response', { type: 'batch-response' }],
    ['entry-missing', { entry: [location('a')] }],
    ['entry-extra', { entry: [location('a'), location('b'), location('b')] }],
    ['entries-reordered', { entry: [location('b'), location('a')] }],
    [
      'entry-refused',
      { entry: [location('a'), { response: { status: '422 Unprocessable Entity' } }] },
    ],
  ] as const)('answer with a Bundle that is no transaction response: %s', async (how, expected) => {
    faults.next({ kind: 'alter', how });
    const { status, json } = await push();
    expect(status).toBe(200);
    expect(json).toMatchObject(expected);
    expect(await kept()).toBe(2);
  });

  it('leave out location and version', async () => {
    faults.next({ kind: 'alter', how: 'without-location' });
    const { json } = await push();
    for (const { response } of json.entry) {
      expect(Object.keys(response).toSorted()).toEqual(['lastModified', 'status']);
    }
  });
});

describe('the script of faults', () => {
  it('meets so many requests as were told, in the order told, and then none', async () => {
    faults.next({ kind: 'answer', status: 503 }, { times: 2 });
    faults.next({ kind: 'answer', status: 500 });
    expect(faults.pending()).toBe(3);
    const statuses = [];
    for (let i = 0; i < 4; i += 1) statuses.push((await push()).status);
    expect(statuses).toEqual([503, 503, 500, 200]);
    expect(faults.pending()).toBe(0);
  });

  it('leaves requests alone that do not match', async () => {
    faults.next({ kind: 'answer', status: 503 }, { matching: isPush });
    expect((await server.get('/metadata')).status).toBe(200);
    expect((await push()).status).toBe(503);
  });

  it('forgets what is cleared', async () => {
    faults.next({ kind: 'answer', status: 503 }, { times: 9 });
    faults.clear();
    expect([faults.pending(), (await push()).status]).toEqual([0, 200]);
  });
});

function location(id: string) {
  return { response: { location: `Device/${id}/_history/1` } };
}

async function until(holds: () => Promise<boolean>) {
  while (!(await holds())) await new Promise((resolve) => setTimeout(resolve, 5));
}
