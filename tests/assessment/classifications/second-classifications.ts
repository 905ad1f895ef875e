import type { SecondWriting } from '../../support/every-question.js';
import {
  BBPS_SECOND,
  BUDDING_SECOND,
  DIFFICULT_SECOND,
  FIBROSIS_SECOND,
  STRICTURE_OESOPHAGUS,
  STRICTURE_STOMACH,
  SYDNEY_SECOND,
} from './second-findings.js';
import { AGREE_SECOND, CLAVIEN_DINDO_SECOND } from './second-grades.js';

/** Second writings of the classifications. */
export const SECOND_CLASSIFICATIONS: readonly SecondWriting[] = [
  AGREE_SECOND,
  CLAVIEN_DINDO_SECOND,
  BBPS_SECOND,
  BUDDING_SECOND,
  SYDNEY_SECOND,
  FIBROSIS_SECOND,
  DIFFICULT_SECOND,
  STRICTURE_OESOPHAGUS,
  STRICTURE_STOMACH,
];
