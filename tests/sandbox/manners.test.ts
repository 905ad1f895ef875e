import { gzipSync } from 'node:zlib';
import express from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  createSandbox,
  prepareSandbox,
  SandboxRefused,
  wipeSandbox,
} from '../../src/sandbox/index.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { type Answer, startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;

beforeAll(async () => {
  server = await startServer(postgres.db, { bodyLimit: 100_000 });
});

afterAll(async () => {
  await server.stop();
});

const FHIR = { 'content-type': 'application/fhir+json' };

function expectOutcome(answer: Answer, status: number) {
  expect(answer.status).toBe(status);
  expect(answer.headers.get('content-type')).toBe('application/fhir+json; charset=utf-8');
  expect(answer.json.resourceType).toBe('OperationOutcome');
}

describe('the sandbox is for demonstrations', () => {
  it('does not run in production', () => {
    const start = () => createSandbox(postgres.db, { production: true });
    expect(start).toThrow(SandboxRefused);
  });

  it('says so on every answer, and not on what it runs', async () => {
    for (const path of ['/metadata', '/Patient', '/nowhere/a/b/c/d']) {
      const { headers } = await server.get(path);
      expect(headers.get('demonstration')).toBe('not for use with real patients');
      expect(headers.get('x-powered-by')).toBeNull();
      expect(headers.get('server')).toBeNull();
    }
  });

  it('keeps to its own schema of the database, and can be prepared again at any time', async () => {
    await Promise.all([prepareSandbox(postgres.db), prepareSandbox(postgres.db)]);
    const { rows } = await postgres.pool.query(
      `select table_schema, count(*)::int as tables from information_schema.tables
       where table_schema not in ('pg_catalog', 'information_schema') group by 1 order by 1`,
    );
    expect(rows).toEqual([{ table_schema: 'sandbox', tables: 4 }]);
  });

  it('forgets everything when it is wiped', async () => {
    await server.post('/Patient', { resourceType: 'Patient' });
    await wipeSandbox(postgres.db);
    expect((await server.get('/Patient?_summary=count')).json.total).toBe(0);
  });

  it('can be mounted below a path, and gives addresses below it', async () => {
    const outer = express();
    outer.use('/demo/fhir', createSandbox(postgres.db, { production: false }));
    const mounted = await startServer(postgres.db, {}, outer);
    const created = await mounted.post('/demo/fhir/Patient', { resourceType: 'Patient' });
    const location = created.headers.get('location') ?? '';
    expect(location.startsWith(`${mounted.base}/demo/fhir/Patient/`)).toBe(true);
    expect((await fetch(location)).status).toBe(200);
    const found = (await mounted.get('/demo/fhir/Patient')).json;
    expect(found.entry[0].fullUrl).toBe(`${mounted.base}/demo/fhir/Patient/${created.json.id}`);
    await mounted.stop();
  });
});

