import { type Checked, failed, passed } from '../kernel/index.js';
import { type CaseFields, caseSchema } from './case/case.js';
import type { ReadableCase } from './case/cross-check.js';
import { crossProblems } from './case/cross-checks.js';
import { type Path, toPath } from './pointer.js';
import { readJson } from './read-json.js';
import { pathsOf, shapeProblems, unexplained, without } from './shape-problems.js';

/** A finished case that has passed every check of the contract. */
export interface EsdCase {
  readonly fields: CaseFields;
  /** JSON Pointer of a number sent with trailing zeros -> decimals that were sent. */
  readonly decimals: Readonly<Record<string, number>>;
}

/**
 * Reads the bytes of a `case` message.
 *
 * @returns the case, or every problem at once: of the JSON, of shape, and across those fields
 * that are sound. A value that cannot be read in one way alone is named once, for that.
 */
export function parseCase(bytes: Uint8Array): Checked<EsdCase> {
  const document = readJson(bytes);
  if (!document.ok) return document;
  const { value, decimals, faults } = document.value;
  const shape = caseSchema.safeParse(value);
  if (shape.success && faults.length === 0) {
    const problems = crossProblems(shape.data);
    return problems.length > 0 ? failed(problems) : passed({ fields: shape.data, decimals });
  }
  const issues = shape.error?.issues ?? [];
  const broken = [...faults.map(({ pointer }) => toPath(pointer)), ...issues.flatMap(pathsOf)];
  return failed([
    ...faults,
    ...unexplained(shapeProblems(caseSchema, issues, value), faults),
    ...crossProblems(soundPart(value, broken)),
  ]);
}

/** What is left without the broken fields passes the schema with every field optional. */
function soundPart(value: unknown, paths: readonly Path[]): ReadableCase {
  const sound = without(value, paths);
  return isRecord(sound) ? sound : {};
}

const isRecord = (value: unknown): value is Readonly<Record<string, never>> =>
  value !== null && typeof value === 'object';
