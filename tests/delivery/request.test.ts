import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { createServer, type Server } from 'node:net';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/delivery/answer.js';
import { faultOf } from '../../src/delivery/fault.table.js';
import { bearerToken, createFhirClient } from '../../src/delivery/fhir-client.js';
import { RECORD_NUMBER } from './support/sample-bundle.js';
import { reply, startStub } from './support/stub-server.js';

const stub = await startStub();
const MEGABYTE = 1024 * 1024;

const clientFor = (baseUrl: string, more: object = {}) =>
  createFhirClient({ baseUrl, deadlineMs: 5_000, maxAnswerBytes: MEGABYTE, ...more });
const client = clientFor(stub.baseUrl);
const quick = clientFor(stub.baseUrl, { deadlineMs: 300 });
const post = (): Promise<Answer> => client.transaction('{}');

/** A server below HTTP. */
async function withTcp<T>(server: Server, work: (port: number) => Promise<T>): Promise<T> {
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  try {
    const { port } = server.address() as AddressInfo;
    return await work(port);
  } finally {
    server.close();
  }
}

describe('a request that never left', () => {
  it('was refused', async () => {
    const port = await withTcp(createServer(), (open) => Promise.resolve(open));
    const answer = await clientFor(`http://127.0.0.1:${port}`).transaction('{}');
    expect(answer).toEqual({ kind: 'not-sent', fault: 'refused' });
  });

  it('had no secure connection: the peer does not speak TLS', async () => {
    const peer = createServer((socket) => {
      socket.on('error', () => undefined);
      socket.once('data', () => socket.end('HTTP/1.1 400 Bad Request\r\n\r\n'));
    });
    await withTcp(peer, async (port) => {
      const answer = await clientFor(`https://127.0.0.1:${port}`).transaction('{}');
      expect(answer).toEqual({ kind: 'not-sent', fault: 'tls' });
    });
  });

  it('had no secure connection: the peer hangs up in the handshake', async () => {
    const peer = createServer((socket) => {
      socket.on('error', () => undefined);
      socket.once('data', () => socket.destroy());
    });
    await withTcp(peer, async (port) => {
      const answer = await clientFor(`https://127.0.0.1:${port}`).transaction('{}');
      expect(answer).toEqual({ kind: 'not-sent', fault: 'tls' });
    });
  });

  it('had no credentials', async () => {
    const authorize = () => Promise.reject(new Error('no'));
    const seen = stub.seen.length;
    const answer = await clientFor(stub.baseUrl, { authorize }).transaction('{}');
    expect(answer).toEqual({ kind: 'not-sent', fault: 'no-authorization' });
    expect(stub.seen).toHaveLength(seen);
  });

  /** Codes by the Node.js documentation (errors, tls, dns). */
  it.each([
    ['ENOTFOUND', 'dns'],
    ['EAI_AGAIN', 'dns'],
    ['CERT_HAS_EXPIRED', 'tls'],
    ['ERR_TLS_CERT_ALTNAME_INVALID', 'tls'],
    ['UND_ERR_CONNECT_TIMEOUT', 'connect-timeout'],
    ['EHOSTUNREACH', 'unreachable'],
  ])('%s: %s', (code, fault) => {
    const error = new TypeError('fetch failed', { cause: Object.assign(new Error(), { code }) });
    expect(faultOf(error)).toEqual({ kind: 'not-sent', fault });
    expect(faultOf(error, 200)).toEqual({ kind: 'lost', fault: 'cut', status: 200 });
  });

  it.each(['ECONNRESET', 'EPIPE', 'UND_ERR_SOCKET', 'UND_ERR_BODY_TIMEOUT', 'E_NEW'])(
    'is not assumed for %s',
    (code) => {
      const error = new TypeError('fetch failed', { cause: { code } });
      expect(faultOf(error)).toEqual({ kind: 'lost', fault: 'cut' });
    },
  );
});

