import { afterEach, describe, expect, it } from 'vitest';
import { StoreUnavailable } from '../../src/kernel/index.js';
import { CASE_TEXT, jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';
import { CASE_ID, CAUTION } from './service-double.js';

let app: RunningApp;
afterEach(stopApps);

const inEncounter = (value: string): string =>
  JSON.stringify({ ...JSON.parse(CASE_TEXT), encounter: { system: 'urn:oid:2.999.1', value } });

// Statuses: RFC 9110 section 15; which one for what: project definition (table of accept semantics).
describe('a case message', () => {
  it('is accepted with 202, a Location, the receipt and the caution', async () => {
    app = await runApp();
    const response = await app.post('/cases', CASE_TEXT);
    expect(response.status).toBe(202);
    expect(response.headers.get('location')).toBe(`/cases/${CASE_ID}`);
    const body = await jsonOf(response);
    const { case: named, revision } = JSON.parse(CASE_TEXT);
    expect(body).toMatchObject({
      receipt: { caseId: CASE_ID, case: named, revision },
      caution: CAUTION,
    });
  });

  it('is answered with 200 and the same receipt when it comes again', async () => {
    app = await runApp();
    const first = await jsonOf(await app.post('/cases', CASE_TEXT));
    const again = await app.post('/cases', CASE_TEXT);
    expect(again.status).toBe(200);
    expect(again.headers.get('location')).toBe(`/cases/${CASE_ID}`);
    expect((await jsonOf(again))['receipt']).toEqual(first['receipt']);
  });

  it('is refused with 409 when its revision came with other content', async () => {
    app = await runApp();
    await app.post('/cases', inEncounter('E-1'));
    const other = await app.post('/cases', inEncounter('E-2'));
    expect(other.status).toBe(409);
    expect(await jsonOf(other)).toMatchObject({ errors: [{ rule: 'revision-used' }] });
  });

  it('is refused with 422 and every problem at once', async () => {
    app = await runApp();
    const { lesion: _lesion, ...rest } = JSON.parse(CASE_TEXT);
    const response = await app.post('/cases', JSON.stringify({ ...rest, revision: 0 }));
    expect(response.status).toBe(422);
    const { errors } = await jsonOf(response);
    expect(errors).toContainEqual(
      expect.objectContaining({ rule: 'out-of-range', pointer: '/revision' }),
    );
    expect(errors).toContainEqual(
      expect.objectContaining({ rule: 'missing-field', pointer: '/lesion' }),
    );
  });

  it('is refused with 400 when it is no JSON', async () => {
    app = await runApp();
    const response = await app.post('/cases', '{"schema": ');
    expect(response.status).toBe(400);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ rule: 'not-json' }] });
  });

  it('is refused with 403 when it names another source', async () => {
    app = await runApp();
    const response = await app.post('/cases', CASE_TEXT, { key: app.otherKey });
    expect(response.status).toBe(403);
    expect((await jsonOf(response))['type']).toMatch(/\/source-mismatch$/);
  });

  it('is answered with 503 and Retry-After while nothing can be stored', async () => {
    const receive = () => Promise.reject(new StoreUnavailable('The store is away.'));
    app = await runApp({ service: { receive } });
    const response = await app.post('/cases', CASE_TEXT);
    expect(response.status).toBe(503);
    // RFC 9110 section 10.2.3: a whole number of seconds.
    expect(response.headers.get('retry-after')).toMatch(/^[1-9]\d*$/);
  });

  it('reaches the service with the bytes exactly as they came', async () => {
    const sent = Buffer.from(` ${CASE_TEXT}\r\n`);
    const came: Uint8Array[] = [];
    app = await runApp({
      service: {
        receive: async (_kind, bytes) => {
          came.push(bytes);
          return { kind: 'unreadable', problems: [] };
        },
      },
    });
    await app.post('/cases', sent, { headers: { 'content-type': 'application/fhir+json' } });
    expect(came.map((bytes) => Buffer.from(bytes))).toEqual([sent]);
  });
});

