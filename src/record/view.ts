import type { Afterwards } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { invariant } from '../kernel/index.js';
import type { FollowUpPlan } from '../surveillance/index.js';
import { assessAfterwards } from './assess-known.js';
import { knowledgeOf } from './knowledge.js';
import { type Judged, judgedBefore, planKnown } from './plan-known.js';
import type { RecordVersion } from './version.js';

/** What is known, with what it means. */
export interface Assessed extends Judged {
  /** What its events and examinations mean. */
  readonly afterwards: Afterwards;
  /** What comes after the case. */
  readonly plan: FollowUpPlan;
}

/** What was known at an earlier time, or could have been. */
export interface AssessedBefore extends Assessed {
  /** Whether it was, had the messages come as they were sent. */
  readonly stood: boolean;
}

/** A record version as mapping reads it: what is known now, and what was or could have been. */
export interface RecordView {
  readonly version: RecordVersion;
  readonly now: Assessed;
  /** What fewer of the messages, or lower revisions of them, say; see `earlierSets`. */
  readonly before: readonly AssessedBefore[];
}

/** What a record version says is known now. */
export function presentOf({ messages, assessment, plan }: RecordVersion): Assessed {
  const known = knowledgeOf(messages);
  invariant(known !== undefined, 'a record version has its case');
  return assessed({ ...known, assessment }, plan);
}

/**
 * Opens a record version. Whatever a lower revision said and the present one does not was perhaps
 * sent, so mapping takes it back; that depends on the messages alone, never on what was sent when.
 */
export function viewRecord(version: RecordVersion, unit: UnitSettings): RecordView {
  const now = presentOf(version);
  const before = judgedBefore(version.messages, now, unit).map((was) => ({
    ...assessed(was, planKnown(was, unit)),
    stood: was.stood,
  }));
  return { version, now, before };
}

const assessed = (judged: Judged, plan: FollowUpPlan): Assessed => ({
  ...judged,
  afterwards: assessAfterwards(judged),
  plan,
});
