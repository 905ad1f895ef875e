import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { wipeSandbox } from '../../src/sandbox/index.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { type Answer, startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;
let nowMs = 0;

beforeAll(async () => {
  server = await startServer(postgres.db, { nowMs: () => nowMs });
});

beforeEach(async () => {
  await wipeSandbox(postgres.db);
  nowMs = Date.UTC(2026, 0, 5, 12, 30, 15, 250);
});

afterAll(async () => {
  await server.stop();
});

const SYSTEM = 'https://unit.example/patient';

const patient = (value: string, more: object = {}) => ({
  resourceType: 'Patient',
  identifier: [{ system: SYSTEM, value }],
  ...more,
});

const by = (value: string) => `identifier=${encodeURIComponent(`${SYSTEM}|${value}`)}`;

function expectRefusal(answer: Answer, status: number, code: string) {
  expect(answer.status).toBe(status);
  expect(answer.headers.get('content-type')).toContain('application/fhir+json');
  expect(answer.json).toMatchObject({
    resourceType: 'OperationOutcome',
    issue: [{ severity: 'error', code }],
  });
}

describe('create, against HL7 FHIR R4 RESTful API, "create"', () => {
  it('answers 201 with Location, ETag and Last-Modified, and sets id and meta', async () => {
    const answer = await server.post('/Patient', patient('1'));
    expect(answer.status).toBe(201);
    const { id } = answer.json;
    expect(id).toMatch(/^[A-Za-z0-9\-.]{1,64}$/);
    expect(answer.headers.get('location')).toBe(`${server.base}/Patient/${id}/_history/1`);
    expect(answer.headers.get('etag')).toBe('W/"1"');
    expect(answer.headers.get('last-modified')).toBe('Mon, 05 Jan 2026 12:30:15 GMT');
    expect(answer.json.meta).toEqual({
      versionId: '1',
      lastUpdated: '2026-01-05T12:30:15.250Z',
    });
    expect((await server.get(`/Patient/${id}`)).json).toEqual(answer.json);
  });

  it('does not keep the id of the body', async () => {
    const answer = await server.post('/Patient', patient('1', { id: 'mine' }));
    expect(answer.json.id).not.toBe('mine');
    expectRefusal(await server.get('/Patient/mine'), 404, 'not-found');
  });

  it('sends nothing back under Prefer: return=minimal', async () => {
    const answer = await server.post('/Patient', patient('1'), { prefer: 'return=minimal' });
    expect([answer.status, answer.text]).toEqual([201, '']);
  });

  it('keeps tags and profiles that the client gave', async () => {
    const tag = [{ system: 'urn:example', code: '3' }];
    const { json } = await server.post('/Patient', patient('1', { meta: { tag } }));
    expect(json.meta.tag).toEqual(tag);
  });
});

describe('conditional create, against HL7 FHIR R4 RESTful API, "Conditional create"', () => {
  it('creates without a match, and answers 200 with one match and ignores the body', async () => {
    const headers = { 'if-none-exist': by('1') };
    const first = await server.post('/Patient', patient('1'), headers);
    const again = await server.post('/Patient', patient('1', { gender: 'female' }), headers);
    expect([first.status, again.status]).toEqual([201, 200]);
    expect(again.headers.get('location')).toBe(first.headers.get('location'));
    expect((await server.get(`/Patient/${first.json.id}`)).json.gender).toBeUndefined();
  });

  it('answers 412 with several matches', async () => {
    await server.post('/Patient', patient('1'));
    await server.post('/Patient', patient('1'));
    const answer = await server.post('/Patient', patient('1'), { 'if-none-exist': by('1') });
    expectRefusal(answer, 412, 'multiple-matches');
  });

  it('never makes two when twenty ask at once', async () => {
    const headers = { 'if-none-exist': by('1') };
    const asked = Array.from({ length: 20 }, () => server.post('/Patient', patient('1'), headers));
    const statuses = (await Promise.all(asked)).map(({ status }) => status).sort();
    expect(statuses).toEqual([...Array(19).fill(200), 201]);
    expect((await server.get(`/Patient?${by('1')}`)).json.total).toBe(1);
  });

  it('refuses a criterion that it does not know, which would match everything', async () => {
    const answer = await server.post('/Patient', patient('1'), { 'if-none-exist': 'idntifier=1' });
    expectRefusal(answer, 400, 'not-supported');
  });
});

describe('update, against HL7 FHIR R4 RESTful API, "update" and "Resource Contention"', () => {
  const body = (gender: string) => patient('1', { id: 'p', gender });

  it('creates at the id of the client, then makes versions', async () => {
    const first = await server.put('/Patient/p', body('female'));
    const second = await server.put('/Patient/p', body('male'));
    expect([first.status, second.status]).toEqual([201, 200]);
    expect(second.headers.get('etag')).toBe('W/"2"');
    expect(second.json.meta.versionId).toBe('2');
  });

  it('makes no version when nothing changed, in whatever order the members stand', async () => {
    await server.put('/Patient/p', body('female'));
    nowMs += 60_000;
    const same = { gender: 'female', ...body('female') };
    const { status, headers, json } = await server.put('/Patient/p', same);
    expect([status, headers.get('etag')]).toEqual([200, 'W/"1"']);
    expect(json.meta.lastUpdated).toBe('2026-01-05T12:30:15.250Z');
  });

  it('takes If-Match with the newest version alone, else 412', async () => {
    await server.put('/Patient/p', body('female'));
    const good = await server.put('/Patient/p', body('male'), { 'if-match': 'W/"1"' });
    expect(good.status).toBe(200);
    const stale = await server.put('/Patient/p', body('other'), { 'if-match': 'W/"1"' });
    expectRefusal(stale, 412, 'conflict');
    expect((await server.get('/Patient/p')).json.gender).toBe('male');
  });

  it('answers 412 to If-Match where there is no resource yet', async () => {
    expectRefusal(
      await server.put('/Patient/p', body('x'), { 'if-match': 'W/"1"' }),
      412,
      'conflict',
    );
  });

  it('refuses a body with another id, or none, with 400', async () => {
    expectRefusal(await server.put('/Patient/q', body('female')), 400, 'invalid');
    expectRefusal(await server.put('/Patient/q', patient('1')), 400, 'invalid');
  });
});

