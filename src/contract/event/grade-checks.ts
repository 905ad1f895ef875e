import type { CrossCheck } from '../cross-check.js';
import type { ReadableEvent } from './readable-event.js';
import { GRADES, type Grade } from './words.table.js';

/** What an intervention through the endoscope is at least. Source: AGREE, table (IIIa). */
const LEAST_OF_ENDOSCOPY = 'IIIa' satisfies Grade;
/** Source: AGREE, table (V; from memory); Clavien-Dindo, table (V). */
const DEATH = 'V' satisfies Grade;

const isBelow = (grade: Grade | undefined, least: Grade): boolean =>
  grade !== undefined && GRADES.indexOf(grade) < GRADES.indexOf(least);

/** Stated grades that contradict each other or the facts beside them. */
export const gradeChecks: readonly CrossCheck<ReadableEvent>[] = [
  {
    rule: 'CC-11',
    message: 'Grade V is death in both gradings, yet one alone says it.',
    expected: 'grades.agree and grades.clavienDindo both V, or neither',
    broken: ({ grades: { agree, clavienDindo } = {} }) =>
      agree !== undefined &&
      clavienDindo !== undefined &&
      (agree === DEATH) !== (clavienDindo === DEATH)
        ? [agree === DEATH ? '/grades/clavienDindo' : '/grades/agree']
        : [],
  },
  {
    rule: 'CC-11',
    message: 'An endoscopic intervention is of a higher grade.',
    expected: `grades.agree ${LEAST_OF_ENDOSCOPY} or higher with course.intervention endoscopic`,
    broken: ({ grades = {}, course = {} }) =>
      course.intervention === 'endoscopic' && isBelow(grades.agree, LEAST_OF_ENDOSCOPY)
        ? ['/grades/agree']
        : [],
  },
  {
    rule: 'grade-of-death',
    message: 'Grade V says that the patient died, and no other grade does.',
    expected: 'V where the patient died of the event, and only there',
    broken: ({ kind, grades = {}, course = {} }) => {
      const died = kind === 'death' ? true : course.died;
      if (died === undefined) return [];
      return (['agree', 'clavienDindo'] as const)
        .filter((grading) => grades[grading] !== undefined)
        .filter((grading) => (grades[grading] === DEATH) !== died)
        .map((grading) => `/grades/${grading}`);
    },
  },
];
