import type { Rule } from '../../rules/index.js';
import { STRICTURE_BANDS } from '../stricture-risk.table.js';
import { AGREE } from './agree.table.js';
import { BBPS } from './bbps.table.js';
import { BUDDING_ITBCC } from './budding-itbcc.table.js';
import { CLAVIEN_DINDO } from './clavien-dindo.table.js';
import { DIFFICULT_ESD } from './difficult-esd.table.js';
import { FIBROSIS } from './fibrosis.table.js';
import { SYDNEY_DMI } from './sydney-dmi.table.js';

/** Every classification that can be asked, each with its source. */
export const CLASSIFICATION_RULES: readonly Rule[] = [
  BUDDING_ITBCC,
  BBPS,
  AGREE,
  CLAVIEN_DINDO,
  ...Object.values(STRICTURE_BANDS),
  SYDNEY_DMI,
  FIBROSIS,
  DIFFICULT_ESD,
];
