import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CASE_TEXT, type RunningApp, runApp, stopApps } from './running-app.js';

let app: RunningApp;
beforeAll(async () => {
  app = await runApp();
});
afterAll(stopApps);

/** Found by a search for failures; the seed is kept so that every run tries the same. */
const RUNS = { seed: 20260301, numRuns: 60 };

/** A case of which one place, at any depth, holds something else. */
const damaged = fc
  .tuple(fc.array(fc.nat(30), { minLength: 1, maxLength: 4 }), fc.jsonValue({ maxDepth: 3 }))
  .map(([path, value]) => JSON.stringify(replaceAt(JSON.parse(CASE_TEXT), path, value)));

/** Replaces what is reached by taking, level for level, the n-th key, counted round. */
function replaceAt(
  node: unknown,
  [first = 0, ...rest]: readonly number[],
  value: unknown,
): unknown {
  if (node === null || typeof node !== 'object' || Array.isArray(node)) return value;
  const keys = Object.keys(node);
  const key = keys[first % Math.max(1, keys.length)];
  if (key === undefined) return value;
  const inside: unknown = Reflect.get(node, key);
  return { ...node, [key]: rest.length === 0 ? value : replaceAt(inside, rest, value) };
}

const EXPECTED = [200, 202, 400, 403, 409, 413, 415, 422];

describe('input alone', () => {
  it.each(['/cases', '/cases/check', '/cases/search'])(
    'never makes %s fail: a case with one damaged place',
    async (path) => {
      await fc.assert(
        fc.asyncProperty(damaged, async (body) => {
          const response = await app.post(path, body);
          expect(EXPECTED).toContain(response.status);
          await response.arrayBuffer();
        }),
        RUNS,
      );
    },
  );

  it('never makes /cases fail: any bytes, any media type', async () => {
    const types = [
      'application/json',
      'application/json;charset',
      'application/fhir+json;;',
      'a/b',
    ];
    await fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 300 }),
        fc.constantFrom(...types),
        async (body, type) => {
          const response = await app.post('/cases', body, { headers: { 'content-type': type } });
          expect(EXPECTED).toContain(response.status);
          await response.arrayBuffer();
        },
      ),
      RUNS,
    );
  });

  it('never makes a path fail', async () => {
    await fc.assert(
      fc.asyncProperty(fc.webPath(), async (path) => {
        const response = await app.get(`/cases/${path}`);
        expect([400, 404, 405]).toContain(response.status);
        await response.arrayBuffer();
      }),
      RUNS,
    );
  });

  it('would be seen to fail if it did', async () => {
    const failing = await runApp({ service: { receive: () => Promise.reject(new Error()) } });
    expect(EXPECTED).not.toContain((await failing.post('/cases', CASE_TEXT)).status);
  });
});
