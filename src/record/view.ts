import type { Afterwards, Assessment } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { invariant } from '../kernel/index.js';
import { assessAfterwards, assessKnown } from './assess-known.js';
import { earlierSets } from './earlier-sets.js';
import { isOfPatient, type Knowledge, knowledgeOf } from './knowledge.js';
import type { RecordVersion } from './version.js';

/** What is known, with what it means. */
export interface Assessed extends Knowledge {
  readonly assessment: Assessment;
  /** What its events and examinations mean. */
  readonly afterwards: Afterwards;
}

/** A record version as mapping reads it: what is known now, and what was or could have been. */
export interface RecordView {
  readonly version: RecordVersion;
  readonly now: Assessed;
  /** What fewer of the messages, or lower revisions of them, say; see `earlierSets`. */
  readonly before: readonly Assessed[];
}

/** What a record version says is known now. */
export function presentOf({ messages, assessment }: RecordVersion): Assessed {
  const known = knowledgeOf(messages);
  invariant(known !== undefined, 'a record version has its case');
  return assessed(known, assessment);
}

/**
 * Opens a record version. Whatever a lower revision said and the present one does not was perhaps
 * sent, so mapping takes it back; that depends on the messages alone, never on what was sent when.
 */
export function viewRecord(version: RecordVersion, unit: UnitSettings): RecordView {
  const now = presentOf(version);
  const before = earlierSets(version.messages).flatMap((set) => {
    const was = knowledgeOf(set);
    // A revision for another patient came too late and was never applied.
    const isOther = was === undefined || !isOfPatient(was.esdCase, now.esdCase);
    return isOther ? [] : [assessed(was, assessKnown(was, unit))];
  });
  return { version, now, before };
}

const assessed = (known: Knowledge, assessment: Assessment): Assessed => ({
  ...known,
  assessment,
  afterwards: assessAfterwards(known),
});
