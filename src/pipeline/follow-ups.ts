import type { Identifier } from '../contract/index.js';
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
  /** Due window over and neither done nor booked. */
  readonly overdue: boolean;
  /** Open items of the same patient that one visit answers with this one, ids, itself left out. */
  readonly visitWith: readonly string[];
}

/** Which follow-ups are asked for; all that is given must match. */
export interface FollowUpQuery {
  /** Days, YYYY-MM-DD: windows that overlap them. */
  readonly from?: string;
  readonly to?: string;
  /** States of the item; none given: those that somebody still has to do something about. */
  readonly states?: readonly PlanItem['state'][];
  readonly kind?: PlanItem['kind'];
  readonly route?: PlanItem['route'];
  /** `overdue`: latest day before today; `unbooked-soon`: not booked, latest day within so many days. */
  readonly due?: 'overdue' | 'unbooked-soon';
  readonly booked?: boolean;
  /** Changes after this cursor, of any state; excludes every other filter but `limit`. */
  readonly since?: string;
  readonly limit: number;
  /** Id of the last item of the page before. */
  readonly after?: string;
}

export interface FollowUpPage {
  readonly followUps: readonly FollowUp[];
  /** Where the next page begins; absent on the last one. */
  readonly next?: string;
  /** Where to ask for changes from. */
  readonly cursor: string;
}
