import { truthOf } from '../../rules/index.js';
import { GRADE_CONFLICTS, type GradeConflict, type StatedGrades } from './grade-conflicts.table.js';

/**
 * Contradictions between the grades of one adverse event.
 *
 * Source: agree2022 and clavienDindo2004, see the table.
 *
 * @returns every conflict; none where what it needs was not stated
 */
export function gradeConflicts(stated: StatedGrades): readonly GradeConflict[] {
  const told: Readonly<Record<string, string | undefined>> = stated;
  return GRADE_CONFLICTS.filter(
    ({ when }) => truthOf(when, (field) => told[field] ?? { needs: field }) === true,
  );
}