describe('a request without a trustworthy answer', () => {
  it('the server hangs', async () => {
    stub.script = () => undefined;
    expect(await quick.transaction('{}')).toEqual({ kind: 'lost', fault: 'timeout' });
  });

  it('the server drips: the deadline is total', async () => {
    stub.script = (_request, response) => {
      response.writeHead(200, { 'content-type': 'application/fhir+json' });
      const drip = setInterval(() => response.write(' '), 10);
      response.on('close', () => clearInterval(drip));
    };
    expect(await quick.transaction('{}')).toEqual({ kind: 'lost', fault: 'timeout', status: 200 });
  });

  it('the connection is cut before the answer', async () => {
    stub.script = (_request, response) => response.destroy();
    expect(await post()).toEqual({ kind: 'lost', fault: 'cut' });
  });

  it('the connection is cut within the answer', async () => {
    stub.script = (_request, response) => {
      response.writeHead(200, { 'content-type': 'application/fhir+json', 'content-length': 500 });
      response.write('{"resourceType"', () => response.destroy());
    };
    expect(await post()).toEqual({ kind: 'lost', fault: 'cut', status: 200 });
  });

  it('the JSON ends too early', async () => {
    stub.script = (_request, response) => {
      response.writeHead(200, { 'content-type': 'application/fhir+json' });
      response.end('{"resourceType":"Bundle","entry":[');
    };
    expect(await post()).toEqual({ kind: 'lost', fault: 'unreadable', status: 200 });
  });

  it('the answer is endless: no more than the limit is read', async () => {
    let written = 0;
    let closed: () => void = () => undefined;
    const end = new Promise<void>((resolve) => {
      closed = resolve;
    });
    stub.script = (_request, response) => {
      response.writeHead(200, { 'content-type': 'application/fhir+json' });
      const chunk = Buffer.alloc(64 * 1024, ' ');
      const pump = () => {
        while (!response.destroyed && written < 1024 * MEGABYTE) {
          written += chunk.length;
          if (!response.write(chunk)) return;
        }
      };
      response.on('drain', pump);
      response.on('close', closed);
      pump();
    };
    expect(await post()).toEqual({ kind: 'lost', fault: 'oversized', status: 200 });
    await end;
    expect(written).toBeLessThan(64 * MEGABYTE);
  });

  it('it is broken off from our side', async () => {
    const breakOff = new AbortController();
    stub.script = () => breakOff.abort();
    const answer = await client.transaction('{}', breakOff.signal);
    expect(answer).toEqual({ kind: 'lost', fault: 'stopped' });
    expect(await client.transaction('{}', breakOff.signal)).toEqual(answer);
  });
});

describe('a request that was answered', () => {
  it('carries status, body and Retry-After', async () => {
    stub.script = (_request, response) => {
      reply(response, 503, { resourceType: 'OperationOutcome' }, { 'retry-after': '9' });
    };
    expect(await post()).toEqual({
      kind: 'answered',
      status: 503,
      body: { kind: 'json', resource: { resourceType: 'OperationOutcome' } },
      retryAfter: '9',
    });
  });

  it.each([
    ['text/html', '<html>', { kind: 'other' }],
    ['application/fhir+xml', '<Bundle/>', { kind: 'other' }],
    ['application/json; charset=utf-8', '{}', { kind: 'json', resource: {} }],
    ['application/jsonp', '{}', { kind: 'other' }],
    ['application/fhir+json', '', { kind: 'empty' }],
  ])('200 with %s %j', async (type, text, body) => {
    stub.script = (_request, response) => {
      response.writeHead(200, { 'content-type': type });
      response.end(text);
    };
    expect(await post()).toEqual({ kind: 'answered', status: 200, body });
  });

  it('keeps the status of a refusal whose JSON is broken', async () => {
    stub.script = (_request, response) => {
      response.writeHead(503, { 'content-type': 'application/fhir+json' });
      response.end('{');
    };
    expect(await post()).toEqual({ kind: 'answered', status: 503, body: { kind: 'other' } });
  });

  it.each([301, 302, 303, 307, 308])(
    'does not follow a %i, and keeps its token',
    async (status) => {
      const other = await startStub((_request, response) => reply(response, 200, {}));
      stub.script = (_request, response) => {
        response.writeHead(status, { location: other.baseUrl });
        response.end();
      };
      const answer = await clientFor(stub.baseUrl, { authorize: bearerToken('t') }).transaction(
        '{}',
      );
      expect(answer).toMatchObject({ kind: 'answered', status });
      expect(other.seen).toEqual([]);
    },
  );
});

describe('what is sent', () => {
  it('is a transaction to the base, with type, token and trace', async () => {
    stub.script = (_request, response) => reply(response, 200, {});
    const traceparent = '00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01';
    const config = { authorize: bearerToken('word'), traceparent: () => traceparent };
    await clientFor(stub.baseUrl, config).transaction('{"resourceType":"Bundle"}');
    expect(stub.seen.at(-1)).toMatchObject({
      method: 'POST',
      url: '/fhir',
      body: '{"resourceType":"Bundle"}',
      headers: {
        accept: 'application/fhir+json',
        'content-type': 'application/fhir+json',
        prefer: 'return=minimal',
        authorization: 'Bearer word',
        traceparent,
      },
    });
  });

  /** FHIR R4 search: POST [type]/_search, escaping of `|` and `,` in values. */
  it('is a search by POST, with the record number in the body alone', async () => {
    stub.script = (_request, response) => reply(response, 200, {});
    const patient = { system: 'https://unit.example/id', value: `${RECORD_NUMBER},|x` };
    await client.searchPatient(patient);
    const seen = stub.seen.at(-1);
    expect(seen).toMatchObject({ method: 'POST', url: '/fhir/Patient/_search' });
    const form = new URLSearchParams(seen?.body);
    expect(form.get('identifier')).toBe(`https://unit.example/id|${RECORD_NUMBER}\\,\\|x`);
    expect(form.get('_count')).toBe('2');
    expect(JSON.stringify({ ...seen, body: '' })).not.toContain(RECORD_NUMBER);
  });
});
