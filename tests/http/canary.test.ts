import { afterEach, describe, expect, it } from 'vitest';
import { createLog } from '../../src/http/index.js';
import { InvariantError, StoreUnavailable } from '../../src/kernel/index.js';
import { head, rawRequest } from './raw-request.js';
import { CASE_TEXT, type RunningApp, runApp, stopApps } from './running-app.js';
import { CASE_ID } from './service-double.js';

let app: RunningApp;
afterEach(stopApps);

/** Strings that stand for a patient; none of them may come out anywhere. */
const CANARY = 'CANARYPATIENT4711';
const CARRIED = { system: `urn:x:${CANARY}`, value: CANARY };

const withCanary = (more: object = {}): string =>
  JSON.stringify({
    ...JSON.parse(CASE_TEXT),
    patient: CARRIED,
    session: CARRIED,
    ...more,
  });

const throwing = (error: Error) => ({ receive: () => Promise.reject(error) });
const fault = (name: string): Error => Object.assign(new Error(CANARY), { name, code: CANARY });

const PUSHES = [
  { what: 'accepted', body: withCanary(), status: 202 },
  { what: 'bad JSON', body: `{"patient": "${CANARY}"`, status: 400 },
  { what: 'a key of that name', body: `{"x": 1, "x": "${CANARY}"}`, status: 422 },
  { what: 'invalid', body: withCanary({ revision: CANARY, sentAt: CANARY }), status: 422 },
  { what: 'too large', body: withCanary().padEnd(30_000), status: 413 },
  {
    what: 'another form',
    body: withCanary(),
    headers: { 'content-type': `text/${CANARY}` },
    status: 415,
  },
  {
    what: 'another charset',
    body: withCanary(),
    headers: { 'content-type': `application/json; charset=${CANARY}` },
    status: 415,
  },
  { what: 'compressed', body: withCanary(), headers: { 'content-encoding': CANARY }, status: 415 },
  {
    what: 'wrong key',
    body: withCanary(),
    headers: { authorization: `Bearer ${CANARY}` },
    status: 401,
  },
  { what: 'failing', body: withCanary(), service: throwing(fault('TypeError')), status: 500 },
  {
    what: 'failing, oddly named',
    body: withCanary(),
    service: throwing(fault(`${CANARY} 1`)),
    status: 500,
  },
  {
    what: 'our own bug',
    body: withCanary(),
    service: throwing(new InvariantError(CANARY)),
    status: 500,
  },
  {
    what: 'no store',
    body: withCanary(),
    service: throwing(new StoreUnavailable(CANARY)),
    status: 503,
  },
] as const;

function expectNoCanary(texts: readonly string[]): void {
  expect(texts.join('\n')).not.toContain(CANARY);
}

describe('a patient who is pushed', () => {
  it.each(PUSHES)('appears in no log line, header or answer: $what', async (push) => {
    app = await runApp({
      bodyBytes: 20_000,
      ...('service' in push ? { service: push.service } : {}),
    });
    const traced = { baggage: `patient=${CANARY}`, tracestate: `a=${CANARY}`, traceparent: CANARY };
    const given = 'headers' in push ? push.headers : {};
    const response = await app.post('/cases', push.body, { headers: { ...traced, ...given } });
    expect(response.status).toBe(push.status);
    await expect.poll(() => app.logLines().length).toBeGreaterThan(0);
    expectNoCanary([await response.text(), JSON.stringify([...response.headers])]);
    expectNoCanary(app.logLines());
  });

  it('appears nowhere when named in an address, a method or a header', async () => {
    app = await runApp();
    for (const path of [
      `/cases/${CANARY}`,
      `/${CANARY}`,
      `/cases?patient=${CANARY}`,
      `/cases/%ZZ${CANARY}`,
    ]) {
      const response = await app.get(path);
      expect(response.status).toBeGreaterThanOrEqual(400);
      expectNoCanary([await response.text(), JSON.stringify([...response.headers])]);
    }
    const raw = await rawRequest(app.port, (socket) => {
      socket.write(head(`${CANARY} /cases`, { 'X-Patient': CANARY }));
    });
    expectNoCanary([raw.text]);
    await expect.poll(() => app.logLines().length).toBeGreaterThanOrEqual(4);
    expectNoCanary(app.logLines());
  });

  it('appears nowhere when the search, a dry run or the reading fails', async () => {
    const fail = () => Promise.reject(fault('Error'));
    app = await runApp({ service: { searchCases: fail, readCase: fail, readBundle: fail } });
    const answers = [
      await app.post('/cases/search', JSON.stringify({ patient: CARRIED })),
      await app.post('/cases/search', JSON.stringify({ [CANARY]: CANARY, after: CANARY })),
      await app.post('/cases/check', withCanary({ revision: CANARY })),
      await app.get(`/cases/${CASE_ID}`),
      await app.get(`/cases/${CASE_ID}/bundle`),
    ];
    expect(answers.map(({ status }) => status)).toEqual([500, 422, 200, 500, 500]);
    await expect.poll(() => app.logLines().length).toBeGreaterThanOrEqual(8);
    expectNoCanary(app.logLines());
  });
});

describe('the log', () => {
  const written = (say: (log: ReturnType<typeof createLog>) => void): string => {
    const lines: string[] = [];
    say(createLog('debug', { write: (line) => lines.push(line) }));
    return lines.join('');
  };

  it('says of a request what is needed to find it again', async () => {
    app = await runApp();
    const traceparent = '00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01';
    const response = await app.post('/cases', CASE_TEXT, { headers: { traceparent } });
    await expect.poll(() => app.logLines().length).toBe(1);
    expect(JSON.parse(app.logLines()[0] ?? '')).toEqual({
      level: 'info',
      time: expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/),
      event: 'request',
      method: 'POST',
      route: '/cases',
      status: 202,
      durationMs: expect.any(Number),
      correlationId: response.headers.get('correlation-id'),
      traceId: '4bf92f3577b34da6a3ce929d0e0e4736',
      caseId: CASE_ID,
      state: 1,
      class: 'accepted',
      role: 'note-system',
      keyId: expect.stringMatching(/^[0-9a-f]{8}$/),
    });
  });

  it('lets a sentence, an unknown field and an odd value through nowhere', () => {
    const text = written((log) => {
      log.info({ event: 'kept', patient: CANARY, body: { a: CANARY }, msg: CANARY }, CANARY);
      log.warn(`${CANARY} %s`, CANARY);
      log.error(new Error(CANARY));
      log.error({ event: CANARY, route: `/cases/${CANARY}`, method: CANARY.toLowerCase() });
      log.error({ event: 'failed', err: Object.assign(new Error(CANARY), { detail: CANARY }) });
      log.error({ event: 'failed', err: { message: CANARY } });
    });
    expect(text).not.toContain(CANARY);
    expect(text.split('\n').filter((line) => line !== '')).toHaveLength(6);
    expect(text).toContain('"event":"kept"');
  });

  it('names an error by name, code and place, also when its message imitates a place', () => {
    const error = Object.assign(new RangeError(`x\n    at f (/src/${CANARY}.ts:1:1)`), {
      code: 'ERR_X',
    });
    const line = JSON.parse(written((log) => log.error({ event: 'failed', err: error })));
    expect(line.err).toMatchObject({ name: 'RangeError', code: 'ERR_X' });
    expect(JSON.stringify(line)).not.toContain(CANARY);
  });
});
