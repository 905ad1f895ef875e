import fc from 'fast-check';
import { z } from 'zod';
import { caseSchema } from '../../src/contract/index.js';
import { consistentCase } from './consistent-case.js';
import { fromJsonSchema, type SchemaNode } from './from-json-schema.js';

/** Samples of a test are the same in every run. */
export const SEED = 20_260_329;

const OFFSETS_MIN = [0, 60, 120, 345, -180, 840];
const MINUTE_MS = 60_000;

/**
 * Valid case messages, made from the structure of the published schema: each optional field is
 * there half of the time, and no field contradicts another.
 */
export function caseMessages(): fc.Arbitrary<object> {
  const schema: SchemaNode = JSON.parse(
    JSON.stringify(z.toJSONSchema(caseSchema, { io: 'input' })),
  );
  const course = fc.record({
    scopeInMs: fc
      .integer({
        min: Date.UTC(1990, 0, 2) / MINUTE_MS,
        max: Date.UTC(2090, 0, 1) / MINUTE_MS,
      })
      .map((minute) => minute * MINUTE_MS),
    gaps: fc.array(fc.integer({ min: 1, max: 240 }), { minLength: 4, maxLength: 4 }),
    offsetMin: fc.constantFrom(...OFFSETS_MIN),
  });
  return fc
    .tuple(fromJsonSchema(schema), course)
    .map(([draft, path]) => consistentCase(draft, path));
}

/** The same messages in every run, for tests that count. */
export const sampleCases = (howMany: number): object[] =>
  fc.sample(caseMessages(), { seed: SEED, numRuns: howMany });
