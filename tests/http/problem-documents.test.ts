import { afterEach, describe, expect, it } from 'vitest';
import { PROBLEM_BASE, PROBLEM_TYPES } from '../../src/http/index.js';
import { problemDocument } from '../../src/http/problem-document.js';
import { CASE_TEXT, jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';

let app: RunningApp;
afterEach(stopApps);

const UUID_URN = /^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/** What RFC 9457 section 3.1 demands of the members, and ours of errors. */
async function expectProblem(response: Response, name: string): Promise<void> {
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  const { type, title, status, detail, instance, errors, ...rest } = await jsonOf(response);
  expect(type).toBe(`${PROBLEM_BASE}${name}`);
  expect(status).toBe(response.status);
  expect(typeof title).toBe('string');
  expect(typeof detail).toBe('string');
  expect(instance).toMatch(UUID_URN);
  expect(instance).toBe(`urn:uuid:${response.headers.get('correlation-id')}`);
  expect(rest).toEqual({});
  for (const error of Array.isArray(errors) ? errors : []) {
    expect(Object.keys(error).sort()).toEqual(['expected', 'message', 'pointer', 'rule']);
  }
}

const json = { 'content-type': 'application/json' };
const REFUSALS = [
  { what: 'no JSON', path: '/cases', body: '{', status: 400, name: 'unreadable-body' },
  { what: 'bad URL', path: '/cases/%E0%A4%A', status: 400, name: 'bad-request' },
  {
    what: 'no key',
    path: '/cases',
    body: '{}',
    headers: { authorization: '' },
    status: 401,
    name: 'not-authenticated',
  },
  {
    what: 'wrong role',
    path: '/cases/check',
    role: 'scheduler',
    body: '{}',
    status: 403,
    name: 'not-permitted',
  },
  { what: 'no such route', path: '/nothing', status: 404, name: 'not-found' },
  { what: 'no such route below one', path: '/cases/x/y/z', status: 404, name: 'not-found' },
  { what: 'another case of letters', path: '/Livez', status: 404, name: 'not-found' },
  {
    what: 'wrong method',
    path: '/cases',
    method: 'DELETE',
    status: 405,
    name: 'method-not-allowed',
  },
  {
    what: 'too large',
    path: '/cases',
    body: ' '.repeat(2_001),
    status: 413,
    name: 'body-too-large',
  },
  {
    what: 'no media type',
    path: '/cases',
    body: '{}',
    headers: { 'content-type': '' },
    status: 415,
    name: 'unsupported-media-type',
  },
  {
    what: 'a form',
    path: '/cases',
    body: 'a=b',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    status: 415,
    name: 'unsupported-media-type',
  },
  {
    what: 'latin-1',
    path: '/cases',
    body: '{}',
    headers: { 'content-type': 'application/json; charset=iso-8859-1' },
    status: 415,
    name: 'unsupported-media-type',
  },
  {
    what: 'gzip',
    path: '/cases',
    body: '{}',
    headers: { ...json, 'content-encoding': 'gzip' },
    status: 415,
    name: 'unsupported-media-type',
  },
  { what: 'broken rules', path: '/cases', body: '{}', status: 422, name: 'invalid-message' },
] as const;

describe('a problem document, against RFC 9457', () => {
  it.each(REFUSALS)('$what: $status $name', async (refusal) => {
    app = await runApp({ bodyBytes: 2_000 });
    const { path, status, name } = refusal;
    const more = {
      ...('headers' in refusal ? { headers: refusal.headers } : {}),
      ...('role' in refusal ? { role: refusal.role } : {}),
    };
    const response =
      'method' in refusal
        ? await app.get(path, { ...more, method: refusal.method })
        : 'body' in refusal
          ? await app.post(path, refusal.body, more)
          : await app.get(path, more);
    expect(response.status).toBe(status);
    await expectProblem(response, name);
  });

  it('would be caught if it had a member with a hyphen', async () => {
    const document = {
      ...problemDocument({ problem: 'conflict', detail: '' }, 'x'),
      'trace-id': 1,
    };
    await expect(expectProblem(Response.json(document), 'conflict')).rejects.toThrow();
  });

  it.each(Object.entries(PROBLEM_TYPES))(
    '%s has a status of RFC 9110 or RFC 6585',
    (_name, { status }) => {
      // RFC 9110 sections 15.5 and 15.6; RFC 6585 section 5.
      expect([400, 401, 403, 404, 405, 408, 409, 410, 413, 415, 422, 431, 500, 503]).toContain(
        status,
      );
    },
  );

  it('tells of a failure nothing but the id to ask for', async () => {
    app = await runApp({
      service: { receive: () => Promise.reject(new Error('EX-P-0001 in /src/x.ts')) },
    });
    const response = await app.post('/cases', CASE_TEXT);
    expect(response.status).toBe(500);
    const text = await response.clone().text();
    expect(text).not.toMatch(/EX-P|\.ts|Error|express|node/);
    await expectProblem(response, 'internal-error');
  });
});

describe('the header of a refusal', () => {
  it.each([
    ['/cases', 'POST'],
    ['/cases/check', 'POST'],
    ['/cases/search', 'POST'],
    ['/livez', 'GET, HEAD'],
    ['/readyz', 'GET, HEAD'],
  ])('names for %s what is allowed: %s (RFC 9110 section 15.5.6)', async (path, allow) => {
    app = await runApp();
    for (const method of ['PUT', 'PATCH', 'DELETE', 'OPTIONS', allow === 'POST' ? 'GET' : 'POST']) {
      const response = await app.get(path, { method });
      expect([response.status, response.headers.get('allow')]).toEqual([405, allow]);
    }
  });

  it('names the media types that are read (RFC 9110 section 15.5.16)', async () => {
    app = await runApp();
    const form = await app.post('/cases', 'x', { headers: { 'content-type': 'text/plain' } });
    expect(form.headers.get('accept')).toBe('application/json, application/fhir+json');
    const zipped = await app.post('/cases', 'x', { headers: { 'content-encoding': 'br' } });
    expect(zipped.headers.get('accept-encoding')).toBe('identity');
  });
});

describe('every answer', () => {
  it.each(['/livez', '/nothing', '/cases'])(
    '%s is kept by nobody and tells nobody',
    async (path) => {
      app = await runApp();
      const { headers } = await app.get(path);
      expect(headers.get('cache-control')).toBe('no-store');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('x-powered-by')).toBeNull();
      expect(headers.get('etag')).toBeNull();
      expect(headers.get('access-control-allow-origin')).toBeNull();
    },
  );

  it('to HEAD is as to GET, without the body (RFC 9110 section 9.3.2)', async () => {
    app = await runApp();
    const head = await app.get('/livez', { method: 'HEAD' });
    const get = await app.get('/livez');
    expect(head.status).toBe(200);
    expect(head.headers.get('content-length')).toBe(get.headers.get('content-length'));
    expect(await head.text()).toBe('');
  });
});
