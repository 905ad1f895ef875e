/** Where a colorectal lesion lies, from its beginning to its end. */
const EXACT_PLACES = [
  'caecum',
  'ascending',
  'hepatic-flexure',
  'transverse',
  'splenic-flexure',
  'descending',
  'sigmoid',
  'rectosigmoid',
  'rectum',
] as const;

/** `colon`: somewhere above the rectum; `flexure`: one of the two. */
const PLACES = [...EXACT_PLACES, 'colon', 'flexure'] as const;
export type Place = (typeof PLACES)[number];

/**
 * The field of the place.
 *
 * @param unknown words that leave an item of the score open, so that the place is missing
 */
export const placeField = <const W extends Place>(unknown: readonly W[]) => ({
  type: 'word' as const,
  words: PLACES,
  unknown,
  says: 'where the lesion lies; colon: somewhere above the rectum, flexure: one of the two',
});

export const SIZE = {
  type: 'number',
  unit: 'mm',
  from: 0,
  to: 1000,
  says: 'size of the lesion',
} as const;

export const CIRCUMFERENCE = {
  type: 'number',
  unit: '%',
  from: 0,
  to: 100,
  says: 'share of the circumference that the lesion takes',
} as const;

const LST_KINDS = ['G', 'NG', 'none'] as const;
export type LstKind = (typeof LST_KINDS)[number];
export const LST = {
  type: 'word',
  words: LST_KINDS,
  says: 'laterally spreading tumour: granular, non-granular, or none',
} as const;
