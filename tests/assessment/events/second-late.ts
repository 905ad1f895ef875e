import type { LateBleeding } from '../../../src/assessment/events/late-bleeding.table.js';
import type { SecondWriting } from '../../support/every-question.js';

const FLAGS = [false, true];
const DAYS = [0, 1, 27, 28, 29, 30, 31, 32];

type Asked<F extends keyof LateBleeding> = Pick<LateBleeding, F>;

// Dig Dis Sci 2024, European validation of BEST-J, abstract: clinical signs, confirmed at emergency
// endoscopy, from completion to 28 days.
const BLEED_28D_SECOND: SecondWriting<Asked<'days' | 'clinicalSigns' | 'bleedingSpotSeen'>> = {
  id: 'bleed-28d',
  says: ({ days, clinicalSigns, bleedingSpotSeen }) =>
    days <= 28 && clinicalSigns && bleedingSpotSeen ? 'yes' : 'no',
  choices: { days: DAYS, clinicalSigns: FLAGS, bleedingSpotSeen: FLAGS },
};

// World J Gastroenterol 2014;20:1839: overt haematochezia from 6 h to 30 days after the procedure
// with a bleeding spot at repeat colonoscopy, or in need of transfusion.
const BLEED_6H_30D_SECOND: SecondWriting<
  Asked<'days' | 'hours' | 'haematochezia' | 'bleedingSpotSeen' | 'transfusion'>
> = {
  id: 'bleed-6h-30d',
  says: ({ days, hours, haematochezia, bleedingSpotSeen, transfusion }) => {
    if (!haematochezia || hours < 6 || days > 30) return 'no';
    return bleedingSpotSeen || transfusion ? 'yes' : 'no';
  },
  choices: {
    days: DAYS,
    hours: [0, 5, 5.9, 6, 6.1, 7, 700],
    haematochezia: FLAGS,
    bleedingSpotSeen: FLAGS,
    transfusion: FLAGS,
  },
};

// Endoscopy 2024;56:110-118: within 30 days (abstract); what is significant from memory.
const BLEED_30D_SECOND: SecondWriting<
  Asked<'days' | 'emergencyVisit' | 'readmission' | 'transfusion' | 'haemostasis' | 'hbDropGPerDl'>
> = {
  id: 'bleed-30d-csdb',
  says: ({ days, hbDropGPerDl, ...significant }) => {
    if (days > 30) return 'no';
    return hbDropGPerDl >= 2 || Object.values(significant).includes(true) ? 'yes' : 'no';
  },
  choices: {
    days: DAYS,
    emergencyVisit: FLAGS,
    readmission: FLAGS,
    transfusion: FLAGS,
    haemostasis: FLAGS,
    hbDropGPerDl: [0, 1, 1.9, 2, 2.1, 3, 4],
  },
};

const TISSUE = {
  neoplastic: ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
  free: ['no-neoplasia', 'serrated-without-dysplasia'],
  silent: ['not-taken', 'pending', 'not-assessable'],
} as const;

export interface Scar {
  readonly look: string;
  readonly tissue: string;
}

// Common practice, no source: tissue decides before the look; where both speak against each other,
// or neither is sure, nobody decides.
const SCAR_SECOND: SecondWriting<Scar> = {
  id: 'scar-recurrence',
  says: ({ look, tissue }) => {
    const found = (words: readonly string[]) => words.includes(tissue);
    const suspect = look === 'residual-or-recurrent-neoplasia';
    if (found(TISSUE.neoplastic)) return 'yes';
    if (found(TISSUE.free)) return suspect ? 'uncertain' : 'no';
    if (!found(TISSUE.silent) || look === 'uncertain') return 'uncertain';
    return suspect ? 'yes' : 'no';
  },
  choices: {
    look: ['none', 'inflammation', 'uncertain', 'residual-or-recurrent-neoplasia'],
    tissue: [...TISSUE.neoplastic, ...TISSUE.free, ...TISSUE.silent, 'indefinite'],
  },
};

export const SECOND_LATE: readonly SecondWriting[] = [
  BLEED_28D_SECOND,
  BLEED_6H_30D_SECOND,
  BLEED_30D_SECOND,
  SCAR_SECOND,
];
