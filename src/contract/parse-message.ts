import type { z } from 'zod';
import { type Checked, failed, passed } from '../kernel/index.js';
import { type CrossCheck, crossProblems } from './cross-check.js';
import { type Path, toPath, toPointer } from './pointer.js';
import { readJson } from './read-json.js';
import { pathsOf, shapeProblems, unexplained, without } from './shape-problems.js';

/** A message that has passed every check of its contract. */
export interface Message<Fields> {
  readonly fields: Fields;
  /** JSON Pointer of a number sent with trailing zeros -> decimals that were sent. */
  readonly decimals: Readonly<Record<string, number>>;
}

/** What is left of a message without its broken fields: each may be absent. */
type SoundPart = Readonly<Record<string, never>>;

/** A check that reads a whole message, and one of which any field is missing. */
type CheckOf<Fields> = CrossCheck<Fields> & CrossCheck<SoundPart>;

/**
 * Reads the bytes of a message.
 *
 * @param schema of the message, an object
 * @param checks rules across its fields
 * @returns the message, or every problem at once: of the JSON, of shape, and across those fields
 * that are sound. A value that cannot be read in one way alone is named once, for that.
 */
export function parseMessage<Fields>(
  schema: z.ZodType<Fields>,
  checks: readonly CheckOf<Fields>[],
  bytes: Uint8Array,
): Checked<Message<Fields>> {
  const document = readJson(bytes);
  if (!document.ok) return document;
  const { value, decimals, faults } = document.value;
  const shape = schema.safeParse(value);
  if (shape.success && faults.length === 0) {
    const problems = crossProblems<Fields>(checks, shape.data);
    return problems.length > 0 ? failed(problems) : passed({ fields: shape.data, decimals });
  }
  const issues = shape.error?.issues ?? [];
  const unread = faults.map(({ pointer }) => pointer);
  const broken = [...unread.map(toPath), ...issues.flatMap(pathsOf)];
  // A broken field is no missing one: what a rule says of its place has been said.
  const crossed = crossProblems<SoundPart>(checks, soundPart(value, broken));
  return failed([
    ...faults,
    ...unexplained(shapeProblems(schema, issues, value), unread),
    ...unexplained(crossed, broken.map(toPointer)),
  ]);
}

function soundPart(value: unknown, paths: readonly Path[]): SoundPart {
  const sound = without(value, paths);
  return isRecord(sound) ? sound : {};
}

const isRecord = (value: unknown): value is SoundPart =>
  value !== null && typeof value === 'object';

/**
 * Reads the bytes of a message that passed its contract when it came: its form alone. A rule
 * across its fields that became stricter since must not shut out what was kept before.
 */
export function readMessage<Fields>(
  schema: z.ZodType<Fields>,
  bytes: Uint8Array,
): Checked<Message<Fields>> {
  return parseMessage(schema, [], bytes);
}
