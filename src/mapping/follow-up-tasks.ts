import type { Task } from 'fhir/r4.js';
import type { ItemState, PlanItem, PlanTask } from '../surveillance/index.js';
import { head, type MappingContext, toResource } from './context.js';
import type { CaseResource, Draft } from './draft.js';
import { requestCode } from './follow-up-code.js';
import { planNumber, sentencesOf } from './follow-up-requests.js';

/**
 * What a person decides or does for the follow-up, as one Task each for the worklist of the unit.
 * It stands beside the request that it is about and has no owner: the unit gives it to somebody.
 * The check of a booking is about the request that was booked.
 *
 * Source: FHIR R4, Task, code systems task-status and task-intent.
 */
export function toFollowUpTasks(context: MappingContext): readonly Draft<Task>[] {
  const { plan } = context.known;
  const groupIdentifier = planNumber(context, plan);
  return plan.items
    .filter(({ kind }) => kind === 'task')
    .map((item) => ({
      key: item.key,
      resource: {
        resourceType: 'Task',
        ...head(context, 'Task', item.key, 'dr-follow-up-task'),
        groupIdentifier,
        status: STATUSES[item.state],
        intent: 'plan',
        priority: item.urgency,
        code: context.concept(requestCode(item)),
        focus: toResource(context, 'ServiceRequest', item.about ?? item.key),
        for: context.patient,
        ...context.inEncounter,
        authoredOn: plan.calculatedAt,
        reasonReference: toResource(context, 'Observation', 'curability'),
        note: sentencesOf(item).map((text) => ({ text })),
        ...restriction(item),
      },
    }));
}

const BOOKING_CHECK: PlanTask = 'booking-check';

/** Whether a resource asks to look at a booking. */
export const isCheckOfBooking = (resource: CaseResource): boolean =>
  resource.resourceType === 'Task' &&
  resource.code?.coding?.some(({ code }) => code === BOOKING_CHECK) === true;

/** A task that no plan has any more. */
export const taskGone = (task: Task): Task => ({ ...task, status: 'cancelled' });

const STATUSES: Readonly<Record<ItemState, Task['status']>> = {
  provisional: 'draft',
  open: 'requested',
  'to-confirm': 'on-hold',
  done: 'completed',
  superseded: 'cancelled',
  revoked: 'cancelled',
};

const restriction = ({ due }: PlanItem): Pick<Task, 'restriction'> =>
  due === undefined ? {} : { restriction: { period: { start: due.earliest, end: due.latest } } };