describe('a dry run', () => {
  it('answers 200 to a valid message, with the Bundle', async () => {
    app = await runApp();
    const response = await app.post('/cases/check', CASE_TEXT);
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({
      valid: true,
      caution: CAUTION,
      bundle: { resourceType: 'Bundle' },
    });
  });

  it('answers 200 to an invalid message, with its problems', async () => {
    app = await runApp();
    const response = await app.post('/cases/check', '{}');
    expect(response.status).toBe(200);
    expect(await jsonOf(response)).toMatchObject({
      valid: false,
      errors: expect.arrayContaining([
        expect.objectContaining({ rule: 'missing-field', pointer: '/case' }),
        expect.objectContaining({ rule: 'missing-field', pointer: '/patient' }),
      ]),
    });
  });

  it('answers 400 to what it cannot read', async () => {
    app = await runApp();
    expect((await app.post('/cases/check', '[')).status).toBe(400);
  });
});

describe('the message of each kind', () => {
  it.each([
    ['case', '/cases'],
    ['pathology', '/pathology'],
    ['event', '/events'],
    ['examination', '/examinations'],
    ['withdrawal', '/withdrawals'],
  ])('%s has a way in at %s, and a dry run behind it', async (kind, path) => {
    const asked: string[] = [];
    const answer = (way: string) => async (of: string) => {
      asked.push(`${way} ${of}`);
      return { kind: 'invalid' as const, problems: [] };
    };
    app = await runApp({ service: { receive: answer('push'), check: answer('check') } });
    expect((await app.post(path, '{}')).status).toBe(422);
    expect((await app.post(`${path}/check`, '{}')).status).toBe(200);
    expect(asked).toEqual([`push ${kind}`, `check ${kind}`]);
  });

  it('is not that of the service itself: nobody tells us how late it is', async () => {
    app = await runApp();
    for (const path of ['/as-of', '/as-ofs', '/as-of/check']) {
      expect((await app.post(path, '{}')).status).toBe(404);
    }
  });

  it('that waits for its case is answered with 202, and says what it waits for', async () => {
    const receipt = {
      caseId: CASE_ID,
      case: { system: 'urn:oid:2.999.1.2', value: 'EX-1' },
      kind: 'pathology',
      ...{ revision: 1, sha256: '0'.repeat(64), receivedAt: '' },
    } as const;
    const view = { state: 1, waitingFor: 'case' } as const;
    const receive = async () => ({ kind: 'accepted' as const, receipt, view });
    app = await runApp({ service: { receive } });
    const response = await app.post('/pathology', '{}');
    expect([response.status, await response.json()]).toEqual([202, { receipt, ...view }]);
    expect(response.headers.get('location')).toBe(`/cases/${CASE_ID}`);
  });
});

describe('a stored case', () => {
  it('is shown with its timeline and the caution', async () => {
    app = await runApp();
    await app.post('/cases', CASE_TEXT);
    const response = await app.get(`/cases/${CASE_ID}`);
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({
      caseId: CASE_ID,
      caution: CAUTION,
      delivery: { name: 'queued' },
      timeline: [{ event: 'received' }],
    });
  });

  it('is shown to its own source, and does not exist for another', async () => {
    app = await runApp();
    await app.post('/cases', CASE_TEXT);
    expect((await app.get(`/cases/${CASE_ID}`, { role: 'note-system' })).status).toBe(200);
    const foreign = await app.get(`/cases/${CASE_ID}`, { key: app.otherKey });
    const absent = await app.get('/cases/0b54d9a2-6f0e-8c11-9b7d-000000000000');
    expect([foreign.status, absent.status]).toEqual([404, 404]);
    const [one, two] = [await jsonOf(foreign), await jsonOf(absent)];
    expect({ ...one, instance: '' }).toEqual({ ...two, instance: '' });
  });

  it('is not looked for under a name that no case can have', async () => {
    const readCase = () => Promise.reject(new Error('asked'));
    app = await runApp({ service: { readCase } });
    expect((await app.get('/cases/12345')).status).toBe(404);
  });

  it('gives its Bundle as FHIR JSON', async () => {
    app = await runApp();
    const response = await app.get(`/cases/${CASE_ID}/bundle`);
    expect(response.status).toBe(200);
    // FHIR R4 http, 3.1.0.1.10.
    expect(response.headers.get('content-type')).toBe('application/fhir+json');
    expect(await response.json()).toMatchObject({ resourceType: 'Bundle' });
  });
});

