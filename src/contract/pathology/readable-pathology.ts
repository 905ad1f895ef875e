import type { Readable } from '../cross-check.js';
import type { PathologyFields } from './pathology.js';

/** What can be read of a pathology report as it was sent. */
export type ReadablePathology = Readable<PathologyFields>;
