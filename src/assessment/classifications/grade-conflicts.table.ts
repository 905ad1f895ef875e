import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { ConditionOn } from '../../rules/index.js';
import type { AdverseEvent, Grade } from './adverse-event-fields.table.js';

/** The grades of one event as they were stated, and the intervention that it needed. */
export type StatedGrades = {
  readonly agree?: Grade;
  readonly clavienDindo?: Grade;
  readonly intervention?: AdverseEvent['intervention'];
};

/** Grades that cannot both stand: all tests hold. */
export interface GradeConflict {
  readonly conflict: string;
  readonly when: ConditionOn<Required<StatedGrades>>;
  readonly says: string;
  readonly cites: readonly Citation[];
}

const BELOW_III = ['none', 'I', 'II'] as const;
const BELOW_V = [...BELOW_III, 'IIIa', 'IIIb', 'IVa', 'IVb'] as const;
const DEATH = [
  cite('clavienDindo2004', 'table, as reproduced: V is death', 'published'),
  cite('agree2022', 'table, grade V; from memory', 'recalled'),
];

/** A grade that was not stated contradicts nothing. */
export const GRADE_CONFLICTS: readonly GradeConflict[] = [
  {
    conflict: 'death-in-agree-only',
    when: { agree: { is: ['V'] }, clavienDindo: { is: BELOW_V } },
    says: 'Grade V is death in both: AGREE says V and Clavien-Dindo does not.',
    cites: DEATH,
  },
  {
    conflict: 'death-in-clavien-dindo-only',
    when: { clavienDindo: { is: ['V'] }, agree: { is: BELOW_V } },
    says: 'Grade V is death in both: Clavien-Dindo says V and AGREE does not.',
    cites: DEATH,
  },
  {
    conflict: 'endoscopic-intervention-below-iiia',
    when: { intervention: { is: ['endoscopic'] }, agree: { is: BELOW_III } },
    says: 'An endoscopic intervention is AGREE IIIa or higher.',
    cites: [cite('agree2022', 'table, as reproduced: IIIa', 'published')],
  },
];
