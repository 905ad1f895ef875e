import type { Assessment } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { type FollowUpPlan, planFacts, planFollowUp } from '../surveillance/index.js';
import { assessKnown } from './assess-known.js';
import { earlierSets } from './earlier-sets.js';
import { isOfPatient, type Knowledge, knowledgeOf } from './knowledge.js';
import type { RecordMessage } from './message.js';

/** What is or was known, with its verdict. */
export interface Judged extends Knowledge {
  readonly assessment: Assessment;
}

/**
 * What was or could have been known of this patient before, judged by the present rules.
 *
 * @param messages in the order of a record
 * @param now what they say together
 */
export function judgedBefore(
  messages: readonly RecordMessage[],
  now: Knowledge,
  unit: UnitSettings,
): readonly Judged[] {
  return earlierSets(messages).flatMap((set) => {
    const was = knowledgeOf(set);
    // A revision for another patient came too late and was never applied.
    const isOther = was === undefined || !isOfPatient(was.esdCase, now.esdCase);
    return isOther ? [] : [{ ...was, assessment: assessKnown(was, unit) }];
  });
}

/**
 * What comes after the case.
 *
 * @param before what an earlier plan may have rested on; what it alone asked for is superseded
 */
export const planKnown = (
  now: Judged,
  unit: UnitSettings,
  before: readonly Judged[] = [],
): FollowUpPlan => planFollowUp(planFacts(now), unit, before.map(planFacts));
