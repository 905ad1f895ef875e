import type { CURABILITY_RULE_SETS, Organ } from '../../contract/index.js';
import type { ClassRule, Rule } from '../../rules/index.js';
import { ESGE_ESD_2022 } from './esge-esd-2022.table.js';
import { JGES_JES_2020 } from './jges-jes-2020.table.js';
import { JGES_JES_2020_INDICATION } from './jges-jes-2020-indication.table.js';
import { JGES_JGCA_2021 } from './jges-jgca-2021.table.js';
import { JSCCR_2019 } from './jsccr-2019.table.js';
import { KR_2020 } from './kr-2020.table.js';
import { MAPS_III_2025 } from './maps-iii-2025.table.js';

type Chosen = typeof CURABILITY_RULE_SETS;

/** A rule set of curability that a unit may choose. */
export type RuleSetId = Chosen[keyof Chosen][number];

/** The rule sets that a unit may choose, by their ids. */
export const RULE_SETS: Readonly<Record<RuleSetId, ClassRule>> = {
  'esge-esd-2022': ESGE_ESD_2022,
  'jges-jgca-2021': JGES_JGCA_2021,
  'jsccr-2019': JSCCR_2019,
  'jges-jes-2020': JGES_JES_2020,
  'kr-2020': KR_2020,
};

/** The sets that speak of tumours of an organ, those for comparison only among them. */
export const SETS_OF_ORGAN: Readonly<Record<Organ, readonly ClassRule[]>> = {
  oesophagus: [ESGE_ESD_2022, JGES_JES_2020, KR_2020],
  stomach: [ESGE_ESD_2022, JGES_JGCA_2021, MAPS_III_2025],
  duodenum: [],
  colon: [ESGE_ESD_2022, JSCCR_2019],
  rectum: [ESGE_ESD_2022, JSCCR_2019],
};

/** Every rule of this folder. */
export const CURABILITY_RULES: readonly Rule[] = [
  ...Object.values(RULE_SETS),
  MAPS_III_2025,
  JGES_JES_2020_INDICATION,
];
