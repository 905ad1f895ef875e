import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';

/** For rows that no published work stands behind. */
export const PRACTICE: readonly Citation[] = [
  cite('esdPractice', 'usual course of a dissection', 'practice'),
];
