import { type Assessment, assess } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { invariant } from '../kernel/index.js';
import { type Change, verdictChange } from './change.js';
import { type Knowledge, knowledgeOf } from './knowledge.js';
import { inOrder, latestOf, lineOf } from './lines.js';
import type { RecordMessage } from './message.js';
import type { RecordVersion } from './version.js';

/**
 * What the messages of a case say together. A pure fold over a set: the order in which they came
 * and how often plays no part.
 *
 * @param messages at least one; no two of the same line and revision
 * @returns undefined while the case itself has not come
 * @throws InvariantError when there is none, or two share a revision: the journal forbids both
 */
export function foldRecord(
  caseId: string,
  messages: readonly RecordMessage[],
  unit: UnitSettings,
): RecordVersion | undefined {
  const ordered = inOrder(messages);
  const latest = latestOf(ordered);
  invariant(latest !== undefined, 'a record has at least one message');
  const revisions = new Set(ordered.map((m) => `${lineOf(m)}|${m.fields.revision}`));
  invariant(revisions.size === ordered.length, 'each revision of a message occurs once');
  const known = knowledgeOf(ordered);
  if (known === undefined) return undefined;
  const assessment = assessKnown(known, unit);
  const change = changeBy(latest, ordered, assessment, unit);
  return {
    caseId,
    state: ordered.length,
    stateAt: latest.fields.sentAt,
    settingsVersion: unit.version,
    messages: ordered,
    assessment,
    ...(change === undefined ? {} : { change }),
    setAside: known.setAside.map(({ message, problems }) => ({
      kind: message.kind,
      revision: message.fields.revision,
      problems,
    })),
  };
}

/** What is known, with what it means. */
export interface Assessed extends Knowledge {
  readonly assessment: Assessment;
}

/** A record version as mapping reads it: what is known now, and what was or could have been. */
export interface RecordView {
  readonly version: RecordVersion;
  readonly now: Assessed;
  /** With one line of messages as it was at a lower revision, or without it. */
  readonly before: readonly Assessed[];
}

/**
 * Opens a record version. Whatever a lower revision said and the present one does not was perhaps
 * sent, so mapping takes it back; that depends on the messages alone, never on what was sent when.
 */
export function viewRecord(version: RecordVersion, unit: UnitSettings): RecordView {
  const { messages, assessment } = version;
  const known = knowledgeOf(messages);
  invariant(known !== undefined, 'a record version has its case');
  const before = earlierSets(messages).flatMap((set) => {
    const was = knowledgeOf(set);
    return was === undefined ? [] : [{ ...was, assessment: assessKnown(was, unit) }];
  });
  return { version, now: { ...known, assessment }, before };
}

/** The messages with one line cut back to each of its lower revisions, or left out. */
function earlierSets(messages: readonly RecordMessage[]): readonly (readonly RecordMessage[])[] {
  const lines = [...new Set(messages.map(lineOf))];
  return lines.flatMap((line) => {
    const revisions = messages.filter((message) => lineOf(message) === line);
    const others = messages.filter((message) => lineOf(message) !== line);
    return revisions.map((_, i) => [...others, ...revisions.slice(0, i)]);
  });
}

function assessKnown({ esdCase, reports }: Knowledge, unit: UnitSettings): Assessment {
  const [report] = reports;
  const { fields } = esdCase;
  return assess(report === undefined ? { fields } : { fields, report: report.fields }, unit);
}

/** Compares with the record as it would be without the message that was sent last. */
function changeBy(
  latest: RecordMessage,
  messages: readonly RecordMessage[],
  now: Assessment,
  unit: UnitSettings,
): Change | undefined {
  const without = knowledgeOf(messages.filter((message) => message !== latest));
  if (without === undefined) return undefined;
  const verdict = verdictChange(assessKnown(without, unit), now);
  return {
    by: { kind: latest.kind, revision: latest.fields.revision },
    ...(verdict === undefined ? {} : { verdict }),
  };
}
