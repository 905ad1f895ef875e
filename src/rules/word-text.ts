import type { Value } from './condition.js';

/** A word as it stands in JSON, in quotation marks where it could be taken for a number. */
export const wordText = (word: Value): string =>
  typeof word === 'string' && Number.isFinite(Number(word)) ? `"${word}"` : String(word);
