import { determined, type Finding, indeterminate } from '../kernel/index.js';
import { cite } from '../references/index.js';

const STATED = cite('esdPractice', 'share of the lumen as the operator states it', 'practice');
const BY_WIDTH = cite('esdPractice', 'width of the defect over pi x lumen diameter', 'derived');

/** The mucosal defect that the resection left; lengths in mm. */
export interface Defect {
  readonly circumferencePercent?: number | undefined;
  readonly widthMm?: number | undefined;
  readonly lumenDiameterMm?: number | undefined;
}

export interface DefectCircumference {
  /** Share of the luminal circumference, 0 to 100. */
  readonly percent: number;
  readonly from: 'operator' | 'width';
}

/**
 * Share of the circumference that the mucosal defect takes: as stated, else computed from its
 * width and the lumen diameter that the sender assumed.
 *
 * Source: arithmetic.
 * Indeterminate: when it is neither stated nor computable.
 */
export function defectCircumference(defect: Defect): Finding<DefectCircumference> {
  const { circumferencePercent, widthMm, lumenDiameterMm } = defect;
  if (circumferencePercent !== undefined) {
    return determined({ percent: circumferencePercent, from: 'operator' }, [STATED]);
  }
  if (widthMm === undefined || lumenDiameterMm === undefined) {
    return indeterminate(['defect.circumferencePercent']);
  }
  const percent = Math.min(100, (100 * widthMm) / (Math.PI * lumenDiameterMm));
  return determined({ percent, from: 'width' }, [BY_WIDTH]);
}
