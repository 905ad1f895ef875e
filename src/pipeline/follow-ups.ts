import type { Identifier } from '../contract/index.js';
import type { Problem } from '../kernel/index.js';
import type { PlanItem } from '../surveillance/index.js';

/** One item of the plan of a case, as the list of follow-ups shows it. */
export interface FollowUp {
  /** Keyed UUID of case and item; the same as long as the item means the same. */
  readonly id: string;
  readonly caseId: string;
  readonly case: Identifier;
  readonly patient: Identifier;
  /** State of the record that it was last changed by. */
  readonly state: number;
  /** UTC instant of our clock at which it last changed. */
  readonly changedAt: string;
  readonly item: PlanItem;
  /** Window over, not done, and no appointment from today on; a day that is over holds nothing. */
  readonly overdue: boolean;
  /** Open items of the same patient that one visit answers with this one, ids, itself left out. */
  readonly visitWith: readonly string[];
}

/** Which follow-ups are asked for; all that is given must match. */
export interface FollowUpQuery {
  /** Days, YYYY-MM-DD: windows that overlap them; with `booked` true, appointments on them. */
  readonly from?: string;
  readonly to?: string;
  /**
   * States of the item; none given: those that somebody still has to do something about, and with
   * `booked` true those of which the plan does not ask for the examination any more.
   */
  readonly states?: readonly PlanItem['state'][];
  readonly kind?: PlanItem['kind'];
  readonly route?: PlanItem['route'];
  /**
   * Of what is still to come without an appointment from today on: `overdue`, latest day before
   * today; `unbooked-soon`, latest day from today within so many days.
   */
  readonly due?: 'overdue' | 'unbooked-soon';
  /** How far `unbooked-soon` looks ahead. */
  readonly withinDays?: number;
  readonly booked?: boolean;
  /** Changes after this cursor, of any state; excludes every other filter but `limit`. */
  readonly since?: string;
  readonly limit: number;
  /** `next` of the page before. */
  readonly after?: string;
}

export interface FollowUpPage<Shown = FollowUp> {
  readonly followUps: readonly Shown[];
  /** Where the next page begins; absent on the last one. Opaque. */
  readonly next?: string;
  /**
   * Where to ask for changes from; every page of a list has that of the first one, so that what
   * moved from page to page meanwhile is among the changes. Opaque.
   */
  readonly cursor: string;
}

/** `gone`: the cursor is of another database, or of a time that has not come: begin anew. */
export type FoundFollowUps<Shown = FollowUp> =
  | { readonly kind: 'found'; readonly page: FollowUpPage<Shown> }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'gone' };

/** An item as a scheduler sees it: when and where, and nothing of what was found or why. */
export interface ScheduledItem
  extends Pick<
    PlanItem,
    | 'kind'
    | 'task'
    | 'route'
    | 'first'
    | 'urgency'
    | 'due'
    | 'proposed'
    | 'room'
    | 'noOpenDay'
    | 'state'
    | 'reasons'
    | 'booking'
  > {
  readonly doneBy?: Pick<NonNullable<PlanItem['doneBy']>, 'kind' | 'on' | 'timing'>;
  /** Of the check of a booking: id of the follow-up that is booked. */
  readonly about?: string;
  /** Id of the follow-up that stands instead of a superseded one. */
  readonly replacedBy?: string;
}

/** A follow-up as a scheduler sees it. */
export interface ScheduledFollowUp extends Omit<FollowUp, 'item'> {
  readonly item: ScheduledItem;
}
