/** Grades of tumour budding by the buds counted in a hot spot of 0.785 mm2. */
export interface BuddingBand {
  readonly grade: '1' | '2' | '3';
  readonly fromCount: number;
  readonly toCount: number;
}

/**
 * Ascending, without gaps; the last band has no upper end.
 *
 * Source: ITBCC 2016 (BD1 0 to 4, BD2 5 to 9, BD3 10 or more buds).
 */
export const BUDDING_BANDS: readonly BuddingBand[] = [
  { grade: '1', fromCount: 0, toCount: 4 },
  { grade: '2', fromCount: 5, toCount: 9 },
  { grade: '3', fromCount: 10, toCount: Infinity },
];
