import type { EventFields } from '../../contract/index.js';
import { askClass, type ClassRule, type Told } from '../../rules/index.js';
import type { Reason } from '../assessment.js';
import type { Grade } from '../classifications/adverse-event-fields.table.js';
import { AGREE } from '../classifications/agree.table.js';
import { CLAVIEN_DINDO } from '../classifications/clavien-dindo.table.js';
import { gradeConflicts } from '../classifications/grade-conflicts.js';
import {
  interventionFor,
  PLACES,
  toGradeQuestion,
  toLeastQuestion,
} from './adverse-event-question.js';
import type { EventGrades, GradeFinding, GradeOutcome } from './afterwards.js';
import { LAST_DAY } from './kinds.table.js';

/**
 * The grades of one event by its facts, beside those that the unit states.
 *
 * Source: agree2022 and clavienDindo2004, see their tables.
 * Indeterminate: where a fact that was not told decides; the least possible grade is given.
 *
 * @param caused events of the case that name this one as their cause
 * @param days calendar days after the procedure
 */
export function gradeEvent(
  event: EventFields,
  caused: readonly EventFields[],
  days: number,
): EventGrades {
  const told = toGradeQuestion(event, caused);
  const { agree, clavienDindo } = event.grades ?? {};
  const intervention = interventionFor(event, caused);
  const stated = {
    ...(agree === undefined ? {} : { agree }),
    ...(clavienDindo === undefined ? {} : { clavienDindo }),
    ...(intervention === undefined ? {} : { intervention }),
  };
  return {
    event: event.event,
    kind: event.kind,
    days,
    findings: [
      finding('agree', AGREE, agree, refusedByAgree(event, days) ?? gradeBy(AGREE, told, event)),
      finding(
        'clavien-dindo',
        CLAVIEN_DINDO,
        clavienDindo,
        refusedByClavienDindo(event) ?? gradeBy(CLAVIEN_DINDO, told, event),
      ),
    ],
    conflicts: gradeConflicts(stated).map(({ conflict, says, cites }) => ({
      remark: conflict,
      says,
      cites,
    })),
  };
}

function finding(
  rule: GradeFinding['rule'],
  { version }: ClassRule<Grade>,
  stated: Grade | undefined,
  outcome: GradeOutcome,
): GradeFinding {
  return { rule, version, outcome, ...(stated === undefined ? {} : { stated }) };
}

/** AGREE counts what happens within 30 days however likely a link is; later a link is needed. */
function refusedByAgree({ related }: EventFields, days: number): GradeOutcome | undefined {
  if (related !== 'no' || days <= LAST_DAY) return undefined;
  return {
    kind: 'refused',
    because: 'AGREE is not made for an event after 30 days that the dissection did not cause.',
  };
}

function refusedByClavienDindo({ related }: EventFields): GradeOutcome | undefined {
  if (related !== 'no') return undefined;
  return {
    kind: 'refused',
    because: 'Clavien-Dindo grades complications, and the unit says that this is none.',
  };
}

function gradeBy(rule: ClassRule<Grade>, told: Told, event: EventFields): GradeOutcome {
  const { decision } = askClass(rule, told);
  if (decision.kind === 'decided') {
    const reasons = decision.rows.map(({ row, says, cites }): Reason => ({ row, says, cites }));
    return { kind: 'decided', grade: decision.class, reasons };
  }
  const least = askClass(rule, toLeastQuestion(told, event)).decision;
  return {
    kind: 'indeterminate',
    missing: decision.missing.map((field) => PLACES[field] ?? field),
    atLeast: least.kind === 'decided' ? least.class : 'none',
  };
}
