import type { Organ } from '../contract/index.js';
import type { Citation } from '../kernel/index.js';
import { cite } from '../references/index.js';

export type StrictureFlag = 'low' | 'moderate' | 'high' | 'full';

/** A foot of a band of the share of the circumference that the mucosal defect takes, percent. */
type Foot = { readonly above: number } | { readonly atLeast: number };

export interface StrictureBand {
  readonly flag: StrictureFlag;
  readonly foot: Foot;
  /** The defect must also be longer than this, in mm; otherwise the next band holds. */
  readonly longerThanMm?: number;
  readonly cites: readonly Citation[];
}

const LOW: StrictureBand = {
  flag: 'low',
  foot: { atLeast: 0 },
  cites: [cite('kim2014', 'abstract, by complement', 'derived')],
};

/** From the top; the first band that fits holds. An organ without bands has no published one. */
export const STRICTURE_BANDS: Partial<Record<Organ, readonly StrictureBand[]>> = {
  oesophagus: [
    {
      flag: 'full',
      foot: { atLeast: 100 },
      cites: [cite('esdPractice', 'whole circumference', 'recalled')],
    },
    {
      flag: 'high',
      foot: { above: 75 },
      cites: [cite('kim2014', 'abstract: more than 3/4 of the circumference', 'published')],
    },
    {
      flag: 'moderate',
      foot: { above: 50 },
      cites: [cite('esdPractice', 'half to three quarters', 'recalled')],
    },
    LOW,
  ],
  stomach: [
    {
      flag: 'high',
      foot: { above: 75 },
      longerThanMm: 50,
      cites: [cite('kim2014', 'abstract: stomach, > 3/4 and longer than 50 mm', 'published')],
    },
    LOW,
  ],
};

/** What a factor may look at; lengths in mm, shares in percent. */
export interface StrictureFacts {
  readonly percent: number;
  readonly lengthMm: number | undefined;
  readonly upperOesophagus: boolean;
}

/** A published factor that is shown beside the flag and does not change it. */
export interface StrictureFactor {
  readonly name: 'long-defect' | 'upper-oesophagus' | 'three-quarters-exactly';
  readonly organ: Organ;
  readonly holds: (facts: StrictureFacts) => boolean;
  readonly cites: readonly Citation[];
}

export const STRICTURE_FACTORS: readonly StrictureFactor[] = [
  {
    name: 'long-defect',
    organ: 'oesophagus',
    holds: ({ lengthMm }) => lengthMm !== undefined && lengthMm > 30,
    cites: [cite('kim2014', 'abstract: longitudinal defect > 30 mm', 'published')],
  },
  {
    name: 'upper-oesophagus',
    organ: 'oesophagus',
    holds: ({ upperOesophagus }) => upperOesophagus,
    cites: [cite('kim2014', 'abstract: upper oesophagus', 'published')],
  },
  {
    name: 'three-quarters-exactly',
    organ: 'oesophagus',
    holds: ({ percent }) => percent === 75,
    cites: [cite('jes2022', '3/4 or more counts as wide there', 'recalled')],
  },
];
