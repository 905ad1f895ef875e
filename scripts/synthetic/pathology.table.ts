import type { Organ, Tumour } from '../../src/contract/index.js';
import { COMMON, INVENTED, RECTAL_FIBROSIS, UNTUTORED } from './sources.table.js';

type Histology =
  | 'low-grade-dysplasia'
  | 'high-grade-dysplasia'
  | 'carcinoma'
  | 'neuroendocrine-tumour';

interface HistologyRow {
  readonly value: Histology;
  readonly weight: number;
  readonly from: string;
}

const row = (value: Histology, weight: number): HistologyRow => ({ value, weight, from: INVENTED });

/** Of 100 resected lesions. */
export const HISTOLOGY: Readonly<Record<Tumour, readonly HistologyRow[]>> = {
  squamous: [row('high-grade-dysplasia', 18), row('carcinoma', 82)],
  barrett: [row('low-grade-dysplasia', 6), row('high-grade-dysplasia', 24), row('carcinoma', 70)],
  gastric: [row('low-grade-dysplasia', 18), row('high-grade-dysplasia', 17), row('carcinoma', 65)],
  duodenal: [row('low-grade-dysplasia', 52), row('high-grade-dysplasia', 38), row('carcinoma', 10)],
  colorectal: [
    row('low-grade-dysplasia', 38),
    row('high-grade-dysplasia', 34),
    row('carcinoma', 28),
  ],
  other: [row('neuroendocrine-tumour', 100)],
};

type Layer = 'ep' | 'lpm' | 'mm' | 'm' | 'sm' | 'mp';
interface LayerRow {
  readonly value: Layer;
  readonly weight: number;
  readonly from: string;
}

const layer = (value: Layer, weight: number): LayerRow => ({ value, weight, from: INVENTED });
const GLAND = [layer('m', 80), layer('sm', 19), layer('mp', 1)];

/** Deepest layer, of 100 carcinomas (of 100 neuroendocrine tumours in the last row). */
export const DEPTH: Readonly<Record<Tumour, readonly LayerRow[]>> = {
  squamous: [
    layer('ep', 22),
    layer('lpm', 44),
    layer('mm', 17),
    layer('sm', 16.5),
    layer('mp', 0.5),
  ],
  barrett: GLAND,
  gastric: GLAND,
  duodenal: GLAND,
  colorectal: [layer('m', 52), layer('sm', 46), layer('mp', 2)],
  other: [layer('m', 15), layer('sm', 85)],
};

/** Submucosal invasion, um: median, and standard deviation of the natural logarithm. */
export const SUBMUCOSAL_DEPTH = {
  squamous: { medianUm: 260, spread: 0.9, from: INVENTED },
  others: { medianUm: 650, spread: 0.9, from: INVENTED },
};

/** Invasion of vessels, of 100 carcinomas: within the mucosa, and deeper. */
export const VESSELS = {
  mucosa: { ly: { percent: 0.6, from: INVENTED }, v: { percent: 0.2, from: INVENTED } },
  deeper: { ly: { percent: 13, from: INVENTED }, v: { percent: 7, from: INVENTED } },
};

export const DIFFERENTIATION = [
  { value: 'well', weight: 58, from: INVENTED },
  { value: 'moderate', weight: 34, from: INVENTED },
  { value: 'poor', weight: 5, from: INVENTED },
  { value: 'signet', weight: 2, from: INVENTED },
  { value: 'mucinous', weight: 1, from: INVENTED },
] as const;

/** Of 100 colorectal carcinomas in the submucosa. */
export const BUDDING = [
  { value: '1', weight: 76, from: INVENTED },
  { value: '2', weight: 16, from: INVENTED },
  { value: '3', weight: 8, from: INVENTED },
] as const;

/** Of 100 gastric carcinomas. */
export const ULCER = { percent: 13, from: INVENTED };

/** Type of a colorectal lesion without carcinoma. */
export const POLYP = [
  { value: 'adenoma', weight: 84, from: INVENTED },
  { value: 'sessile-serrated', weight: 11, from: INVENTED },
  { value: 'traditional-serrated', weight: 5, from: INVENTED },
] as const;

interface FreeMargins {
  readonly percent: number;
  readonly from: string;
}

/** Of 100 that came out en bloc, those with both margins free: R0 / en bloc of the source. */
export const FREE_OF_EN_BLOC: Readonly<
  Record<Organ, Readonly<Record<'severe' | 'other', FreeMargins>>>
> = {
  oesophagus: {
    severe: { percent: 82, from: INVENTED },
    other: { percent: 91, from: INVENTED },
  },
  stomach: { severe: { percent: 86, from: INVENTED }, other: { percent: 94, from: INVENTED } },
  duodenum: { severe: { percent: 75, from: INVENTED }, other: { percent: 86, from: INVENTED } },
  colon: {
    severe: { percent: (61.4 / 86.4) * 100, from: `${RECTAL_FIBROSIS}; derived` },
    other: { percent: (71.1 / 81.9) * 100, from: `${UNTUTORED}; derived` },
  },
  rectum: {
    severe: { percent: (61.4 / 86.4) * 100, from: `${RECTAL_FIBROSIS}; derived` },
    other: { percent: (79.7 / 96.6) * 100, from: `${RECTAL_FIBROSIS}; derived` },
  },
};

interface MarginFault {
  readonly value: { readonly margin: 'hm' | 'vm'; readonly state: '1' | 'X' };
  readonly weight: number;
  readonly from: string;
}

/** What is wrong with margins that are not free; the vertical one only where tumour is deep. */
export const MARGIN_FAULT: readonly MarginFault[] = [
  { value: { margin: 'hm', state: '1' }, weight: 62, from: INVENTED },
  { value: { margin: 'hm', state: 'X' }, weight: 22, from: INVENTED },
  { value: { margin: 'vm', state: '1' }, weight: 12, from: INVENTED },
  { value: { margin: 'vm', state: 'X' }, weight: 4, from: INVENTED },
];

/** Days from the procedure to the final report: median, and spread of the natural logarithm. */
export const REPORT_DELAY = { medianDays: 7, spread: 0.5, mostDays: 90, from: INVENTED };
/** Of 100 specimens. */
export const NEVER_REPORTED = { percent: 2.5, from: INVENTED };
export const INTERIM_FIRST = { percent: 7, from: INVENTED };
export const AMENDED = { percent: 3, from: INVENTED };
/** Of 100 reports; days after which the amended report comes. */
export const AMENDED_AFTER_DAYS = { least: 3, most: 40, from: INVENTED };
/** The fixed tumour by the fresh one. */
export const SHRINKAGE = { least: 0.85, most: 1, from: COMMON };