describe('bodies, against HL7 FHIR R4 RESTful API and JSON', () => {
  it('refuses a body larger than allowed with 413, also when it was compressed', async () => {
    const large = JSON.stringify({ resourceType: 'Patient', language: 'x'.repeat(100_001) });
    expectOutcome(await server.post('/Patient', large), 413);
    const body = gzipSync(large);
    expect(body.length).toBeLessThan(1_000);
    const init = { method: 'POST', headers: { ...FHIR, 'content-encoding': 'gzip' }, body };
    expect((await fetch(`${server.base}/Patient`, init)).status).toBe(413);
  });

  it.each([
    ['no JSON', '{"resourceType":"Patient"'],
    ['a list', '[]'],
    ['nothing', ''],
    ['too many levels', `${'['.repeat(200_000)}${']'.repeat(200_000)}`.slice(0, 99_000)],
    ['another type', '{"resourceType":"Device"}'],
    ['an id that is none', '{"resourceType":"Patient","id":"a b"}'],
    ['an empty object', '{"resourceType":"Patient","meta":{}}'],
    ['half a character', '{"resourceType":"Patient","language":"\\ud800"}'],
  ])('refuses %s with 400', async (_what, body) => {
    expectOutcome(await server.post('/Patient', body), 400);
  });

  it('counts levels outside of texts alone', async () => {
    const language = `${'['.repeat(200)}"{`;
    expect((await server.post('/Patient', { resourceType: 'Patient', language })).status).toBe(201);
  });

  it('refuses bytes that are no UTF-8 with 400', async () => {
    const body = Buffer.from('{"resourceType":"Patient","language":"\xff"}', 'latin1');
    const init = { method: 'POST', headers: FHIR, body };
    expect((await fetch(`${server.base}/Patient`, init)).status).toBe(400);
  });

  it('gives every character back as it came', async () => {
    const name = [{ family: 'Ö\u0308🙂\u200f"\\', text: '\u2028' }];
    const { json } = await server.post('/Patient', { resourceType: 'Patient', name });
    expect((await server.get(`/Patient/${json.id}`)).json.name).toEqual(name);
  });

  it('keeps a member named __proto__ a member', async () => {
    const body = '{"resourceType":"Patient","__proto__":{"id":"x"},"active":true}';
    const { status, json } = await server.post('/Patient', body);
    expect([status, json.id === 'x']).toEqual([201, false]);
  });
});

describe('content types, against HL7 FHIR R4 RESTful API, "Content Types and encodings"', () => {
  it.each(['text/plain', 'application/xml', 'application/fhir+xml'])('415 to %s', async (type) => {
    const answer = await server.post('/Patient', '{"resourceType":"Patient"}', {
      'content-type': type,
    });
    expectOutcome(answer, 415);
  });

  it.each(['application/json', 'application/fhir+json; fhirVersion=4.0', 'text/json'])(
    'takes %s',
    async (type) => {
      const headers = { 'content-type': type };
      const answer = await server.post('/Patient', { resourceType: 'Patient' }, headers);
      expect(answer.status).toBe(201);
    },
  );

  it('406 to a client that takes no JSON, and _format goes before the header', async () => {
    expectOutcome(await server.get('/metadata', { accept: 'application/fhir+xml' }), 406);
    expectOutcome(await server.get('/metadata?_format=xml'), 406);
    const both = await server.get('/metadata?_format=json', { accept: 'application/fhir+xml' });
    expect(both.status).toBe(200);
    const plus = await server.get('/metadata?_format=application/fhir+json');
    expect(plus.status).toBe(200);
  });

  it('415 to a search that is no form', async () => {
    expectOutcome(await server.post('/Patient/_search', {}), 415);
  });
});

describe('methods and addresses that there are not', () => {
  it.each(['DELETE', 'PATCH'])('405 to %s, with the methods that there are', async (method) => {
    const response = await fetch(`${server.base}/Patient/p`, { method });
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'GET, POST, PUT']);
    expect(await response.json()).toMatchObject({ resourceType: 'OperationOutcome' });
  });

  it('404 to addresses of no interaction', async () => {
    expectOutcome(await server.get('/'), 404);
    expectOutcome(await server.get('/Patient/a_b'), 404);
    expectOutcome(await server.post('/Patient/p/_validate', {}), 404);
  });

  it('400 to an address that cannot be read', async () => {
    expectOutcome(await server.get('/Patient/%E0%A4%A'), 400);
  });
});

describe('faults of its own', () => {
  it('500 without a word of what was sent or of the database; its owner is told', async () => {
    const told: unknown[] = [];
    const broken = await startServer(postgres.db, { onError: (error) => told.push(error) });
    await postgres.pool.query('alter table sandbox.search_value rename to elsewhere');
    const answer = await broken.search('Patient', 'name=canary');
    await postgres.pool.query('alter table sandbox.elsewhere rename to search_value');
    expectOutcome(answer, 500);
    expect(answer.text).not.toMatch(/canary|search_value|sandbox\./);
    expect(told).toHaveLength(1);
    await broken.stop();
  });
});
