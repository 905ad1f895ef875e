import type { FeedEvent, StoredFeed, StoredFollowUp } from '../pipeline/index.js';

/** One row an item of a plan, the newest plan of its case or an earlier one. */
export interface FollowUpsTable {
  readonly id: string;
  readonly case_id: string;
  readonly item_key: string;
  readonly patient_key: string;
  readonly kind: string;
  readonly route: string;
  readonly item_state: StoredFollowUp['itemState'];
  /** YYYY-MM-DD; a task without a day has the last one that there is. */
  readonly target_on: string;
  readonly earliest_on: string | null;
  readonly latest_on: string | null;
  readonly booked_on: string | null;
  /** JSON kept as text. */
  readonly document: string;
  /** State of the record that changed it last. */
  readonly state: number;
  readonly changed_at: Date;
  /** Transaction that changed it last, decimal. */
  readonly changed_tx: string;
  /** Null with all that follows where no calendar ever showed it. */
  readonly calendar_status: FeedEvent['status'] | null;
  readonly first_on: string | null;
  readonly last_on: string | null;
  readonly sequence: number | null;
  readonly calendar_changed_at: Date | null;
}

export interface FeedsTable {
  readonly id: string;
  readonly token_hash: string;
  readonly route: NonNullable<StoredFeed['route']> | null;
  readonly created_at: Date;
  readonly expires_at: Date;
  readonly revoked_at: Date | null;
}
