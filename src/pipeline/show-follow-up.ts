import type { Role } from '../contract/index.js';
import type { PlanItem } from '../surveillance/index.js';
import type { FollowUp, ScheduledFollowUp, ScheduledItem } from './follow-ups.js';
import { followUpIdOf } from './naming.js';
import { SCHEDULED_REASONS } from './scheduled.table.js';

const TOLD: readonly string[] = SCHEDULED_REASONS;

/**
 * A follow-up as far as a role may read it: the records team all of it, everybody else what a
 * scheduler needs. A row, a rule or a sentence of a plan tells what the lesion was, so none of
 * them is among that.
 *
 * @param secret the site secret
 */
export function showTo(
  role: Role | undefined,
  followUp: FollowUp,
  secret: string,
): FollowUp | ScheduledFollowUp {
  if (role === 'records-team') return followUp;
  const { item, ...rest } = followUp;
  return { ...rest, item: toScheduled(item, (key) => followUpIdOf(secret, rest.caseId, key)) };
}

function toScheduled(item: PlanItem, idOf: (key: string) => string): ScheduledItem {
  const { task, due, proposed, room, noOpenDay, doneBy, booking, about, replacedBy } = item;
  return {
    kind: item.kind,
    ...(task === undefined ? {} : { task }),
    route: item.route,
    first: item.first,
    urgency: item.urgency,
    ...(due === undefined ? {} : { due }),
    ...(proposed === undefined ? {} : { proposed }),
    ...(room === undefined ? {} : { room }),
    ...(noOpenDay === undefined ? {} : { noOpenDay }),
    state: item.state,
    reasons: item.reasons.filter(({ code }) => TOLD.includes(code)),
    ...(doneBy === undefined ? {} : { doneBy: pickDone(doneBy) }),
    ...(booking === undefined ? {} : { booking }),
    ...(about === undefined ? {} : { about: idOf(about) }),
    ...(replacedBy === undefined ? {} : { replacedBy: idOf(replacedBy) }),
  };
}

/** Whether a report or an examination answered it, and when; not which. */
const pickDone = ({ kind, on, timing }: NonNullable<PlanItem['doneBy']>) => ({ kind, on, timing });
