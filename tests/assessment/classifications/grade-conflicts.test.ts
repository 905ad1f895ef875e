import { describe, expect, it } from 'vitest';
import { gradeConflicts } from '../../../src/assessment/classifications/grade-conflicts.js';
import type { StatedGrades } from '../../../src/assessment/classifications/grade-conflicts.table.js';
import { everyQuestion } from '../../support/every-question.js';

const GRADES = ['none', 'I', 'II', 'IIIa', 'IIIb', 'IVa', 'IVb', 'V'] as const;
const INTERVENTIONS = ['none', 'endoscopic', 'radiological', 'surgical'] as const;
const EVERY = everyQuestion<Required<StatedGrades>>({
  agree: [...GRADES],
  clavienDindo: [...GRADES],
  intervention: [...INTERVENTIONS],
});

const namesOf = (stated: StatedGrades) => gradeConflicts(stated).map(({ conflict }) => conflict);

describe('grades of one adverse event', () => {
  // Source: V is death in Clavien-Dindo (Ann Surg 2004;240:205, as reproduced) and in AGREE (from
  // memory); an endoscopic intervention is AGREE IIIa (Gastrointest Endosc 2022;95:1078, as
  // reproduced).
  it('contradict each other where one alone is V, or an endoscopic intervention is below IIIa', () => {
    for (const stated of EVERY) {
      const oneIsDeath = (stated.agree === 'V') !== (stated.clavienDindo === 'V');
      const rank = GRADES.indexOf(stated.agree);
      const isTooLow = stated.intervention === 'endoscopic' && rank < GRADES.indexOf('IIIa');
      expect(namesOf(stated)).toHaveLength((oneIsDeath ? 1 : 0) + (isTooLow ? 1 : 0));
    }
  });

  it.each([
    [{ agree: 'V', clavienDindo: 'IVb' }, ['death-in-agree-only']],
    [{ agree: 'none', clavienDindo: 'V' }, ['death-in-clavien-dindo-only']],
    [{ agree: 'V', clavienDindo: 'V' }, []],
    [{ agree: 'II', intervention: 'endoscopic' }, ['endoscopic-intervention-below-iiia']],
    [{ agree: 'IIIa', intervention: 'endoscopic' }, []],
    [{ agree: 'IIIa', clavienDindo: 'IIIb', intervention: 'endoscopic' }, []],
    [
      { agree: 'I', clavienDindo: 'V', intervention: 'endoscopic' },
      ['death-in-clavien-dindo-only', 'endoscopic-intervention-below-iiia'],
    ],
    [{ agree: 'V' }, []],
    [{ clavienDindo: 'V' }, []],
    [{ intervention: 'endoscopic' }, []],
    [{}, []],
  ] as const)('%j: %j', (stated, conflicts) => {
    expect(namesOf(stated)).toEqual(conflicts);
  });
});
