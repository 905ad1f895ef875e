import {
  CLASSIFICATION_RULES,
  CURABILITY_RULES,
  QUANTITY_RULES,
  SCORE_RULES,
} from '../assessment/index.js';
import type { Rule } from '../rules/index.js';
import { STATISTICS_RULES } from '../statistics/index.js';
import { FOLLOW_UP_RULES } from '../surveillance/index.js';

/** Every rule that can be asked by its id. */
export const allRules = (): readonly Rule[] => [
  ...CURABILITY_RULES,
  ...FOLLOW_UP_RULES,
  ...SCORE_RULES,
  ...CLASSIFICATION_RULES,
  ...QUANTITY_RULES,
  ...STATISTICS_RULES,
];
