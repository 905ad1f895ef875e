import type { Readable } from '../cross-check.js';
import type { CaseFields } from './case.js';

/** What can be read of a case as it was sent. */
export type ReadableCase = Readable<CaseFields>;
