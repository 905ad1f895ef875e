import { type Assessment, reviewFirstLook } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import {
  type FollowUpPlan,
  firstLookWeeks,
  planFacts,
  planFollowUp,
} from '../surveillance/index.js';
import { assessKnown } from './assess-known.js';
import { earlierSets } from './earlier-sets.js';
import { isOfPatient, type Knowledge, knowledgeOf } from './knowledge.js';
import type { RecordMessage } from './message.js';

/** What is or was known, with its verdict. */
export interface Judged extends Knowledge {
  readonly assessment: Assessment;
}

/** What was known at an earlier time, or could have been. */
export interface JudgedBefore extends Judged {
  /** Whether it was, had the messages come as they were sent. */
  readonly stood: boolean;
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
): readonly JudgedBefore[] {
  return earlierSets(messages).flatMap(({ messages: set, stood }) => {
    const was = knowledgeOf(set);
    // A revision for another patient came too late and was never applied.
    const isOther = was === undefined || !isOfPatient(was.esdCase, now.esdCase);
    return isOther ? [] : [{ ...was, assessment: assessKnown(was, unit), stood }];
  });
}

/**
 * The assessment with what the review says of the plan: the first look at the scar.
 *
 * @param plan of the same
 */
export function reviewPlan(now: Judged, plan: FollowUpPlan, unit: UnitSettings): Assessment {
  const { assessment, esdCase } = now;
  const weeks = firstLookWeeks(plan, planFacts(now));
  const remarks = reviewFirstLook(esdCase.fields, assessment, weeks, unit);
  if (remarks.length === 0) return assessment;
  return { ...assessment, review: [...assessment.review, ...remarks] };
}

/**
 * What comes after the case.
 *
 * @param before what an earlier plan may have rested on; what it alone asked for is superseded
 */
export const planKnown = (
  now: Judged | JudgedBefore,
  unit: UnitSettings,
  before: readonly JudgedBefore[] = [],
): FollowUpPlan => planFollowUp(planFacts(now), unit, before.map(planFacts));
