import type { SecondWriting } from '../../support/every-question.js';

export interface Segments {
  readonly right: number;
  readonly transverse: number;
  readonly left: number;
}

const POINTS = [0, 1, 2, 3];

// Source: Lai EJ et al. Gastrointest Endosc 2009;69:620-625: 0 to 3 a segment, adequate when every
// segment has 2 or more.
export const BBPS_SECOND: SecondWriting<Segments> = {
  id: 'bbps',
  says: ({ right, transverse, left }) =>
    `${right + transverse + left};${Math.min(right, transverse, left) >= 2 ? '' : 'not-'}adequate`,
  choices: { right: POINTS, transverse: POINTS, left: POINTS },
};

export interface Buds {
  readonly buds: number;
  readonly fieldMm2: number;
}

// Source: ITBCC 2016 as quoted in J Clin Oncol 2019;37:1886: BD1 0-4, BD2 5-9, BD3 10 and more
// buds per 0.785 mm2; other fields by proportion, rounded down. The fields here hold the standard
// one a whole number of times, so that the proportion is exact.
export const BUDDING_SECOND: SecondWriting<Buds> = {
  id: 'budding-itbcc',
  says: ({ buds, fieldMm2 }) => {
    const inOne = Math.floor(buds / Math.round(fieldMm2 / 0.785));
    if (inOne >= 10) return 'BD3';
    return inOne >= 5 ? 'BD2' : 'BD1';
  },
  choices: {
    buds: [0, 1, 3, 4, 5, 6, 8, 9, 10, 11, 12, 18, 19, 20, 22, 200],
    fieldMm2: [0.785, 1.57],
  },
};

export interface WoundBed {
  readonly sign: string;
  readonly contamination: boolean;
}

// Source: Burgess NG et al. Gut 2017;66:1779-1789, abstract; grade 0 from a second source.
export const SYDNEY_SECOND: SecondWriting<WoundBed> = {
  id: 'sydney-dmi',
  says: ({ sign, contamination }) => {
    if (sign === 'hole') return contamination ? 'V' : 'IV';
    if (sign === 'target') return 'III';
    if (sign === 'plane-lost') return 'II';
    return sign === 'muscle-visible' ? 'I' : '0';
  },
  choices: {
    sign: ['normal', 'muscle-visible', 'plane-lost', 'target', 'hole'],
    contamination: [false, true],
  },
};

export interface Layer {
  readonly layer: string;
}

// Source: Matsumoto A et al. Scand J Gastroenterol 2010;45:1329, as quoted; looks from a second
// source.
export const FIBROSIS_SECOND: SecondWriting<Layer> = {
  id: 'fibrosis',
  says: ({ layer }) => {
    if (layer === 'white-without-blue') return 'F2';
    return layer === 'white-web-in-blue' ? 'F1' : 'F0';
  },
  choices: { layer: ['transparent-blue', 'white-web-in-blue', 'white-without-blue'] },
};

export interface Ended {
  readonly outcome: string;
  readonly speedCm2PerMin: number;
}

// Source: Iacopini F et al., PMC5595579: en bloc with a speed below 0.07 cm2/min, conversion to
// mucosal resection, or abandonment.
export const DIFFICULT_SECOND: SecondWriting<Ended> = {
  id: 'difficult-esd',
  says: ({ outcome, speedCm2PerMin }) => {
    if (outcome === 'abandoned' || outcome === 'converted-to-emr') return 'difficult';
    if (outcome === 'piecemeal') return 'no-rule';
    return speedCm2PerMin < 0.07 ? 'difficult' : 'not-difficult';
  },
  choices: {
    outcome: ['en-bloc', 'piecemeal', 'converted-to-emr', 'abandoned'],
    speedCm2PerMin: [0, 0.069, 0.0699, 0.07, 0.0701, 0.2, 1.07],
  },
};

const SHARES = [0, 49, 49.9, 50, 50.1, 51, 74, 74.9, 75, 75.1, 76, 99, 99.9, 100];

export interface Defect {
  readonly defectCircumferencePercent: number;
}

// Source: Kim GH et al. Clin Endosc 2014;47:516, abstract: more than 3/4 of the circumference;
// full and moderate from memory.
export const STRICTURE_OESOPHAGUS: SecondWriting<Defect> = {
  id: 'stricture-flag',
  says: ({ defectCircumferencePercent: share }) => {
    if (share >= 100) return 'full';
    if (share > 75) return 'high';
    return share > 50 ? 'moderate' : 'low';
  },
  choices: { defectCircumferencePercent: SHARES },
};

export interface LongDefect extends Defect {
  readonly defectLengthMm: number;
}

// Source: Kim GH et al. Clin Endosc 2014;47:516: stomach, more than 3/4 and longer than 50 mm.
export const STRICTURE_STOMACH: SecondWriting<LongDefect> = {
  id: 'stricture-flag-stomach',
  says: ({ defectCircumferencePercent: share, defectLengthMm: length }) =>
    share > 75 && length > 50 ? 'high' : 'low',
  choices: { defectCircumferencePercent: SHARES, defectLengthMm: [1, 49, 50, 50.1, 51] },
};
