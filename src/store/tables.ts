import type { ColumnType, Generated, Selectable } from 'kysely';
import type { DeliveryState } from '../pipeline/index.js';
import type { FactsTable } from './fact-columns.js';
import type { FeedsTable, FollowUpsTable } from './follow-up-tables.js';

/** A column that the database fills and nobody changes. */
type Filled<T> = ColumnType<T, T | undefined, never>;
/** A column that is written once. */
type Once<T> = ColumnType<T, T, never>;

/** Append-only: triggers refuse every change. Text and bytes lie here exactly as they came. */
export interface JournalTable {
  readonly position: Filled<number>;
  readonly case_id: Once<string>;
  readonly kind: Once<string>;
  readonly source: Once<string>;
  readonly natural_key: Once<string>;
  readonly revision: Once<number>;
  readonly sent_at: Once<string>;
  readonly hash: Once<string>;
  readonly bytes: Once<Buffer>;
  readonly received_at: Once<string>;
}

/** One row for each state of each case; `version` is JSON kept as text, byte for byte. */
export interface StatesTable {
  readonly case_id: Once<string>;
  readonly state: Once<number>;
  readonly version: Once<string>;
  readonly created_at: Filled<Date>;
}

/** Keyed hashes by which a case is found; those of its newest state. */
export interface SearchKeysTable {
  readonly case_id: string;
  readonly name: string;
  readonly value: string;
}

/** One row for each case: what is to be sent of it, and how far that is. */
export interface OutboxTable {
  readonly case_id: string;
  /** The sender whose case it is. */
  readonly source: string;
  /** The newest state. */
  readonly state: number;
  readonly status: DeliveryState['name'];
  /** While sending: the state that is on its way; else the one that went last. */
  readonly sending_state: number | null;
  readonly since: Date;
  /** When it is the worker's turn; while sending, when the lease ends; null: nothing to do. */
  readonly due_at: Date | null;
  readonly queued_at: Date;
  /** Claims of the present run that count against the limit, the present one included. */
  readonly attempts: number;
  readonly fence: number;
  readonly worker: string | null;
  readonly reason: string | null;
  readonly failure_class: string | null;
  /** Of the first and the last failed attempt of the present run. */
  readonly first_failed_at: Date | null;
  readonly last_failed_at: Date | null;
  /** What the FHIR server said of the last delivered state. */
  readonly delivered_state: number | null;
  readonly locations: readonly string[];
  /** When time alone changes the record next; null: never. */
  readonly deadline_at: Date | null;
}

/** Append-only: triggers refuse every change. */
export interface TimelineTable {
  readonly position: Filled<number>;
  readonly case_id: Once<string>;
  readonly state: Once<number>;
  readonly at: Once<Date>;
  readonly event: Once<string>;
  readonly detail: Once<string | null>;
}

/** One row, written to prove that the database can be written. */
export interface ReadinessTable {
  readonly single: Generated<boolean>;
  readonly proved_at: Date;
}

/** When something that is done once a day was done last. */
export interface DailyTurnsTable {
  readonly name: string;
  readonly taken_at: Date;
}

export interface Tables {
  readonly journal: JournalTable;
  readonly states: StatesTable;
  readonly facts: FactsTable;
  readonly search_keys: SearchKeysTable;
  readonly outbox: OutboxTable;
  readonly timeline: TimelineTable;
  readonly readiness: ReadinessTable;
  readonly daily_turns: DailyTurnsTable;
  readonly follow_ups: FollowUpsTable;
  readonly feeds: FeedsTable;
}

export type JournalRow = Selectable<JournalTable>;
