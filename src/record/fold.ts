import type { Assessment } from '../assessment/index.js';
import type { UnitSettings } from '../contract/index.js';
import { invariant } from '../kernel/index.js';
import { assessKnown, assessMessages } from './assess-known.js';
import { type Change, verdictChange, verdictSince } from './change.js';
import { knowledgeOf, type SetAside } from './knowledge.js';
import { inOrder, latestOf, lineOf } from './lines.js';
import { keyOf, type RecordMessage } from './message.js';
import { judgedBefore, planKnown, reviewPlan } from './plan-known.js';
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
  const plan = planKnown({ ...known, assessment }, unit, judgedBefore(ordered, known, unit));
  const change = changeBy(latest, ordered, assessment, unit);
  return {
    caseId,
    state: ordered.length,
    stateAt: latest.fields.sentAt,
    settingsVersion: unit.version,
    messages: ordered,
    assessment: reviewPlan({ ...known, assessment }, plan, unit),
    plan,
    ...(change === undefined ? {} : { change }),
    setAside: known.setAside.map(toNamed),
  };
}

function toNamed({ message, problems }: SetAside): RecordVersion['setAside'][number] {
  const { kind, fields } = message;
  const key = keyOf(message);
  return {
    kind,
    source: fields.source,
    ...(key === undefined ? {} : { key }),
    revision: fields.revision,
    problems,
  };
}

/** Compares with the record as it would be without the message that was sent last. */
function changeBy(
  latest: RecordMessage,
  messages: readonly RecordMessage[],
  now: Assessment,
  unit: UnitSettings,
): Change | undefined {
  const others = messages.filter((message) => message !== latest);
  const without = assessMessages(others, unit);
  if (without === undefined) return undefined;
  const { kind, fields } = latest;
  const verdict =
    'verdictWas' in fields && fields.verdictWas !== undefined
      ? verdictSince(fields.verdictWas, now)
      : verdictChange(without, now);
  return {
    by: {
      kind,
      revision: fields.revision,
      ...('asOf' in fields ? { reason: fields.reason } : {}),
    },
    ...(verdict === undefined ? {} : { verdict }),
  };
}
