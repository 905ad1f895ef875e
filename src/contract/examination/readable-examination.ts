import type { Readable } from '../cross-check.js';
import type { ExaminationFields } from './examination.js';

/** What can be read of an examination as it was sent. */
export type ReadableExamination = Readable<ExaminationFields>;
