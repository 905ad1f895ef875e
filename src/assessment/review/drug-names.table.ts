import type { AntithromboticClass, UnitSettings } from '../../contract/index.js';

/** A class of drugs as a sentence names it. */
export const DRUG_CLASS_NAMES: Readonly<Record<AntithromboticClass, string>> = {
  aspirin: 'aspirin',
  'p2y12-inhibitor': 'the P2Y12 inhibitor',
  cilostazol: 'cilostazol',
  'other-antiplatelet': 'the antiplatelet drug',
  'vitamin-k-antagonist': 'the vitamin K antagonist',
  doac: 'the direct oral anticoagulant',
  heparin: 'heparin',
};

/** An edition as a sentence names it. */
export const EDITION_NAMES: Readonly<Record<UnitSettings['antithromboticEdition'], string>> = {
  'bsg-esge-2016': 'BSG/ESGE 2016',
  'bsg-esge-2021': 'BSG/ESGE 2021',
  'asia-pacific-2018': 'Asia-Pacific 2018',
};
