import { type Afterwards, type Assessment, assess, assessEvents } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { type Knowledge, knowledgeOf } from './knowledge.js';
import type { RecordMessage } from './message.js';

/**
 * What is known means, with the report that is in force. The review of the case is also that of
 * its events; checks that the unit has switched off are silent.
 */
export function assessKnown(known: Knowledge, unit: UnitSettings): Assessment {
  const [report] = known.reports;
  const { fields } = known.esdCase;
  const found = assess(report === undefined ? { fields } : { fields, report: report.fields }, unit);
  const off: readonly string[] = unit.checksOff;
  const later = assessAfterwards(known).review.filter(({ check }) => !off.includes(check));
  return { ...found, review: [...found.review, ...later] };
}

/** @returns undefined while the case itself has not come */
export function assessMessages(
  messages: readonly RecordMessage[],
  unit: UnitSettings,
): Assessment | undefined {
  const known = knowledgeOf(messages);
  return known === undefined ? undefined : assessKnown(known, unit);
}

/** What came after the dissection means. */
export function assessAfterwards({ esdCase, events, examinations, asOf }: Knowledge): Afterwards {
  return assessEvents(
    esdCase.fields,
    events.map(({ fields }) => fields),
    examinations.map(({ fields }) => fields),
    asOf,
  );
}
