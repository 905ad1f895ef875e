import type { Asked, OutcomeStore } from '../outcomes/index.js';
import type { CaseFacts, MessageKind } from '../record/index.js';
import type { DeliveryState } from './delivery-state.js';
import type { FeedStore, FollowUpStore, FollowUpsToStore } from './follow-up-ports.js';

/** A message as it lies in the journal: the bytes exactly as they came. */
export interface JournalEntry {
  readonly caseId: string;
  readonly kind: MessageKind;
  readonly source: string;
  /** The sender's key within kind and case; empty where a case has one message of the kind. */
  readonly naturalKey: string;
  readonly revision: number;
  /** ISO 8601 instant with offset, as sent. */
  readonly sentAt: string;
  /** SHA-256 of `bytes`, hexadecimal. */
  readonly hash: string;
  readonly bytes: Uint8Array;
  /** Instant of our clock, UTC. */
  readonly receivedAt: string;
}

/** What is stored beside the journal for one state of a case. */
export interface StateToStore extends WaitingToStore {
  /** What the newest message changed, a plain sentence without patient data. */
  readonly changed?: string;
  /** When time alone changes the record next, an instant; absent: never. */
  readonly deadlineAt?: string;
  /** The record version as JSON text. */
  readonly version: string;
  /** One flat row of facts, for counting. */
  readonly facts: CaseFacts;
  /** The items of the plan, for the list of follow-ups. */
  readonly followUps: FollowUpsToStore;
}

/** What is stored while messages wait for the case that they are about. */
export interface WaitingToStore {
  readonly caseId: string;
  /** Count of the distinct messages of the case. */
  readonly state: number;
  /** The sender whose case it is. */
  readonly source: string;
  /** Keyed hashes by which `search` finds the case; never the identifiers themselves. */
  readonly searchKeys: Readonly<Record<string, string>>;
}

/** One case, locked against every other writer until the work is done. */
export interface CaseJournal {
  /** Every message of the case, oldest first. */
  entries(): Promise<readonly JournalEntry[]>;
  /** @param why said in the timeline beside the kind, where a message of our own has a reason */
  append(entry: JournalEntry, why?: string): Promise<void>;
  /** The same for a message that a higher revision came before: kept, never applied. */
  appendStale(entry: JournalEntry): Promise<void>;
  /** Stores version, facts and search keys, and puts the state into the outbox. */
  saveState(state: StateToStore): Promise<void>;
  /** Stores that there is no case yet; nothing is queued. */
  saveWaiting(waiting: WaitingToStore): Promise<void>;
  /** Corrects when time alone changes the record next. */
  saveDeadline(at: string | undefined): Promise<void>;
  /** Stores the follow-ups of a state that was saved without them. */
  saveFollowUps(state: number, followUps: FollowUpsToStore): Promise<void>;
}

export interface TimelineEvent {
  /** Instant of our clock, UTC. */
  readonly at: string;
  readonly event:
    | 'received'
    | 'received-stale'
    | 'assessed'
    | 'queued'
    | 'superseded'
    | 'sending'
    | 'delivered'
    | 'retry-planned'
    | 'waiting-patient'
    | 'waiting-case'
    | 'dead-letter';
  /** State number the event is about. */
  readonly state: number;
  /** A plain sentence without patient data, where there is more to say. */
  readonly detail?: string;
}

/** What the journal says of a message without its content. */
export type KeptMessage = Omit<JournalEntry, 'caseId' | 'hash' | 'bytes'>;

export interface StoredCase {
  readonly caseId: string;
  readonly source: string;
  readonly state: number;
  /** In the order of arrival. */
  readonly messages: readonly KeptMessage[];
  /** The record version as JSON text; absent while messages wait for their case. */
  readonly version?: string;
  readonly delivery: DeliveryState;
  readonly timeline: readonly TimelineEvent[];
}

export interface SearchHit {
  readonly caseId: string;
  readonly state: number;
  readonly delivery: DeliveryState['name'];
  /** Instant of our clock at which the case first came, UTC. */
  readonly receivedAt: string;
  /** Begin of the procedure whose specimen waits for its final report, an instant. */
  readonly awaitsPathologySince?: string;
}

