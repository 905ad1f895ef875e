import type { Readable } from '../cross-check.js';
import type { EventFields } from './event.js';

/** What can be read of an event as it was sent. */
export type ReadableEvent = Readable<EventFields>;
