import { setTimeout as delay } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { afterEach, describe, expect, it } from 'vitest';
import { head, rawRequest } from './raw-request.js';
import { CASE_TEXT, jsonOf, type RunningApp, runApp, stopApps } from './running-app.js';

let app: RunningApp;
afterEach(stopApps);

const CHUNK = `${(65_536).toString(16)}\r\n${'x'.repeat(65_536)}\r\n`;

const chunked = (path: string, key: string): string =>
  head(`POST ${path}`, {
    Authorization: `Bearer ${key}`,
    'Content-Type': 'application/json',
    'Transfer-Encoding': 'chunked',
  });

describe('a body of 10 MB', () => {
  it('is refused with 413 before it is read, and the connection is closed', async () => {
    app = await runApp();
    const answer = await rawRequest(app.port, (socket) => {
      const key = app.keys['note-system'];
      const headers = { Authorization: `Bearer ${key}`, 'Content-Type': 'application/json' };
      socket.write(head('POST /cases', { ...headers, 'Content-Length': '10000000' }));
    });
    expect(answer.status).toBe(413);
    expect(answer.text).toMatch(/^connection: close\r$/im);
    expect(answer.elapsedMs).toBeLessThan(2_000);
  });

  it('is refused so that an ordinary client reads the answer', async () => {
    app = await runApp();
    const response = await app.post('/cases', Buffer.alloc(10_000_000, ' '));
    expect(response.status).toBe(413);
    expect(await jsonOf(response)).toMatchObject({ status: 413 });
  });
});

describe('a body at the limit', () => {
  it('is read; one byte more is refused', async () => {
    const padded = CASE_TEXT.padEnd(CASE_TEXT.length + 100, ' ');
    app = await runApp({ bodyBytes: Buffer.byteLength(padded) });
    expect((await app.post('/cases', padded)).status).toBe(202);
    expect((await app.post('/cases', `${padded} `)).status).toBe(413);
  });
});

describe('a stream without end', () => {
  it.each(['/cases', '/nothing'])('to %s is answered once and then cut', async (path) => {
    app = await runApp({ bodyBytes: 200_000 });
    let sent = 0;
    const answer = await rawRequest(app.port, (socket) => {
      socket.write(chunked(path, app.keys['note-system']));
      const pump = (): void => {
        if (socket.destroyed) return;
        sent += 1;
        if (socket.write(CHUNK)) setImmediate(pump);
        else socket.once('drain', pump);
      };
      pump();
    });
    expect(answer.status).toBe(path === '/cases' ? 413 : 404);
    expect(answer.text.match(/HTTP\/1\.1/g)).toHaveLength(1);
    expect(answer.elapsedMs).toBeLessThan(5_000);
    expect(sent).toBeGreaterThan(1);
  });
});

describe('a sender that is too slow', () => {
  it('with its body is cut with 408 (RFC 9110 section 15.5.9)', async () => {
    app = await runApp({ server: { headersMs: 200, requestMs: 400 } });
    const answer = await rawRequest(app.port, async (socket) => {
      socket.write(chunked('/cases', app.keys['note-system']));
      while (!socket.destroyed && socket.writable) {
        socket.write('1\r\nx\r\n');
        await delay(50);
      }
    });
    expect(answer.status).toBe(408);
    expect(answer.text).toContain('application/problem+json');
    expect(answer.text).toContain('/problems/request-timeout');
    expect(answer.elapsedMs).toBeLessThan(3_000);
  });

  it('with its header is cut with 408', async () => {
    app = await runApp({ server: { headersMs: 200, requestMs: 400 } });
    const answer = await rawRequest(app.port, async (socket) => {
      socket.write('POST /cases HTTP/1.1\r\nHost: x\r\nX-Slow: ');
      while (!socket.destroyed && socket.writable) {
        socket.write('x');
        await delay(50);
      }
    });
    expect(answer.status).toBe(408);
    expect(answer.elapsedMs).toBeLessThan(3_000);
  });

  it('does not keep others waiting', async () => {
    app = await runApp({ server: { headersMs: 200, requestMs: 400 } });
    const slow = rawRequest(app.port, (socket) => {
      socket.write(chunked('/cases', app.keys['note-system']));
    });
    expect((await app.post('/cases', CASE_TEXT)).status).toBe(202);
    expect((await slow).status).toBe(408);
  });
});

describe('what is no HTTP', () => {
  it('is refused with 400 as a problem document', async () => {
    app = await runApp();
    const answer = await rawRequest(app.port, (socket) => socket.write('PATIENT EX-1\r\n\r\n'));
    expect(answer.status).toBe(400);
    expect(answer.text).toContain('/problems/bad-request');
    expect(answer.text).not.toContain('EX-1');
  });

  it('is refused with 431 for a header without measure (RFC 6585 section 5)', async () => {
    app = await runApp();
    const answer = await rawRequest(app.port, (socket) =>
      socket.write(head('GET /livez', { 'X-Long': 'x'.repeat(40_000) })),
    );
    expect(answer.status).toBe(431);
  });
});

describe('a body made to harm', () => {
  it('that is a gzip bomb is not unpacked', async () => {
    app = await runApp();
    const bomb = gzipSync(Buffer.alloc(50_000_000, ' '));
    expect(bomb.length).toBeLessThan(1_000_000);
    const response = await app.post('/cases', bomb, { headers: { 'content-encoding': 'gzip' } });
    expect(response.status).toBe(415);
  });

  it.each([
    ['200,000 lists', '['.repeat(200_000) + ']'.repeat(200_000)],
    ['200,000 objects', '{"a":'.repeat(150_000)],
  ])('that nests %s is refused with 400', async (_what, body) => {
    app = await runApp();
    const response = await app.post('/cases', body);
    expect(response.status).toBe(400);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ rule: 'too-deep' }] });
  });

  it.each(['__proto__', 'constructor', 'prototype'])('that names %s is refused', async (key) => {
    app = await runApp();
    const response = await app.post('/cases', `{"${key}":{"source":"x"},${CASE_TEXT.slice(1)}`);
    expect(response.status).toBe(422);
    const { errors } = await jsonOf(response);
    expect(errors).toMatchObject([{ rule: 'unknown-field', pointer: `/${key}` }]);
    expect(Reflect.get({}, 'source')).toBeUndefined();
  });

  it('that is not UTF-8 is refused with 400', async () => {
    app = await runApp();
    const bytes = Buffer.concat([Buffer.from('{"schema":"'), Buffer.from([0xc3, 0x28])]);
    const response = await app.post('/cases', bytes);
    expect(response.status).toBe(400);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ rule: 'not-utf-8' }] });
  });
});

describe('stopping', () => {
  it('answers what is in flight, then takes nothing more', async () => {
    let go: () => void = () => undefined;
    const gate = new Promise<void>((open) => {
      go = open;
    });
    app = await runApp({ service: { ready: () => gate } });
    const inFlight = app.get('/readyz', { role: 'operator' });
    await delay(50);
    const stopped = app.stop(2_000);
    go();
    expect((await inFlight).status).toBe(200);
    expect(await stopped).toBe(true);
    await expect(app.get('/livez')).rejects.toThrow();
  });

  it('cuts what does not end within its grace', async () => {
    app = await runApp({ service: { ready: () => new Promise(() => undefined) } });
    const inFlight = app.get('/readyz', { role: 'operator' }).catch(() => 'cut');
    await delay(50);
    expect(await app.stop(100)).toBe(false);
    expect(await inFlight).toBe('cut');
  });
});
