/** Words and fields that the questions of several rule sets share; lengths in mm. */
const POLYP_TYPES = [
  'adenoma',
  'sessile-serrated',
  'traditional-serrated',
  'hyperplastic',
] as const;
export type PolypType = (typeof POLYP_TYPES)[number];

const POLYP_HISTOLOGIES = [
  'none',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
  'carcinoma',
] as const;
export type PolypHistology = (typeof POLYP_HISTOLOGIES)[number];

export const esdDate = { type: 'date', says: 'day of the dissection' } as const;
export const sizeMm = {
  type: 'number',
  says: 'long axis of the lesion',
  unit: 'mm',
  from: 0,
  to: 400,
} as const;
export const polypType = {
  type: 'word',
  says: 'kind of polyp',
  words: POLYP_TYPES,
} as const;
export const polypHistology = {
  type: 'word',
  says: 'highest grade in the specimen; none: no dysplasia',
  words: POLYP_HISTOLOGIES,
} as const;
export const enBloc = { type: 'flag', says: 'removed in one piece' } as const;
export const r0 = { type: 'flag', says: 'en bloc with free margins' } as const;
export const SERRATED = ['sessile-serrated', 'traditional-serrated', 'hyperplastic'] as const;