describe('conditional update, against HL7 FHIR R4 RESTful API, "Conditional update"', () => {
  it('creates without a match, updates the one match, answers 412 to several', async () => {
    const created = await server.put(`/Patient?${by('1')}`, patient('1'));
    expect(created.status).toBe(201);
    const updated = await server.put(`/Patient?${by('1')}`, patient('1', { gender: 'female' }));
    expect([updated.status, updated.json.id]).toEqual([200, created.json.id]);
    await server.post('/Patient', patient('1'));
    const several = await server.put(`/Patient?${by('1')}`, patient('1'));
    expectRefusal(several, 412, 'multiple-matches');
  });

  it('takes the id of the body for a new resource', async () => {
    const created = await server.put(`/Patient?${by('1')}`, patient('1', { id: 'mine' }));
    expect([created.status, created.json.id]).toEqual([201, 'mine']);
  });

  it('answers 400 when the id of the body is not that of the match', async () => {
    await server.put('/Patient/p', patient('1', { id: 'p' }));
    const answer = await server.put(`/Patient?${by('1')}`, patient('1', { id: 'q' }));
    expectRefusal(answer, 400, 'invalid');
  });

  it('answers 412 without a criterion, and 400 to a name nobody knows', async () => {
    expectRefusal(await server.put('/Patient', patient('1')), 412, 'invalid');
    expectRefusal(await server.put('/Patient?nme=1', patient('1')), 400, 'not-supported');
  });
});

describe('read, vread and history, against HL7 FHIR R4 RESTful API', () => {
  it('gives every version, the newest first', async () => {
    await server.put('/Patient/p', patient('1', { id: 'p', gender: 'female' }));
    await server.put('/Patient/p', patient('1', { id: 'p', gender: 'male' }));
    const first = await server.get('/Patient/p/_history/1');
    expect([first.status, first.json.gender]).toEqual([200, 'female']);
    expect(first.headers.get('etag')).toBe('W/"1"');
    const { json } = await server.get('/Patient/p/_history');
    expect(json).toMatchObject({ resourceType: 'Bundle', type: 'history', total: 2 });
    expect(json.entry.map(({ response }: { response: object }) => response)).toEqual([
      expect.objectContaining({ status: '200 OK', etag: 'W/"2"' }),
      expect.objectContaining({ status: '201 Created', etag: 'W/"1"' }),
    ]);
    expect(json.entry[0].request).toEqual({ method: 'PUT', url: 'Patient/p' });
  });

  it.each([
    '/Patient/none',
    '/Patient/none/_history',
    '/Patient/p/_history/7',
    '/Patient/p/_history/x',
    '/Patient/p/a/b/c',
  ])('answers 404 at %s', async (path) => {
    await server.put('/Patient/p', patient('1', { id: 'p' }));
    expectRefusal(await server.get(path), 404, 'not-found');
  });

  it('answers 404 for a type that it does not keep', async () => {
    expectRefusal(await server.get('/Claim/1'), 404, 'not-supported');
    expectRefusal(await server.post('/Claim', { resourceType: 'Claim' }), 404, 'not-supported');
  });
});

describe('switched off, against what HL7 FHIR R4 RESTful API says of servers that lack it', () => {
  it('answers 405 to an id of the client, and still updates what is there', async () => {
    const { json } = await server.post('/Patient', patient('1'));
    const lacking = await startServer(postgres.db, { supports: { updateCreate: false } });
    expectRefusal(await lacking.put('/Patient/p', patient('2', { id: 'p' })), 405, 'not-supported');
    const changed = patient('1', { id: json.id, gender: 'male' });
    expect((await lacking.put(`/Patient/${json.id}`, changed)).status).toBe(200);
    await lacking.stop();
  });

  it('answers 400 to conditional update and conditional create', async () => {
    const supports = { conditionalUpdate: false, conditionalCreate: false };
    const lacking = await startServer(postgres.db, { supports });
    expectRefusal(await lacking.put(`/Patient?${by('1')}`, patient('1')), 400, 'not-supported');
    const headers = { 'if-none-exist': by('1') };
    expectRefusal(await lacking.post('/Patient', patient('1'), headers), 400, 'not-supported');
    await lacking.stop();
  });

  it('answers 405 to a transaction', async () => {
    const lacking = await startServer(postgres.db, { supports: { transaction: false } });
    const bundle = { resourceType: 'Bundle', type: 'transaction' };
    expectRefusal(await lacking.post('/', bundle), 405, 'not-supported');
    await lacking.stop();
  });
});
