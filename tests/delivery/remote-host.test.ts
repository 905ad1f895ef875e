import nock from 'nock';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { createFhirClient } from '../../src/delivery/fhir-client.js';

afterEach(() => nock.cleanAll());
afterAll(() => nock.restore());

describe('a server at another host', () => {
  const client = createFhirClient({ baseUrl: 'https://fhir.example/r4' });
  const json = { 'content-type': 'application/json' };

  it('is asked for its capabilities below the path of the base URL', async () => {
    nock('https://fhir.example').get('/r4/metadata').reply(200, { a: 1 }, json);
    const answer = await client.capabilities();
    expect(answer).toMatchObject({ status: 200, body: { resource: { a: 1 } } });
  });
});
