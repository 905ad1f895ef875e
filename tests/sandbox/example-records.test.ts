import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wipeSandbox } from '../../src/sandbox/index.js';
import { bundleOf, EXAMPLES } from '../mapping/records.js';
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

const responsesOf = (entries: readonly { response: { status: string; location: string } }[]) =>
  entries.map(({ response }) => ({ ...response, status: response.status.slice(0, 3) }));

describe('the records of the examples, against HL7 FHIR R4 RESTful API, "transaction"', () => {
  it.each(EXAMPLES)('$name is written once, however often it comes', async ({ text }) => {
    await wipeSandbox(postgres.db);
    const bundle = bundleOf(text);
    const first = await server.post('/', bundle);
    expect(first.json).toMatchObject({ type: 'transaction-response' });
    const written = responsesOf(first.json.entry);
    expect(written).toHaveLength(bundle.entry?.length ?? 0);
    expect(new Set(written.map(({ status }) => status))).toEqual(new Set(['201']));

    const again = responsesOf((await server.post('/', bundle)).json.entry);
    expect(again.map(({ location }) => location)).toEqual(written.map(({ location }) => location));
    expect(new Set(again.map(({ status }) => status))).toEqual(new Set(['200']));
  });

  it('leaves no urn in what is kept: every link between entries is literal', async () => {
    const { rows } = await postgres.pool.query(
      `select count(*) filter (where target like 'urn:uuid:%')::int as open,
              count(*) filter (where target_id is not null)::int as literal
       from sandbox.search_value`,
    );
    expect(rows[0]).toMatchObject({ open: 0 });
    expect(rows[0].literal).toBeGreaterThan(0);
  });
});
