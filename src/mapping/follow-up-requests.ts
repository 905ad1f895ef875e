import type { Reference, ServiceRequest } from 'fhir/r4.js';
import { keyedUuid } from '../kernel/index.js';
import type { FollowUpPlan, ItemState, PlanItem } from '../surveillance/index.js';
import { head, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { requestCode } from './follow-up-code.js';

/**
 * What comes after the case: each examination and task of the plan as one proposal to those who
 * order and book. The key is that of the item, so that a scheduler keeps it as long as it means
 * the same. To look at a booking is a Task alone: it asks for nothing beside the request that was
 * booked.
 *
 * Source: FHIR R4, ServiceRequest, code systems request-status and request-intent.
 */
export function toFollowUpRequests(context: MappingContext): readonly Draft<ServiceRequest>[] {
  const { plan } = context.known;
  const requisition = planNumber(context, plan);
  return plan.items
    .filter(({ about }) => about === undefined)
    .map((item) => ({
      key: item.key,
      resource: {
        resourceType: 'ServiceRequest',
        ...head(context, 'ServiceRequest', item.key, 'dr-follow-up-request'),
        ...replacing(context, item, plan),
        requisition,
        status: STATUSES[item.state],
        intent: 'plan',
        priority: item.urgency,
        code: context.concept(requestCode(item)),
        subject: context.patient,
        ...context.inEncounter,
        ...(item.due === undefined
          ? {}
          : { occurrencePeriod: { start: item.due.earliest, end: item.due.latest } }),
        authoredOn: plan.calculatedAt,
        reasonReference: [toResource(context, 'Observation', 'curability')],
        supportingInfo: [context.procedure],
        note: sentencesOf(item).map((text) => ({ text })),
      },
    }));
}

/**
 * A request that no plan asks for any more. It was right when it was made, so it is revoked and
 * not entered in error.
 */
export const revoked = (request: ServiceRequest): ServiceRequest => ({
  ...request,
  status: 'revoked',
});

/**
 * On hold says that a person confirms it before anybody goes on; what may follow before pathology
 * is back is a draft that nobody books.
 */
const STATUSES: Readonly<Record<ItemState, ServiceRequest['status']>> = {
  provisional: 'draft',
  open: 'active',
  'to-confirm': 'on-hold',
  done: 'completed',
  superseded: 'revoked',
  revoked: 'revoked',
};

/** The same for equal plans, whatever the state of the record; opaque. */
export const planNumber = ({ caseId, settings }: MappingContext, { items }: FollowUpPlan) => {
  const system = `${settings.identifierBase}/follow-up-plan`;
  return {
    system,
    value: keyedUuid(settings.secret, system, `${caseId}|${JSON.stringify(items)}`),
  };
};

/** The requests that this one stands instead of. */
function replacing(
  context: MappingContext,
  { key }: PlanItem,
  { items }: FollowUpPlan,
): { readonly replaces?: Reference[] } {
  const gone = items.filter(({ replacedBy }) => replacedBy === key);
  if (gone.length === 0) return {};
  return { replaces: gone.map((item) => toResource(context, 'ServiceRequest', item.key)) };
}

/** What to look for, the day that is best, why it is asked, and by which rule. */
export function sentencesOf({
  look,
  due,
  proposed,
  room,
  says,
  reasons,
  rule,
  version,
  row,
}: PlanItem): readonly string[] {
  const target = proposed?.target ?? due?.target;
  const why = [...says, ...reasons.map((reason) => reason.says)];
  return [
    ...(look === '' ? [] : [look]),
    ...(target === undefined ? [] : [`Best on ${target}.`]),
    ...(room === undefined ? [] : [`From ${room.earliest} to ${room.latest} is as good.`]),
    ...why,
    `By row ${row} of rule ${rule}, version ${version}.`,
  ];
}