describe('a search', () => {
  it('hands criteria and caller to the service and says where the next page begins', async () => {
    const asked: unknown[] = [];
    app = await runApp({
      service: {
        searchCases: async (search, caller) => {
          asked.push([search, caller]);
          const hit = { caseId: CASE_ID, state: 1, delivery: 'queued', receivedAt: '' } as const;
          return [hit];
        },
      },
    });
    const patient = { system: 'urn:oid:2.999.1', value: 'EX-1' };
    const response = await app.post('/cases/search', JSON.stringify({ patient, limit: 1 }));
    expect(await response.json()).toMatchObject({ next: CASE_ID });
    expect(asked).toEqual([
      [
        { patient, limit: 1 },
        { role: 'note-system', source: 'example-notes' },
      ],
    ]);
  });

  it('asks for cases that wait for pathology, and shows for how long they have', async () => {
    const asked: unknown[] = [];
    const hit = { caseId: CASE_ID, state: 1, delivery: 'delivered', receivedAt: '' } as const;
    app = await runApp({
      service: {
        searchCases: async (search) => {
          asked.push(search);
          return [{ ...hit, awaitsPathologyDays: 17 }];
        },
      },
    });
    const response = await app.post('/cases/search', '{"awaiting":"pathology"}');
    expect(await jsonOf(response)).toEqual({ cases: [{ ...hit, awaitsPathologyDays: 17 }] });
    expect(asked).toEqual([{ awaiting: 'pathology', limit: 50 }]);
    const other = await app.post('/cases/search', '{"awaiting":"surgery"}');
    expect(other.status).toBe(422);
    expect(await jsonOf(other)).toMatchObject({
      errors: [{ rule: 'not-in-list', pointer: '/awaiting' }],
    });
  });

  it('has no next page when it found less than a page', async () => {
    app = await runApp();
    const response = await app.post('/cases/search', '{}', { role: 'records-team' });
    expect(Object.keys(await jsonOf(response))).toEqual(['cases']);
  });

  it('is refused with 422 for a criterion that does not exist, with 400 for no JSON', async () => {
    app = await runApp();
    const unknown = await app.post('/cases/search', '{"name":"x"}');
    expect(unknown.status).toBe(422);
    expect(await jsonOf(unknown)).toMatchObject({ errors: [{ rule: 'unknown-field' }] });
    expect((await app.post('/cases/search', 'x')).status).toBe(400);
  });
});

describe('health', () => {
  it('says that the process lives, without a key', async () => {
    app = await runApp();
    const response = await fetch(`${app.url}/livez`);
    expect([response.status, await response.json()]).toEqual([200, { alive: true }]);
  });

  it('is ready while the FHIR server is down, and says so', async () => {
    const fhirServer = () => ({ state: 'open', reason: 'The FHIR server refuses.' });
    app = await runApp({ health: { fhirServer } });
    const response = await app.get('/readyz', { role: 'operator' });
    expect(response.status).toBe(200);
    expect(await response.json()).toEqual({ ready: true, fhirServer: fhirServer() });
  });

  it('is not ready while the store is away', async () => {
    const ready = () => Promise.reject(new StoreUnavailable('away'));
    app = await runApp({ service: { ready } });
    expect((await app.get('/readyz', { role: 'operator' })).status).toBe(503);
  });

  it('is not ready once the service stops, and lets connections go', async () => {
    app = await runApp({ health: { accepting: () => false } });
    const response = await app.get('/readyz', { role: 'operator' });
    expect(response.status).toBe(503);
    expect(response.headers.get('connection')).toBe('close');
    expect((await jsonOf(response))['type']).toMatch(/\/not-ready$/);
  });
});
