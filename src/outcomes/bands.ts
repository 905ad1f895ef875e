import { invariant } from '../kernel/index.js';
import { NOT_TOLD, type SizeBand, type TraineeBand } from './words.js';

interface Band<Name> {
  readonly name: Name;
  /** Included; the next band begins where this one ends. */
  readonly from: number;
}

/**
 * Longest axis of the lesion as the operator saw it, in mm. 30 mm: border of the first lesions of
 * a trainee (esgeCurriculum2019, abstract); the other borders are common practice, no source.
 */
export const SIZE_BAND_ROWS: readonly Band<SizeBand>[] = [
  { name: 'under-20-mm', from: 0 },
  { name: '20-to-29-mm', from: 20 },
  { name: '30-to-49-mm', from: 30 },
  { name: '50-mm-and-more', from: 50 },
];

/** Percent of the dissection that a trainee did. Common practice, no source. */
const HALF_PERCENT = 50;

/** @param longAxisMm of the lesion, 0 or more */
export function sizeBandOf(longAxisMm: number): SizeBand {
  const band = SIZE_BAND_ROWS.findLast(({ from }) => from <= longAxisMm);
  invariant(band !== undefined, 'a length is 0 or more');
  return band.name;
}

/** @param percent 0 to 100; undefined: not told */
export function traineeBandOf(percent: number | undefined): TraineeBand {
  if (percent === undefined) return NOT_TOLD;
  if (percent === 0) return 'none';
  if (percent === 100) return 'all';
  return percent < HALF_PERCENT ? 'less-than-half' : 'half-and-more';
}
