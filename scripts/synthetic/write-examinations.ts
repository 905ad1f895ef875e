import type { EventFields, ExaminationFields } from '../../src/contract/index.js';
import { addMonths } from '../../src/kernel/index.js';
import {
  CHECKS,
  KEPT,
  KEPT_DAYS,
  LOST_SAID,
  LOST_SAID_AFTER_DAYS,
  NEW_LESION,
} from './course.table.js';
import type { DrawnCourse } from './draw-course.js';
import type { DrawnCase } from './drawn-case.js';
import { envelopeOf, examinationOf, operatorOf } from './identifiers.js';
import { DAY_MS, dayAt, instantAt, MINUTE_MS, startOfDay } from './instants.js';
import { eventAt } from './write-events.js';

/** Examinations in their order, and the word that a patient comes no more. */
export interface FollowUpMessages {
  readonly examinations: readonly ExaminationFields[];
  readonly events: readonly EventFields[];
}

/** @param lastMs nothing that lies later has happened yet */
export function writeFollowUp(
  drawn: DrawnCase,
  course: DrawnCourse,
  lastMs: number,
): FollowUpMessages {
  const { unit, times, procedure } = drawn;
  const endMs = Math.min(lastMs, course.diedMs ?? Infinity, course.surgery?.atMs ?? Infinity);
  if (procedure.specimen === undefined) return { examinations: [], events: [] };
  if (course.declined) {
    const decline = { reason: 'patient-wish' } as const;
    const atMs = times.outMs + 60 * DAY_MS;
    const declined = eventAt(drawn, 'follow-up-declined', atMs, { decline });
    return { examinations: [], events: atMs < endMs ? [declined] : [] };
  }
  const { months } = CHECKS[course.course];
  const chance = drawn.chance('follow-up');
  let examinations: readonly ExaminationFields[] = [];
  let from = dayAt(times.inMs, unit.offsetHours);
  for (let i = 0; ; i += 1) {
    const due = addMonths(from, months[Math.min(i, months.length - 1)] ?? 12);
    const dueMs = startOfDay(due, unit.offsetHours) + chance.whole(480, 900) * MINUTE_MS;
    const kept = chance.pick(KEPT);
    if (kept === 'lost') return { examinations, events: lostOf(drawn, dueMs, endMs) };
    const { least, most } = KEPT_DAYS[kept];
    const atMs = dueMs + chance.whole(least, most) * DAY_MS;
    if (atMs >= endMs) return { examinations, events: [] };
    examinations = [...examinations, examinationAt(drawn, course, atMs, i)];
    from = dayAt(atMs, unit.offsetHours);
  }
}

function lostOf(drawn: DrawnCase, dueMs: number, endMs: number): readonly EventFields[] {
  const chance = drawn.chance('lost');
  const days = chance.whole(LOST_SAID_AFTER_DAYS.least, LOST_SAID_AFTER_DAYS.most);
  const atMs = dueMs + days * DAY_MS;
  const isSaid = chance.happens(LOST_SAID.percent);
  return isSaid && atMs < endMs ? [eventAt(drawn, 'lost-to-follow-up', atMs)] : [];
}

/** @param i number of the examination, from 0 */
function examinationAt(
  drawn: DrawnCase,
  course: DrawnCourse,
  atMs: number,
  i: number,
): ExaminationFields {
  const { unit, lesion } = drawn;
  const chance = drawn.chance(`examination-${i}`);
  const isBowel = lesion.organ === 'colon' || lesion.organ === 'rectum';
  const found = course.recurs && i === 0;
  return {
    schema: 'examination/1',
    ...envelopeOf(drawn),
    examination: examinationOf(drawn, i + 1),
    revision: 1,
    sentAt: instantAt(atMs + DAY_MS, unit.offsetHours),
    examinedOn: dayAt(atMs, unit.offsetHours),
    endoscopist: operatorOf(drawn, unit.operators[0]?.number),
    route: isBowel ? 'lower' : 'upper',
    quality: {
      complete: true,
      ...(isBowel
        ? { bowelPreparation: { right: chance.whole(1, 3), transverse: 3, left: 3 } }
        : { mucosaView: 'clear' }),
      chromoendoscopy: ['image-enhanced'],
      inspectionMin: chance.whole(6, 18),
    },
    scar: found
      ? {
          seen: true,
          finding: 'residual-or-recurrent-neoplasia',
          sizeMm: chance.whole(2, 12),
          biopsy: 'low-grade-dysplasia',
          treatments: ['avulsion'],
        }
      : { seen: true, finding: 'none', biopsy: 'no-neoplasia', treatments: [] },
    newLesions: chance.happens(NEW_LESION.percent)
      ? [
          {
            organ: lesion.organ,
            sizeMm: chance.whole(3, 15),
            histology: 'low-grade-dysplasia',
            removed: true,
          },
        ]
      : [],
    next: { step: 'as-planned' },
  };
}
