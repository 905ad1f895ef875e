import { assess } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { compareInstants, invariant } from '../kernel/index.js';
import type { CaseMessage, RecordVersion } from './version.js';

/**
 * What the messages of a case say together. A pure fold over a set: the order in which they came
 * and how often plays no part.
 *
 * @param messages at least one; no two of the same revision
 * @throws InvariantError when there is none, or two share a revision: the journal forbids both
 */
export function foldRecord(
  caseId: string,
  messages: readonly CaseMessage[],
  unit: UnitSettings,
): RecordVersion {
  const rising = [...messages].sort((a, b) => revisionOf(a) - revisionOf(b));
  const current = rising.at(-1);
  invariant(current !== undefined, 'a record has at least one message');
  const revisions = new Set(rising.map(revisionOf));
  invariant(revisions.size === rising.length, 'each revision of a case occurs once');
  return {
    caseId,
    state: rising.length,
    stateAt: latestSentAt(rising),
    current,
    earlier: rising.slice(0, -1).map((message) => ({
      ...message,
      assessment: assess(message.esdCase, unit),
    })),
    assessment: assess(current.esdCase, unit),
    settingsVersion: unit.version,
  };
}

const revisionOf = ({ esdCase }: CaseMessage): number => esdCase.fields.revision;

function latestSentAt(messages: readonly CaseMessage[]): string {
  const sent = messages.map(({ esdCase }) => esdCase.fields.sentAt);
  // The same instant written with two offsets: the text decides, so that order plays no part.
  const [latest] = sent.sort((a, b) => compareInstants(b, a) || (a < b ? -1 : 1));
  return latest ?? '';
}
