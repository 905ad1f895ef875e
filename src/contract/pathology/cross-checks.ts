import type { CrossCheck, Readable } from '../cross-check.js';
import type { PathologyFields } from './pathology.js';

export type ReadablePathology = Readable<PathologyFields>;

export const PATHOLOGY_CHECKS: readonly CrossCheck<ReadablePathology>[] = [];
