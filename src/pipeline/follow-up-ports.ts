import type { PlanItem, Window } from '../surveillance/index.js';

/** What a calendar shows of a follow-up: an open window, or a booked day. */
export interface CalendarShare {
  readonly status: 'tentative' | 'confirmed';
  /** Calendar days; the last one is a part of it. */
  readonly firstOn: string;
  readonly lastOn: string;
}

/** One follow-up of a case as it is stored: columns to find it by, and what it says. */
export interface FollowUpRow {
  /** Keyed UUID of case and item. */
  readonly id: string;
  /** Key of the item within its case. */
  readonly itemKey: string;
  readonly kind: PlanItem['kind'];
  readonly route: PlanItem['route'];
  readonly itemState: PlanItem['state'];
  /** As proposed, else as due; absent for a task without a day. */
  readonly window?: Window;
  /** Day of the appointment that holds, YYYY-MM-DD. */
  readonly bookedOn?: string;
  /** Absent where a calendar is not to show it. */
  readonly calendar?: CalendarShare;
  /** Identifiers and item as JSON text. */
  readonly document: string;
}

/** Every follow-up of a case; what is stored beside them is superseded. */
export interface FollowUpsToStore {
  /** Keyed hash of the patient. */
  readonly patientKey: string;
  readonly rows: readonly FollowUpRow[];
}

/** A follow-up as it lies in the store. */
export interface StoredFollowUp {
  readonly id: string;
  readonly caseId: string;
  readonly itemKey: string;
  readonly itemState: PlanItem['state'];
  readonly patientKey: string;
  /** State of the record that it was last changed by. */
  readonly state: number;
  /** UTC instant of the store's clock. */
  readonly changedAt: string;
  readonly document: string;
}

/** Which follow-ups a page shows, by target day and id; a task without a day comes last. */
export interface FollowUpListing {
  readonly states: readonly PlanItem['state'][];
  /** Days, YYYY-MM-DD: windows that overlap them; with `booked` true, appointments on them. */
  readonly from?: string;
  readonly to?: string;
  readonly kind?: PlanItem['kind'];
  readonly route?: PlanItem['route'];
  readonly booked?: boolean;
  /** Window over, or over within the days; and no appointment from `today` on. */
  readonly due?: Due;
  readonly limit: number;
  /** Where the page before ended. */
  readonly after?: Place;
}

export interface Due {
  /** YYYY-MM-DD. */
  readonly today: string;
  /** Last day of windows: before today where absent, else from today until then. */
  readonly until?: string;
}

/** Where a page ended: the target day that the last item had when it was listed, and its id. */
export interface Place {
  readonly on: string;
  readonly id: string;
}

/** A point in the order of changes. */
export interface ChangePoint {
  /** Tells one database from another. */
  readonly mark: string;
  /** Number of a transaction, decimal. */
  readonly transaction: string;
  /** Last follow-up seen of that transaction; empty: none. */
  readonly id: string;
}

/** An event of a calendar feed. */
export interface FeedEvent {
  readonly id: string;
  readonly caseId: string;
  readonly status: CalendarShare['status'] | 'cancelled';
  readonly firstOn: string;
  readonly lastOn: string;
  /** Rises with each change of the event. */
  readonly sequence: number;
  /** UTC instant. */
  readonly changedAt: string;
}

/** The follow-ups of all cases. Throws StoreUnavailable for faults of the database. */
export interface FollowUpStore {
  find(id: string): Promise<StoredFollowUp | undefined>;
  /** With the place where the next page begins, absent on the last one. */
  list(listing: FollowUpListing): Promise<{
    readonly followUps: readonly StoredFollowUp[];
    readonly next?: Place;
  }>;
  /** Every change that is committed by now lies before this point. */
  now(): Promise<ChangePoint>;
  /** Changes after a point, in their order. @returns undefined: the point is none of this database */
  changes(
    after: ChangePoint,
    limit: number,
  ): Promise<
    { readonly followUps: readonly StoredFollowUp[]; readonly until: ChangePoint } | undefined
  >;
  /** Examinations that are still to come, of these patients. */
  toCome(patientKeys: readonly string[]): Promise<readonly StoredFollowUp[]>;
  /** Events of follow-ups whose last day is this one or later. */
  events(lastOnFrom: string, route?: PlanItem['route']): Promise<readonly FeedEvent[]>;
  /** Cases whose follow-ups were never stored, after the last one seen, by id. */
  unfilled(limit: number, after?: string): Promise<readonly string[]>;
}

/** A subscription to the calendar; its secret itself is kept nowhere. */
export interface StoredFeed {
  readonly id: string;
  /** Follow-ups of this route alone; absent: of both. */
  readonly route?: PlanItem['route'];
  /** UTC instants. */
  readonly createdAt: string;
  readonly expiresAt: string;
  readonly revokedAt?: string;
}

export interface FeedStore {
  /** @param tokenHash SHA-256 of the secret, hexadecimal */
  create(feed: StoredFeed, tokenHash: string): Promise<void>;
  /** Oldest first. */
  list(): Promise<readonly StoredFeed[]>;
  /** @returns undefined when there is no such feed */
  revoke(id: string, at: string): Promise<StoredFeed | undefined>;
  findByHash(tokenHash: string): Promise<StoredFeed | undefined>;
}
