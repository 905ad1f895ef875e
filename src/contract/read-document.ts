import type { z } from 'zod';
import { type Checked, failed, passed } from '../kernel/index.js';
import { readJson } from './read-json.js';
import { shapeProblems, unexplained } from './shape-problems.js';

/**
 * Reads the bytes of a JSON document that has a schema and no rules across its fields.
 *
 * @returns what the schema makes of it, or every problem at once
 */
export function readDocument<T>(schema: z.ZodType<T>, bytes: Uint8Array): Checked<T> {
  const document = readJson(bytes);
  if (!document.ok) return document;
  const { value, faults } = document.value;
  const shape = schema.safeParse(value);
  if (shape.success && faults.length === 0) return passed(shape.data);
  const problems = shapeProblems(schema, shape.error?.issues ?? [], value);
  return failed([
    ...faults,
    ...unexplained(
      problems,
      faults.map(({ pointer }) => pointer),
    ),
  ]);
}
