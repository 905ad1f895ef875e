import {
  assignPlaces,
  type OpenItem,
  type Route,
  type Session,
  type Shortfall,
} from '../capacity/index.js';
import { daysBetween, invariant } from '../kernel/index.js';
import type { FollowUp } from './follow-ups.js';
import { type NearestPlace, nearestPlaces } from './nearest-places.js';
import { type JoinedVisit, type VisitToCome, visitsToCome } from './visits-to-come.js';

export interface PlacedVisit extends VisitToCome {
  readonly on: string;
  /** Of the session. */
  readonly session: Route;
  /** From the target; negative: before it. */
  readonly daysOff: number;
}

export interface UnplacedVisit extends VisitToCome {
  /** No session of the route inside the window, or others have all the places. */
  readonly why: 'no-session' | 'full';
  /** The window goes on after the last session that was told. */
  readonly runsOn: boolean;
  /** A place that is left, outside the window; absent: there is none. */
  readonly nearest?: NearestPlace;
}

/** Days for those who have none; a proposal, nothing is booked. */
export interface Proposal {
  readonly fromOn: string;
  /** Day of the last session. */
  readonly untilOn: string;
  /** They need no place. By day. */
  readonly joined: readonly JoinedVisit[];
  /** By day. */
  readonly placed: readonly PlacedVisit[];
  /** By target. */
  readonly unplaced: readonly UnplacedVisit[];
  /** Places that lack, by month of the target. */
  readonly shortfall: readonly Shortfall[];
  /** Visits whose target lies after the last session. */
  readonly later: number;
  /** Examinations that are provisional or to be confirmed: a person is first. */
  readonly unsure: number;
}

/**
 * Proposes days for open examinations without an appointment: they are grouped into visits, and
 * the visits get places inside their windows, the more urgent first, near their targets. A window
 * that is over takes any day, the sooner the better, and counts as urgent; that is a decision of
 * this project. What is to be confirmed, provisional or booked gets no day; what a booked visit answers
 * as well needs none.
 *
 * @param sessions free places; those before `fromOn` play no part
 * @param fromOn the first day that may be proposed, YYYY-MM-DD
 * @returns undefined when no session is left
 */
export function proposeDays(
  followUps: readonly FollowUp[],
  sessions: readonly Session[],
  fromOn: string,
): Proposal | undefined {
  const left = sessions.filter(({ on, places }) => on >= fromOn && places > 0);
  const untilOn = left
    .map(({ on }) => on)
    .sort()
    .at(-1);
  if (untilOn === undefined) return undefined;
  const { visits, joined } = visitsToCome(followUps, fromOn, untilOn);
  const due = visits.filter(({ targetOn }) => targetOn <= untilOn);
  const items = due.map((visit, at) => openItemOf(visit, keyOf(at), fromOn));
  const { placed, unplaced, shortfall } = assignPlaces(items, left);
  const visitOf = ({ key }: { readonly key: string }): VisitToCome => {
    const visit = due[Number(key)];
    invariant(visit !== undefined, 'a place belongs to a visit');
    return visit;
  };
  const nearest = nearestPlaces(unplaced.map(visitOf), left, placed);
  return {
    fromOn,
    untilOn,
    joined,
    placed: placed.map((one) => {
      const visit = visitOf(one);
      const daysOff = daysBetween(visit.targetOn, one.on);
      return { ...visit, on: one.on, session: one.route, daysOff };
    }),
    unplaced: unplaced.map((one, at) => {
      const visit = visitOf(one);
      const place = nearest[at];
      const runsOn = visit.latestOn > untilOn;
      return { ...visit, why: one.why, runsOn, ...(place === undefined ? {} : { nearest: place }) };
    }),
    shortfall,
    later: visits.length - due.length,
    unsure: followUps.filter(isUnsure).length,
  };
}

const isUnsure = ({ item: { kind, state } }: FollowUp): boolean =>
  kind === 'endoscopy' && (state === 'provisional' || state === 'to-confirm');

/** Sorts as the number does. */
const keyOf = (at: number): string => `${at}`.padStart(9, '0');

function openItemOf(visit: VisitToCome, key: string, fromOn: string): OpenItem {
  const { followUps, earliestOn, targetOn, latestOn, urgency } = visit;
  const [first] = followUps;
  invariant(first !== undefined, 'a visit answers something');
  const { route } = first.item;
  const targetFrom = targetOn < fromOn ? fromOn : targetOn;
  return { key, route, earliestOn, targetOn: targetFrom, latestOn, urgency };
}
