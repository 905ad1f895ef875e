import type { Checked } from '../../kernel/index.js';
import { type Message, parseMessage } from '../parse-message.js';
import { PATHOLOGY_CHECKS } from './cross-checks.js';
import { type PathologyFields, pathologySchema } from './pathology.js';

/** A pathology report that has passed every check of the contract. */
export type PathologyMessage = Message<PathologyFields>;

/** Reads the bytes of a `pathology` message; see `parseMessage`. */
export function parsePathology(bytes: Uint8Array): Checked<PathologyMessage> {
  return parseMessage<PathologyFields>(pathologySchema, PATHOLOGY_CHECKS, bytes);
}
