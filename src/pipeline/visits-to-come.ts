import { daysFor, type Visit, visitsOf } from '../surveillance/index.js';
import { bookedFrom, daysOfVisit } from './days-of-visit.js';
import type { FollowUp } from './follow-ups.js';

/** One day of one patient, and all that it answers. */
export interface VisitToCome {
  /** By target; one or more. */
  readonly followUps: readonly FollowUp[];
  /** The earliest target of them, which may have passed. */
  readonly targetOn: string;
  /** The first and last day that the visit may be on, from the first day that is asked for. */
  readonly earliestOn: string;
  readonly latestOn: string;
  readonly urgency: Visit['urgency'];
  /** The window of one of them at least is over: the first day with a place is wanted. */
  readonly overdue: boolean;
}

/** Open examinations that a visit answers which is booked already. */
export interface JoinedVisit {
  readonly followUps: readonly FollowUp[];
  /** Day of the appointment. */
  readonly on: string;
}

/**
 * The visits that open examinations make up: those that want a day, and those that a booked visit
 * answers. An appointment before `fromOn` holds nothing.
 *
 * @param untilOn the last day for what is overdue
 */
export function visitsToCome(
  followUps: readonly FollowUp[],
  fromOn: string,
  untilOn: string,
): { readonly visits: readonly VisitToCome[]; readonly joined: readonly JoinedVisit[] } {
  const known = new Map(followUps.filter(isOpenExamination).map((one) => [one.id, one]));
  const grouped = visitsOf(
    [...known.values()].flatMap((one) => {
      const { id, patient, item } = one;
      const window = daysOfVisit(item, fromOn);
      return window === undefined
        ? []
        : [{ id, patient, route: item.route, urgency: item.urgency, window }];
    }),
  );
  const visits: VisitToCome[] = [];
  const joined: JoinedVisit[] = [];
  for (const visit of grouped) {
    const all = visit.ids.flatMap((id) => known.get(id) ?? []);
    const booked = all.flatMap((one) => bookedFrom(one.item, fromOn) ?? []);
    const others = all.filter((one) => bookedFrom(one.item, fromOn) === undefined);
    const [on] = booked;
    if (on === undefined) visits.push(toCome(visit, all, fromOn, untilOn));
    else if (others.length > 0) joined.push({ followUps: others, on });
  }
  return { visits, joined };
}

/** What is to be confirmed or provisional waits for a person. */
const isOpenExamination = ({ item }: FollowUp): boolean =>
  item.kind === 'endoscopy' && item.state === 'open';

function toCome(
  { window, urgency }: Visit,
  followUps: readonly FollowUp[],
  fromOn: string,
  untilOn: string,
): VisitToCome {
  const windows = followUps.flatMap((one) => daysFor(one.item) ?? []);
  const [firstTarget = fromOn] = windows.map(({ target }) => target).sort();
  const inTime = windows.map(({ latest }) => latest).filter((latest) => latest >= fromOn);
  const [lastInTime = untilOn] = inTime.sort();
  const overdue = inTime.length < windows.length;
  return {
    followUps,
    targetOn: window.target > fromOn ? window.target : firstTarget,
    earliestOn: window.earliest,
    latestOn: overdue ? lastInTime : window.latest,
    urgency: overdue ? 'urgent' : urgency,
    overdue,
  };
}
