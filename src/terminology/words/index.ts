import { AFTER_WORDS } from './after.js';
import { BEFORE_WORDS } from './before.js';
import { DISSECTION_WORDS } from './dissection.js';
import { EQUIPMENT_WORDS } from './equipment.js';
import { LESION_WORDS } from './lesion.js';
import { PATHOLOGY_WORDS } from './pathology.js';
import { RESULT_WORDS } from './result.js';
import { SITE_WORDS } from './sites.js';

export { SUBSTANCES } from './equipment.js';

/** The code of every word of every list of the contract. */
export const WORD_CODES = {
  ...SITE_WORDS,
  ...LESION_WORDS,
  ...BEFORE_WORDS,
  ...EQUIPMENT_WORDS,
  ...DISSECTION_WORDS,
  ...RESULT_WORDS,
  ...PATHOLOGY_WORDS,
  ...AFTER_WORDS,
} as const;
