import { minutesBetween } from '../kernel/index.js';
import { presentOf, readVersion } from '../record/index.js';
import { toAnswer, toWaiting } from './answer.js';
import { listMessages } from './listed-messages.js';
import type { SearchHit, StoredCase } from './ports.js';
import type { CaseView, FoundCase } from './service.js';
import type { PipelineSettings } from './settings.js';

const MIN_PER_DAY = 24 * 60;

/**
 * Where a case stands, for those who may know it.
 *
 * @param now UTC instant
 */
export function toView(stored: StoredCase, { unit }: PipelineSettings, now: string): CaseView {
  const { caseId, state, version: text, delivery, timeline, messages } = stored;
  if (text === undefined) {
    const isOverdue = minutesBetween(delivery.since, now) >= unit.waitingCaseDays * MIN_PER_DAY;
    return {
      ...toWaiting(state),
      ...(isOverdue ? { overdue: true } : {}),
      ...{ caseId, delivery },
      messages: listMessages(messages, undefined),
      timeline,
    };
  }
  const version = readVersion(text);
  const known = presentOf(version);
  const { case: own, revision } = known.esdCase.fields;
  return {
    ...toAnswer(version),
    ...{ caseId, delivery },
    case: { system: own.system, value: own.value },
    revision,
    messages: listMessages(messages, version.setAside),
    timeline,
  };
}

/** @param now UTC instant */
export function toFound(
  { awaitsPathologySince: since, ...hit }: SearchHit,
  now: string,
): FoundCase {
  if (since === undefined) return hit;
  return { ...hit, awaitsPathologyDays: Math.floor(minutesBetween(since, now) / MIN_PER_DAY) };
}
