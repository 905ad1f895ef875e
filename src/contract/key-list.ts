import { z } from 'zod';
import { type Checked, passed } from '../kernel/index.js';
import { readDocument } from './read-document.js';
import { instant, listOf, oneOf } from './scalars.js';

/** What a caller may be; each API key has exactly one role. */
export const ROLES = ['note-system', 'records-team', 'scheduler', 'operator'] as const;
export type Role = (typeof ROLES)[number];

/** The name of a sending system. */
export const SOURCE_NAME = /^[a-z0-9][a-z0-9-]{0,39}$/;

const storedKey = z
  .strictObject({
    id: z
      .string()
      .regex(/^[0-9a-f]{8}$/)
      .meta({ title: '8 lower-case hexadecimal digits' }),
    role: oneOf(ROLES),
    source: z
      .string()
      .regex(SOURCE_NAME)
      .optional()
      .meta({ title: 'lower-case letters, digits and hyphens; with role note-system alone' }),
    sha256: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .meta({ title: '64 lower-case hexadecimal digits' }),
    createdAt: instant,
  })
  .refine(({ role, source }) => (role === 'note-system') === (source !== undefined), {
    message: 'A key has a source if its role is note-system, and only then.',
    path: ['source'],
  });

/** The file of hashed API keys. A key stops working when its entry is removed. */
const keyListSchema = z.strictObject({
  schema: z.literal('keys/1'),
  keys: listOf(storedKey, 1_000),
});

export interface StoredKey {
  /** Names the key towards people; no part of the key. */
  readonly id: string;
  readonly role: Role;
  /** The sending system that the key belongs to; with role note-system alone. */
  readonly source?: string;
  /** SHA-256 of the key, hexadecimal. The key holds 256 random bits, so no salt is needed. */
  readonly sha256: string;
  /** UTC instant. */
  readonly createdAt: string;
}

/** @returns the keys, or every problem of the file at once */
export function parseKeyList(bytes: Uint8Array): Checked<readonly StoredKey[]> {
  const read = readDocument(keyListSchema, bytes);
  if (!read.ok) return read;
  return passed(
    read.value.keys.map(({ source, ...key }) => ({
      ...key,
      ...(source === undefined ? {} : { source }),
    })),
  );
}

/** The text of a key file. */
export function writeKeyList(keys: readonly StoredKey[]): string {
  return `${JSON.stringify({ schema: 'keys/1', keys }, undefined, 2)}\n`;
}
