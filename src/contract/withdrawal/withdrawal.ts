import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { identifier, instant, oneOf } from '../scalars.js';
import { WITHDRAWAL_REASONS } from './words.table.js';

/**
 * Takes a whole case back, with all that was sent about it; natural key case. A case never moves
 * to another patient: it is withdrawn under the patient it was sent with, the wrong one, and sent
 * anew under another case identifier.
 */
export const withdrawalSchema = z.strictObject({
  schema: z.literal('withdrawal/1'),
  source,
  case: identifier.describe('the case that is taken back'),
  patient: identifier.describe('the patient that the case was sent with, even if the wrong one'),
  revision: revision.describe('of this message, for one case'),
  sentAt: instant,
  reason: oneOf(WITHDRAWAL_REASONS),
  replacedBy: identifier.optional().describe('the case that stands instead of this one'),
  withdrawnBy: identifier.optional().describe('a practitioner number, not a name'),
});

export type WithdrawalFields = DeepReadonly<z.infer<typeof withdrawalSchema>>;
