import type { SentKind } from '../../src/pipeline/index.js';
import { drawCourse } from './draw-course.js';
import { drawCase, type Wanted } from './drawn-case.js';
import { DAY_MS, startOfDay } from './instants.js';
import { leaveOut } from './leave-out.js';
import { LEFT_OUT } from './missing.table.js';
import { writeCase } from './write-case.js';
import { writeEvents } from './write-events.js';
import { writeFollowUp } from './write-examinations.js';
import { writeReports } from './write-pathology.js';

/** A message as its unit would send it. */
export interface SyntheticMessage {
  readonly kind: SentKind;
  /** One JSON object in one line. */
  readonly text: string;
}

/**
 * All messages that the unit has sent of an invented case, in the order in which it sent them: the
 * same in every run with the same seed, units and last day.
 *
 * @param index number of the case, from 0
 */
export function syntheticCase(wanted: Wanted, index: number): readonly SyntheticMessage[] {
  const drawn = drawCase(wanted, index);
  const course = drawCourse(drawn);
  const lastMs = startOfDay(wanted.untilOn, drawn.unit.offsetHours) + DAY_MS;
  const followUp = writeFollowUp(drawn, course, lastMs);
  const missing = drawn.chance('missing');
  // One hand leaves the same out of every revision of a report.
  const ofReports = (): ReturnType<typeof drawn.chance> => drawn.chance('missing-of-reports');
  const later = [
    ...writeReports(drawn).map((report) =>
      sent('pathology', report.sentAt, leaveOut(report, LEFT_OUT.pathology, ofReports())),
    ),
    ...[...writeEvents(drawn, course), ...followUp.events].map((event) =>
      sent('event', event.sentAt, event),
    ),
    ...followUp.examinations.map((examination) =>
      sent('examination', examination.sentAt, leaveOut(examination, LEFT_OUT.examination, missing)),
    ),
  ];
  const first = writeCase(drawn);
  const own = sent('case', first.sentAt, leaveOut(first, LEFT_OUT.case, missing));
  return [
    own,
    ...later.filter(({ sentMs }) => sentMs < lastMs).sort((a, b) => a.sentMs - b.sentMs),
  ];
}

const sent = (kind: SentKind, sentAt: string, message: object) => ({
  kind,
  sentMs: Date.parse(sentAt),
  text: JSON.stringify(message),
});
