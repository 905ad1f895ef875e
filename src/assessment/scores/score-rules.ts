import type { Rule } from '../../rules/index.js';
import { BEST_J } from './best-j.table.js';
import { COLORECTAL_DIFFICULTY_2021 } from './colorectal-difficulty-2021.table.js';
import { COLORECTAL_DIFFICULTY_2023 } from './colorectal-difficulty-2023.table.js';
import { COLORECTAL_DIFFICULTY_MATSUMOTO_2019 } from './colorectal-difficulty-matsumoto-2019.table.js';
import { ECURA } from './ecura.table.js';
import { KR_COLORECTAL_BLEEDING } from './kr-colorectal-bleeding.table.js';
import { LIMOGES } from './limoges.table.js';

/** Every score that can be asked, each with its source. */
export const SCORE_RULES: readonly Rule[] = [
  ECURA,
  BEST_J,
  LIMOGES,
  KR_COLORECTAL_BLEEDING,
  COLORECTAL_DIFFICULTY_2021,
  COLORECTAL_DIFFICULTY_2023,
  COLORECTAL_DIFFICULTY_MATSUMOTO_2019,
];
