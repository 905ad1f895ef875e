import type { Rule } from '../rules/index.js';
import { BACKGROUND_MUCOSA } from './background-mucosa.table.js';
import { BSG_2019 } from './bsg-2019.table.js';
import { ESGE_BARRETT_2023 } from './esge-barrett-2023.table.js';
import { ESGE_DUODENUM_2021 } from './esge-duodenum-2021.table.js';
import { ESGE_ESD_2022_FOLLOW_UP } from './esge-esd-2022-follow-up.table.js';
import { ESGE_ESDO_2019 } from './esge-esdo-2019.table.js';
import { ESGE_PPS_2020 } from './esge-pps-2020.table.js';
import { GASTRIC_ADENOMA_PRACTICE } from './gastric-adenoma.table.js';
import { JGES_COLORECTAL_2020 } from './jges-colorectal-2020.table.js';
import { JGES_JES_2020_FOLLOW_UP, JGES_JGCA_2021_FOLLOW_UP } from './jges-follow-up.table.js';
import { MAPS_II_2019 } from './maps-ii-2019.table.js';
import { USMSTF_2020 } from './usmstf-2020.table.js';
import { WITHOUT_SURGERY } from './without-surgery.table.js';

/** Every rule set that says when to look again. */
export const FOLLOW_UP_RULES: readonly Rule[] = [
  ESGE_ESD_2022_FOLLOW_UP,
  JGES_JES_2020_FOLLOW_UP,
  JGES_JGCA_2021_FOLLOW_UP,
  ESGE_PPS_2020,
  ESGE_ESDO_2019,
  BSG_2019,
  USMSTF_2020,
  ESGE_DUODENUM_2021,
  ESGE_BARRETT_2023,
  MAPS_II_2019,
  WITHOUT_SURGERY,
  JGES_COLORECTAL_2020,
  GASTRIC_ADENOMA_PRACTICE,
  BACKGROUND_MUCOSA,
];