export interface SearchQuery {
  /** All must match; values are keyed hashes. */
  readonly searchKeys: Readonly<Record<string, string>>;
  readonly delivery?: DeliveryState['name'];
  /** Cases whose specimen waits for its final report alone. */
  readonly awaiting?: 'pathology';
  readonly source?: string;
  readonly limit: number;
  /** caseId of the last hit of the page before. */
  readonly after?: string;
}

/** Everything durable. Throws StoreUnavailable for faults of the database. */
export interface RecordStore {
  readonly followUps: FollowUpStore;
  readonly feeds: FeedStore;
  readonly outcomes: OutcomeStore;
  /** Facts of the cases that are asked for, a page at a time, all of one moment. */
  facts(asked: Asked): AsyncIterable<readonly CaseFacts[]>;
  /** Runs the work in one transaction under a lock of this case; commits when it returns. */
  inCase<T>(caseId: string, work: (journal: CaseJournal) => Promise<T>): Promise<T>;
  read(caseId: string): Promise<StoredCase | undefined>;
  search(query: SearchQuery): Promise<readonly SearchHit[]>;
  /** Every message of a case with its content, oldest first; no lock is held. */
  entries(caseId: string): Promise<readonly JournalEntry[]>;
  /** Ids of cases whose deadline has come, in their order. @param after the last one seen */
  pastDeadline(now: string, limit: number, after?: string): Promise<readonly string[]>;
  /** How many cases have not come though messages about them have waited since before. */
  countWaiting(before: string): Promise<number>;
  /** Does the work unless another program is at it. @returns whether it was done here */
  alone(work: () => Promise<void>): Promise<boolean>;
  /** Whether the last turn of this name is a day ago or longer; then this is the next one. */
  dailyTurn(name: string, now: string): Promise<boolean>;
  /** Rejects when the database cannot be written. */
  ready(): Promise<void>;
}

/** A claim on the newest state of one case, held until the lease ends. */
export interface Claim {
  readonly caseId: string;
  readonly state: number;
  /** The record version as JSON text. */
  readonly version: string;
  /** Attempts made before this one that counted against the limit. */
  readonly attempts: number;
  /** When the case first entered the present run of attempts, UTC instant. */
  readonly queuedAt: string;
  /** Grows with every claim; a late result with an old number is refused. */
  readonly fence: number;
}

/** What became of one attempt. */
export type AttemptResult =
  | { readonly kind: 'delivered'; readonly detail: string; readonly locations: readonly string[] }
  | {
      readonly kind: 'retry';
      readonly failureClass: FailureClass;
      readonly reason: string;
      readonly afterMs: number;
      /** Whether the attempt counts against the limit. */
      readonly counts: boolean;
    }
  | { readonly kind: 'waiting-patient'; readonly reason: string; readonly afterMs: number }
  | { readonly kind: 'dead-letter'; readonly failureClass: FailureClass; readonly reason: string };

export type FailureClass =
  | 'destination'
  | 'unknown'
  | 'bounded'
  | 'case'
  | 'ambiguous'
  | 'non-conformant-server';

/** The queue of states to deliver. At most one claim per case; the newest state alone is sent. */
export interface Outbox {
  /** Takes the due case that has waited longest, or undefined when none is due. */
  claim(leaseMs: number): Promise<Claim | undefined>;
  /** @returns false when the claim was lost to another worker; then nothing was written */
  settle(claim: Claim, result: AttemptResult): Promise<boolean>;
  /** Keeps a long attempt alive. @returns false when the claim was lost */
  extend(claim: Claim, leaseMs: number): Promise<boolean>;
  /** Calls back when something was queued by any process; a hint, not a promise. */
  onQueued(wake: () => void): Promise<() => Promise<void>>;
  /** Milliseconds until the next row falls due, or undefined when nothing waits. */
  nextDueInMs(): Promise<number | undefined>;
  counts(): Promise<Readonly<Record<DeliveryState['name'], number>>>;
}
