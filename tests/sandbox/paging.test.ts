import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wipeSandbox } from '../../src/sandbox/index.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;
let nowMs = Date.UTC(2026, 0, 5);

beforeAll(async () => {
  server = await startServer(postgres.db, { nowMs: () => nowMs });
  await wipeSandbox(postgres.db);
  await add(Array.from({ length: 7 }, (_, index) => `m${index}`));
});

afterAll(async () => {
  await server.stop();
});

async function add(ids: readonly string[]) {
  const entry = ids.map((id) => ({
    resource: { resourceType: 'Device', id, identifier: [{ system: 'urn:secret', value: 'x7' }] },
    request: { method: 'PUT', url: `Device/${id}` },
  }));
  await server.post('/', { resourceType: 'Bundle', type: 'transaction', entry });
}

interface Page {
  readonly total: number;
  readonly link: readonly { readonly relation: string; readonly url: string }[];
  readonly entry?: readonly { readonly resource: { readonly id: string } }[];
}

const idsOf = (page: Page) => (page.entry ?? []).map(({ resource }) => resource.id);

const nextOf = (page: Page) =>
  page.link.find(({ relation }) => relation === 'next')?.url.slice(server.base.length);

/** Follows the next links to the end, and does something after the first page. */
async function allPages(first: Page, between: () => Promise<void> = async () => {}) {
  const pages = [first];
  for (let next = nextOf(first); next !== undefined; ) {
    if (pages.length === 1) await between();
    const page: Page = (await server.get(next)).json;
    pages.push(page);
    next = nextOf(page);
  }
  return pages;
}

describe('paging, against HL7 FHIR R4 RESTful API, "Paging", and Search, "Page Count"', () => {
  it('gives no more than asked for on a page, all of them over the pages, each once', async () => {
    const first: Page = (await server.get('/Device?_count=3&_sort=_id')).json;
    const pages = await allPages(first);
    expect(pages.map(idsOf)).toEqual([['m0', 'm1', 'm2'], ['m3', 'm4', 'm5'], ['m6']]);
    expect(pages.map(({ total }) => total)).toEqual([7, 7, 7]);
  });

  it('gives no next link when everything fits', async () => {
    const page: Page = (await server.get('/Device?_count=7')).json;
    expect([idsOf(page).length, nextOf(page)]).toEqual([7, undefined]);
  });

  it('neither skips nor repeats when resources come in and change between the pages', async () => {
    const first: Page = (await server.get('/Device?_count=3&_sort=-_lastUpdated')).json;
    const pages = await allPages(first, async () => {
      nowMs += 1_000;
      await add(['a0', 'z9']);
      const changed = { resourceType: 'Device', id: 'm6', status: 'inactive' };
      await server.put('/Device/m6', changed);
    });
    const ids = pages.flatMap(idsOf);
    expect(ids.toSorted()).toEqual(['m0', 'm1', 'm2', 'm3', 'm4', 'm5', 'm6']);
  });

  it('keeps what was searched for out of the address of the next page', async () => {
    const { json } = await server.search('Device', 'identifier=urn:secret|x7&_count=2');
    expect(nextOf(json)).toMatch(/^\/Device\?_page=[0-9a-f-]{36}\.2$/);
    expect(idsOf((await server.get(nextOf(json) ?? '')).json)).toHaveLength(2);
  });

  it('answers 410 to a page that is no longer kept, or of another type', async () => {
    const next = nextOf((await server.get('/Device?_count=3')).json) ?? '';
    expect((await server.get(next)).status).toBe(200);
    expect((await server.get(next.replace('Device', 'Patient'))).status).toBe(410);
    expect((await server.get('/Device?_page=unknown')).status).toBe(410);
    nowMs += 3_600_001;
    const late = await server.get(next);
    expect([late.status, late.json.resourceType]).toEqual([410, 'OperationOutcome']);
  });

  it.each(['-1', 'x', '1.5', ''])('refuses _count=%s with 400', async (count) => {
    expect((await server.get(`/Device?_count=${count}`)).status).toBe(400);
  });
});
