import type { Tumour } from '../words.table.js';
import type { Histology, PolypType } from './words.table.js';

/** Where a histological type occurs and which findings it can be. */
export interface HistologicalTypeRow {
  readonly tumours: readonly Tumour[];
  readonly histologies: readonly Histology[];
}

const DYSPLASIA = ['low-grade-dysplasia', 'high-grade-dysplasia'] as const;
const CARCINOMA = ['carcinoma'] as const;
const NET = ['neuroendocrine-tumour'] as const;
const OTHER = ['other-tumour'] as const;
const GLANDS = ['barrett', 'gastric', 'duodenal', 'colorectal'] as const;
const UPPER_GLANDS = ['barrett', 'gastric', 'duodenal'] as const;
const BOWEL = ['duodenal', 'colorectal'] as const;

/**
 * The types that a report can name; in doubt a lineage is listed, so that no report is refused
 * for a rarity. A neuroendocrine tumour and one of the wall have the lineage `other`, whichever
 * organ they lie in; polyps without dysplasia keep that of their organ.
 *
 * Source: WHO classification of tumours of the digestive system, 5th edition, from memory; which
 * type occurs in which lineage: common practice, no source.
 */
export const HISTOLOGICAL_TYPE = {
  'squamous-intraepithelial-neoplasia': { tumours: ['squamous'], histologies: DYSPLASIA },
  'squamous-cell-carcinoma': { tumours: ['squamous', 'other'], histologies: CARCINOMA },
  'basaloid-squamous-cell-carcinoma': { tumours: ['squamous', 'other'], histologies: CARCINOMA },
  'spindle-cell-squamous-cell-carcinoma': {
    tumours: ['squamous', 'other'],
    histologies: CARCINOMA,
  },
  'verrucous-squamous-cell-carcinoma': { tumours: ['squamous', 'other'], histologies: CARCINOMA },
  'adenosquamous-carcinoma': {
    tumours: ['squamous', ...GLANDS, 'other'],
    histologies: CARCINOMA,
  },

  'glandular-intraepithelial-neoplasia': {
    tumours: GLANDS,
    histologies: ['indefinite', ...DYSPLASIA],
  },
  'tubular-adenoma': { tumours: GLANDS, histologies: DYSPLASIA },
  'tubulovillous-adenoma': { tumours: GLANDS, histologies: DYSPLASIA },
  'villous-adenoma': { tumours: GLANDS, histologies: DYSPLASIA },
  'pyloric-gland-adenoma': { tumours: UPPER_GLANDS, histologies: ['none', ...DYSPLASIA] },
  'foveolar-type-adenoma': { tumours: UPPER_GLANDS, histologies: DYSPLASIA },
  'oxyntic-gland-adenoma': { tumours: ['gastric'], histologies: ['none', ...DYSPLASIA] },
  'sessile-serrated-lesion': {
    tumours: ['colorectal'],
    histologies: ['none', 'indefinite', ...DYSPLASIA],
  },
  'traditional-serrated-adenoma': { tumours: ['gastric', ...BOWEL], histologies: DYSPLASIA },
  'unclassified-serrated-adenoma': { tumours: ['gastric', ...BOWEL], histologies: DYSPLASIA },
  'hyperplastic-polyp': {
    tumours: ['gastric', 'duodenal', 'colorectal', 'other'],
    histologies: ['none', 'indefinite', ...DYSPLASIA],
  },
  'fundic-gland-polyp': {
    tumours: ['gastric', 'other'],
    histologies: ['none', 'indefinite', ...DYSPLASIA],
  },
  'inflammatory-polyp': { tumours: ['other'], histologies: ['none'] },
  'hamartomatous-polyp': { tumours: ['other'], histologies: ['none', ...DYSPLASIA] },

  adenocarcinoma: { tumours: [...GLANDS, 'other'], histologies: CARCINOMA },
  'tubular-adenocarcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'papillary-adenocarcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'mucinous-adenocarcinoma': { tumours: [...GLANDS, 'other'], histologies: CARCINOMA },
  'signet-ring-cell-carcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'poorly-cohesive-carcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'mixed-adenocarcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'carcinoma-with-lymphoid-stroma': { tumours: GLANDS, histologies: CARCINOMA },
  'fundic-gland-type-adenocarcinoma': { tumours: ['gastric'], histologies: CARCINOMA },
  'hepatoid-adenocarcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'micropapillary-adenocarcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'serrated-adenocarcinoma': { tumours: BOWEL, histologies: CARCINOMA },
  'adenoma-like-adenocarcinoma': { tumours: BOWEL, histologies: CARCINOMA },
  'medullary-carcinoma': { tumours: GLANDS, histologies: CARCINOMA },
  'undifferentiated-carcinoma': {
    tumours: ['squamous', ...GLANDS, 'other'],
    histologies: CARCINOMA,
  },

  'neuroendocrine-tumour-g1': { tumours: ['other'], histologies: NET },
  'neuroendocrine-tumour-g2': { tumours: ['other'], histologies: NET },
  'neuroendocrine-tumour-g3': { tumours: ['other'], histologies: NET },
  'small-cell-neuroendocrine-carcinoma': { tumours: ['other'], histologies: CARCINOMA },
  'large-cell-neuroendocrine-carcinoma': { tumours: ['other'], histologies: CARCINOMA },
  'mixed-neuroendocrine-non-neuroendocrine-neoplasm': {
    tumours: ['other'],
    histologies: CARCINOMA,
  },

  'granular-cell-tumour': { tumours: ['other'], histologies: OTHER },
  leiomyoma: { tumours: ['other'], histologies: OTHER },
  lipoma: { tumours: ['other'], histologies: OTHER },
  'gastrointestinal-stromal-tumour': { tumours: ['other'], histologies: OTHER },
  lymphoma: { tumours: ['other'], histologies: OTHER },
  melanoma: { tumours: ['other'], histologies: OTHER },
} as const satisfies Record<string, HistologicalTypeRow>;
export type HistologicalType = keyof typeof HISTOLOGICAL_TYPE;
export const HISTOLOGICAL_TYPES = Object.keys(HISTOLOGICAL_TYPE) as [
  HistologicalType,
  ...HistologicalType[],
];

/**
 * The types that are polyps of one kind; a carcinoma may have begun in any.
 *
 * Source: WHO classification of tumours of the digestive system, 5th edition, from memory.
 */
export const POLYP_TYPE_OF: Readonly<Partial<Record<HistologicalType, PolypType>>> = {
  'tubular-adenoma': 'adenoma',
  'tubulovillous-adenoma': 'adenoma',
  'villous-adenoma': 'adenoma',
  'sessile-serrated-lesion': 'sessile-serrated',
  'traditional-serrated-adenoma': 'traditional-serrated',
  'hyperplastic-polyp': 'hyperplastic',
};
