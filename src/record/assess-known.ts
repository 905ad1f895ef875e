import { type Afterwards, type Assessment, assess, assessEvents } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { type Knowledge, knowledgeOf } from './knowledge.js';
import type { RecordMessage } from './message.js';

/**
 * What is known means, with the report that is in force. The review of the case is also that of
 * its events; checks that the unit has switched off are silent.
 */
export function assessKnown(known: Knowledge, unit: UnitSettings): Assessment {
  const found = assessOnce(known, unit);
  const off: readonly string[] = unit.checksOff;
  const later = assessAfterwards(known).review.filter(({ check }) => !off.includes(check));
  return { ...found, review: [...found.review, ...later] };
}

interface Answer {
  readonly report: Knowledge['reports'][number] | undefined;
  readonly unit: UnitSettings;
  readonly found: Assessment;
}

/**
 * A fold asks about the same case and report once for each earlier set of the messages beside
 * them. The answer depends on these and the unit alone, and goes when the message of the case goes.
 */
const ANSWERS = new WeakMap<Knowledge['esdCase'], readonly Answer[]>();

function assessOnce({ esdCase, reports: [report] }: Knowledge, unit: UnitSettings): Assessment {
  const answers = ANSWERS.get(esdCase) ?? [];
  const known = answers.find((answer) => answer.report === report && answer.unit === unit);
  if (known !== undefined) return known.found;
  const { fields } = esdCase;
  const found = assess(report === undefined ? { fields } : { fields, report: report.fields }, unit);
  ANSWERS.set(esdCase, [...answers, { report, unit, found }]);
  return found;
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
