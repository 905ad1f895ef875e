import type { SecondWriting } from '../../support/every-question.js';
import { ECURA_SECOND, KR_SECOND, LIMOGES_SECOND } from './second-bleeding.js';
import { YEAR_2019, YEAR_2021, YEAR_2023 } from './second-difficulty.js';

/** Second writings of the scores whose questions are bare fields. */
export const SECOND_SCORES: readonly SecondWriting[] = [
  ECURA_SECOND,
  LIMOGES_SECOND,
  KR_SECOND,
  YEAR_2021,
  YEAR_2023,
  YEAR_2019,
];
