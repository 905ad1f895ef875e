import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { identifier, instant } from '../scalars.js';

/** One word that says why the service writes a message of its own. */
export const REASON_WORD = /^[a-z0-9][a-z0-9-]{0,39}$/;

/**
 * What the service itself tells a record: how late it is. Nobody sends it. The record depends on
 * nothing but its messages, so that time, too, is one.
 */
export const asOfSchema = z.strictObject({
  schema: z.literal('as-of/1'),
  source,
  case: identifier,
  revision: revision.describe('of this message, for one case'),
  sentAt: instant,
  asOf: instant.describe('until when nothing else had come'),
  reason: z.string().regex(REASON_WORD).describe('why it was written'),
  verdictWas: z
    .string()
    .optional()
    .describe('verdict and rule by the rules of before, where they changed'),
});

export type AsOfFields = DeepReadonly<z.infer<typeof asOfSchema>>;
