import type { Organ, Site, Tumour } from '../words.table.js';
import type { Depth, PrimaryTumour } from './words.table.js';

/**
 * The layers in which the depth of a tumour is told. `X` goes with every tumour.
 *
 * Source: the field table of the curability questions (squamous ep, lpm, mm, sm, mp; others m, sm,
 * mp).
 */
export const DEPTHS_OF = {
  squamous: ['ep', 'lpm', 'mm', 'sm', 'mp', 'X'],
  barrett: ['m', 'sm', 'mp', 'X'],
  gastric: ['m', 'sm', 'mp', 'X'],
  duodenal: ['m', 'sm', 'mp', 'X'],
  colorectal: ['m', 'sm', 'mp', 'X'],
  other: ['m', 'sm', 'mp', 'X'],
} as const satisfies Record<Tumour, readonly Depth[]>;

const JUNCTION: readonly Site[] = [
  'oesophagogastric-junction',
  'oesophagus-abdominal',
  'stomach-cardia',
];

/**
 * Sites at the border of two organs: two people may well count one lesion to different sides.
 *
 * Source: common practice, no source.
 */
export const BORDERS: readonly (readonly Site[])[] = [
  JUNCTION,
  ['stomach-pylorus', 'duodenum-bulb'],
  ['sigmoid-colon', 'rectosigmoid-junction'],
];

interface Home {
  readonly organs: readonly Organ[];
  /** Places of another organ in which the lineage occurs too. */
  readonly sites: readonly Site[];
}

/**
 * The organs of a lineage. Rules of curability for squamous tumours are for the oesophagus: one of
 * the anal canal is `other`.
 *
 * Source: common practice, no source.
 */
export const HOME_OF = {
  squamous: { organs: ['oesophagus'], sites: [] },
  barrett: { organs: ['oesophagus'], sites: JUNCTION },
  gastric: { organs: ['stomach'], sites: JUNCTION },
  duodenal: { organs: ['duodenum'], sites: [] },
  colorectal: { organs: ['colon', 'rectum'], sites: [] },
  other: { organs: ['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'], sites: [] },
} as const satisfies Record<Tumour, Home>;

const UPPER_GLANDS = {
  pTis: ['m'],
  pT1a: ['m'],
  pT1b: ['sm'],
  pT1: ['m', 'sm'],
  pT2: ['mp'],
} as const;

/**
 * The depths that a pT can mean. A depth of `X` and `pTX` go with everything; a lineage without a
 * row is not asked.
 *
 * Source: CC-05 (pT1a with sm and pT1b with m in the upper tract, colorectal pTis with sm); the
 * other cells from UICC TNM, 8th edition, from memory. Read more widely than the TNM in two
 * places: the Japanese classifications call a squamous carcinoma within the epithelium pT1a, and
 * divide the colorectal pT1 into pT1a and pT1b at a depth of 1000 um (from memory).
 */
export const DEPTHS_OF_PT: Readonly<
  Partial<Record<Tumour, Readonly<Record<Exclude<PrimaryTumour, 'pTX'>, readonly Depth[]>>>>
> = {
  squamous: {
    pTis: ['ep'],
    pT1a: ['ep', 'lpm', 'mm'],
    pT1b: ['sm'],
    pT1: ['ep', 'lpm', 'mm', 'sm'],
    pT2: ['mp'],
  },
  barrett: UPPER_GLANDS,
  gastric: UPPER_GLANDS,
  duodenal: UPPER_GLANDS,
  colorectal: { pTis: ['m'], pT1a: ['sm'], pT1b: ['sm'], pT1: ['sm'], pT2: ['mp'] },
};
