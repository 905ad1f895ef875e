import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';

/** What the formula of the area rests on. */
export const ELLIPSE = cite(
  'esdPractice',
  'specimen taken as an ellipse: pi/4 x a x b',
  'recalled',
);
const MM2_PER_CM2 = 100;

/** Sizes of a pinned specimen in mm; the axes stand at right angles. */
export interface SpecimenAxes {
  readonly longAxisMm?: number | undefined;
  readonly shortAxisMm?: number | undefined;
}

/**
 * Area of the pinned specimen in cm2, taken as an ellipse.
 *
 * Source: esdPractice (from memory; used in the literature on dissection speed).
 * Indeterminate: when an axis is absent.
 */
export function specimenAreaCm2(axes: SpecimenAxes): Finding<number> {
  const { longAxisMm, shortAxisMm } = axes;
  if (longAxisMm === undefined || shortAxisMm === undefined) {
    return indeterminate([
      ...(longAxisMm === undefined ? ['specimen.longAxisMm'] : []),
      ...(shortAxisMm === undefined ? ['specimen.shortAxisMm'] : []),
    ]);
  }
  return determined(((Math.PI / 4) * longAxisMm * shortAxisMm) / MM2_PER_CM2, [ELLIPSE]);
}
