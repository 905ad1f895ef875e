import type { Checked } from '../kernel/index.js';
import { type CaseFields, caseSchema } from './case/case.js';
import { CROSS_CHECKS } from './case/cross-checks.js';
import { type Message, parseMessage } from './parse-message.js';

/** A finished case that has passed every check of the contract. */
export type EsdCase = Message<CaseFields>;

/** Reads the bytes of a `case` message; see `parseMessage`. */
export function parseCase(bytes: Uint8Array): Checked<EsdCase> {
  return parseMessage<CaseFields>(caseSchema, CROSS_CHECKS, bytes);
}
