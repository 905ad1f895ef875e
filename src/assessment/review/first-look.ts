import type { CaseFields, UnitSettings } from '../../contract/index.js';
import type { Assessment, ReviewRemark } from '../assessment.js';
import { reviewCase } from './review-case.js';

/**
 * What the review says of the first look at the scar, which is known once there is a plan.
 *
 * Source: the rows of PC-46.
 *
 * @param firstLookWeeks weeks from the dissection to the first planned look
 */
export function reviewFirstLook(
  fields: CaseFields,
  { defectCircumference: wound }: Pick<Assessment, 'defectCircumference'>,
  firstLookWeeks: number | 'none' | undefined,
  unit: UnitSettings,
): readonly ReviewRemark[] {
  if (firstLookWeeks === undefined || wound.kind !== 'determined') return [];
  const defectPercent = wound.value.percent;
  return reviewCase(fields, { firstLookWeeks, defectPercent }, unit).filter(
    ({ check }) => check === 'PC-46',
  );
}
