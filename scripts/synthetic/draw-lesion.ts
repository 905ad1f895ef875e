import type { Organ, Site, Tumour } from '../../src/contract/index.js';
import type { Chance } from './chance.js';
import {
  AGE,
  ANTITHROMBOTIC,
  ASA,
  ATTEMPTED_BEFORE,
  DRUG_CONTINUED,
  FIBROSIS,
  HAEMODIALYSIS,
  ORGAN,
  SEVERAL_LESIONS,
  SEX,
  SITE,
  SIZE,
  SIZE_LIMITS_MM,
  TUMOUR,
} from './lesion.table.js';

/** The invented patient as far as a case tells. */
export interface DrawnPatient {
  readonly ageYears: number;
  readonly sex: (typeof SEX)[number]['value'];
  readonly asa: (typeof ASA)[number]['value'];
  readonly haemodialysis: boolean;
  readonly drug: (typeof ANTITHROMBOTIC)[number]['value'];
  readonly drugStopped: boolean;
}

/** The invented lesion. */
export interface DrawnLesion {
  readonly organ: Organ;
  readonly site: Site;
  readonly tumour: Tumour;
  readonly longMm: number;
  readonly shortMm: number;
  readonly attempted: boolean;
  readonly fibrosis: 'F0' | 'F1' | 'F2';
  readonly lesionsInSession: number;
}

export function drawPatient(chance: Chance): DrawnPatient {
  const age = Math.round(chance.normal(AGE.mean, AGE.deviation));
  const drug = chance.pick(ANTITHROMBOTIC);
  return {
    ageYears: Math.min(AGE.most, Math.max(AGE.least, age)),
    sex: chance.pick(SEX),
    asa: chance.pick(ASA),
    haemodialysis: chance.happens(HAEMODIALYSIS.percent),
    drug,
    drugStopped: drug !== 'none' && !chance.happens(DRUG_CONTINUED.percent),
  };
}

export function drawLesion(chance: Chance): DrawnLesion {
  const organ = chance.pick(ORGAN);
  const tumour = chance.pick(TUMOUR[organ]);
  const isBarrett = tumour === 'barrett';
  const site = isBarrett ? chance.pick(BARRETT_SITES) : siteOf(organ, tumour, chance);
  const { medianMm, spread } = SIZE[organ];
  const drawnMm = Math.round(
    chance.logNormal(tumour === 'other' ? medianMm / 2 : medianMm, spread),
  );
  const longMm = Math.min(SIZE_LIMITS_MM.most, Math.max(SIZE_LIMITS_MM.least, drawnMm));
  const attempted = chance.happens(ATTEMPTED_BEFORE.percent);
  return {
    organ,
    site,
    tumour,
    longMm,
    shortMm: Math.max(SIZE_LIMITS_MM.least - 1, Math.round(longMm * (0.55 + 0.4 * chance.unit()))),
    attempted,
    fibrosis: chance.pick(FIBROSIS[attempted ? 'attempted' : 'untouched']),
    lesionsInSession: chance.happens(SEVERAL_LESIONS.percent) ? 2 : 1,
  };
}

/** Barrett mucosa begins at the junction. */
const BARRETT_SITES = SITE.oesophagus.filter(
  ({ value }) => value === 'oesophagus-lower-third' || value === 'oesophagogastric-junction',
);

const siteOf = (organ: Organ, tumour: Tumour, chance: Chance): Site =>
  chance.pick(
    tumour === 'squamous'
      ? SITE.oesophagus.filter(({ value }) => value !== 'oesophagogastric-junction')
      : SITE[organ],
  );
