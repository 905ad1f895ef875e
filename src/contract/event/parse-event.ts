import type { Checked } from '../../kernel/index.js';
import { type Message, parseMessage } from '../parse-message.js';
import { EVENT_CHECKS } from './cross-checks.js';
import { type EventFields, eventSchema } from './event.js';

/** An event that has passed every check of the contract. */
export type EventMessage = Message<EventFields>;

/** Reads the bytes of an `event` message; see `parseMessage`. */
export function parseEvent(bytes: Uint8Array): Checked<EventMessage> {
  return parseMessage<EventFields>(eventSchema, EVENT_CHECKS, bytes);
}
