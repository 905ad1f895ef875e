import { afterAll, beforeEach, expect } from 'vitest';
import { wipeSandbox } from '../../../src/sandbox/index.js';
import { sandboxDatabase } from './sandbox-database.js';
import { type Answer, startServer } from './server.js';

/** With one digit behind it a fullUrl. */
export const URN = 'urn:uuid:6b0c7f3e-0000-8000-8000-00000000000';

export const observation = (value: string, more: object = {}) => ({
  resourceType: 'Observation',
  identifier: [{ system: 'urn:obs', value }],
  status: 'final',
  code: { text: 'finding' },
  subject: { reference: 'Patient/p' },
  ...more,
});

export const entry = (resource: object, request: object, fullUrl?: string) => ({
  ...(fullUrl === undefined ? {} : { fullUrl }),
  resource,
  request,
});

export const postEntry = (
  resource: { readonly resourceType: string },
  fullUrl?: string,
  more: object = {},
) => entry(resource, { method: 'POST', url: resource.resourceType, ...more }, fullUrl);

export const putEntry = (resource: object, url: string, fullUrl?: string, more: object = {}) =>
  entry(resource, { method: 'PUT', url, ...more }, fullUrl);

export const statusesOf = ({ json }: Answer) =>
  json.entry.map(({ response }: { response: { status: string } }) => response.status.slice(0, 3));

/** A sandbox of this test file alone; before each test it holds Patient/p and nothing else. */
export async function transactionSandbox() {
  const { db } = await sandboxDatabase();
  const server = await startServer(db);
  beforeEach(async () => {
    await wipeSandbox(db);
    const p = { resourceType: 'Patient', id: 'p', identifier: [{ system: 'urn:mrn', value: '1' }] };
    await server.put('/Patient/p', p);
  });
  afterAll(() => server.stop());

  const count = async (type: string) => (await server.get(`/${type}?_summary=count`)).json.total;
  return {
    db,
    server,
    count,
    transact: (entries: readonly object[], headers = {}) =>
      server.post('/', { resourceType: 'Bundle', type: 'transaction', entry: entries }, headers),
    /** Refused as a whole: one OperationOutcome, and nothing that was not there before. */
    expectNothing: async (answer: Answer, status: number, code: string, expression?: string) => {
      expect(answer.status).toBe(status);
      expect(answer.json).toMatchObject({ resourceType: 'OperationOutcome', issue: [{ code }] });
      expect(answer.json.issue).toHaveLength(1);
      if (expression !== undefined) expect(answer.json.issue[0].expression).toEqual([expression]);
      expect([await count('Observation'), await count('Procedure')]).toEqual([0, 0]);
    },
  };
}
