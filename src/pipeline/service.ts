import type { Bundle } from 'fhir/r4.js';
import type { Role } from '../contract/index.js';
import type { Problem } from '../kernel/index.js';
import type { Assessed, MessageKind, RecordVersion, SentKind } from '../record/index.js';
import type { BookingReceipt } from './bookings.js';
import type { DeliveryState } from './delivery-state.js';
import type { FeedText, FeedWish } from './feeds.js';
import type { StoredFeed } from './follow-up-ports.js';
import type { FollowUp, FollowUpQuery, FoundFollowUps, ScheduledFollowUp } from './follow-ups.js';
import type { OutcomesService } from './outcomes-service.js';
import type { SearchHit, TimelineEvent } from './ports.js';

/** What the service does for its callers; `http` and `cli` know nothing else of it. */
export interface Service extends OutcomesService {
  /** Checks, stores and queues a message. */
  receive(kind: SentKind, bytes: Uint8Array, caller: Caller): Promise<Receipt>;
  /** The same without keeping anything: what would be stored and sent. */
  check(kind: SentKind, bytes: Uint8Array, caller: Caller): Promise<DryRun>;
  /** @returns undefined when there is no such case, or not for this caller */
  readCase(caseId: string, caller: Caller): Promise<CaseView | undefined>;
  /** What was, or would be, sent for the newest state. */
  readBundle(caseId: string, caller: Caller): Promise<Bundle | undefined>;
  searchCases(search: CaseSearch, caller: Caller): Promise<readonly FoundCase[]>;
  /** Keeps what a scheduler says of the appointment for a follow-up, and for others it names. */
  receiveBooking(followUpId: string, bytes: Uint8Array, caller: Caller): Promise<BookingReceipt>;
  /** A caller that is not of the records team is told what a scheduler needs, and no more. */
  listFollowUps(
    query: FollowUpQuery,
    caller: Caller,
  ): Promise<FoundFollowUps<FollowUp | ScheduledFollowUp>>;
  /** @returns undefined when there is no such follow-up */
  readFollowUp(id: string, caller: Caller): Promise<FollowUp | ScheduledFollowUp | undefined>;
  createFeed(wish: FeedWish): Promise<StoredFeed>;
  /** Those that are over or revoked too, oldest first. */
  listFeeds(): Promise<readonly StoredFeed[]>;
  /** @returns undefined when there is no such feed */
  revokeFeed(id: string): Promise<StoredFeed | undefined>;
  /**
   * @param tokenHash SHA-256 of the secret of a feed, hexadecimal
   * @returns undefined when no such feed is in force
   */
  readFeed(tokenHash: string): Promise<FeedText | undefined>;
  /** Rejects when the store cannot be written. */
  ready(): Promise<void>;
}

/** Who asks. A caller with a source sees and sends that source's cases only. */
export interface Caller {
  readonly source?: string;
  /** Absent for a program of this machine that holds no key. */
  readonly role?: Role;
}

interface Identified {
  readonly system: string;
  readonly value: string;
}

/** The lasting proof that a message was kept. The same for every repetition. */
export interface MessageReceipt {
  readonly caseId: string;
  readonly case: Identified;
  readonly kind: MessageKind;
  readonly revision: number;
  /** SHA-256 of the bytes, hexadecimal. */
  readonly sha256: string;
  /** UTC instant. */
  readonly receivedAt: string;
}

export type Receipt =
  | {
      readonly kind: 'accepted' | 'repeated';
      readonly receipt: MessageReceipt;
      readonly view: Answer | WaitingAnswer;
    }
  /** The document cannot be read as JSON at all, or breaks rules of the contract. */
  | { readonly kind: 'unreadable' | 'invalid'; readonly problems: readonly Problem[] }
  /** Contradicts what is stored. A stale message is kept in the journal and never applied. */
  | { readonly kind: 'conflict'; readonly problem: Problem }
  /** The message names a source that is not the caller's. */
  | { readonly kind: 'forbidden'; readonly problem: Problem };

/** What the case means, as far as is known now. */
export interface Answer {
  readonly state: number;
  readonly assessment: RecordVersion['assessment'];
  /** What comes after the case: examinations and tasks with their windows, and why. */
  readonly plan: RecordVersion['plan'];
  /** What its events and examinations mean; absent while there are none. */
  readonly afterwards?: Assessed['afterwards'];
  /** Why the case was taken back; absent while it stands. */
  readonly withdrawn?: string;
  /** A specimen has waited for its final report for too long. */
  readonly pathologyOverdue?: true;
  /** What the message that was sent last has changed. */
  readonly change?: NonNullable<RecordVersion['change']>;
  /** Messages that contradict the case and are not applied: a person must look. */
  readonly setAside?: RecordVersion['setAside'];
  readonly caution: string;
}

/** Messages came that are about a case which has not come yet; they join it when it comes. */
export interface WaitingAnswer {
  readonly state: number;
  readonly waitingFor: 'case';
  /** They have waited longer than the unit allows: somebody must look. */
  readonly overdue?: true;
}

export type DryRun =
  | { readonly kind: 'unreadable' | 'invalid'; readonly problems: readonly Problem[] }
  | {
      readonly kind: 'valid';
      readonly view: Answer | WaitingAnswer;
      /** Rules of severity warning that the Bundle breaks. */
      readonly warnings: readonly Problem[];
      /** Absent while there is no case to send. */
      readonly bundle?: Bundle;
    };

interface CaseStanding {
  readonly caseId: string;
  readonly delivery: DeliveryState;
  /** Every message that is known, in the order of arrival. */
  readonly messages: readonly ListedMessage[];
  readonly timeline: readonly TimelineEvent[];
}

/** What a clerk sees of a message. */
export interface ListedMessage {
  readonly kind: MessageKind;
  readonly source: string;
  /** The sender's identifier of it; absent where a case has one of the kind. */
  readonly key?: Identified;
  /** Of a booking: key of the item of the plan. */
  readonly item?: string;
  readonly revision: number;
  /** As sent. */
  readonly sentAt: string;
  /** UTC instant. */
  readonly receivedAt: string;
  /** `waiting`: for the case; `set-aside`: it contradicts the case and is not applied. */
  readonly standing: 'applied' | 'superseded' | 'set-aside' | 'waiting';
}

/** A case that a search has found. */
export interface FoundCase extends Omit<SearchHit, 'awaitsPathologySince'> {
  /** Whole days since the procedure whose specimen waits for its final report. */
  readonly awaitsPathologyDays?: number;
}

export type CaseView = CaseStanding &
  (WaitingAnswer | (Answer & { readonly case: Identified; readonly revision: number }));

export interface CaseSearch {
  readonly case?: Identified;
  readonly patient?: Identified;
  readonly session?: Identified;
  readonly delivery?: DeliveryState['name'];
  readonly awaiting?: 'pathology';
  readonly limit: number;
  readonly after?: string;
}
