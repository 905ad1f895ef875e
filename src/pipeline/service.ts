import type { Bundle } from 'fhir/r4.js';
import type { Problem } from '../kernel/index.js';
import type { MessageKind, RecordVersion } from '../record/index.js';
import type { DeliveryState } from './delivery-state.js';
import type { SearchHit, TimelineEvent } from './ports.js';

/** What the service does for its callers; `http` and `cli` know nothing else of it. */
export interface Service {
  /** Checks, stores and queues a message. */
  receive(kind: MessageKind, bytes: Uint8Array, caller: Caller): Promise<Receipt>;
  /** The same without keeping anything: what would be stored and sent. */
  check(kind: MessageKind, bytes: Uint8Array, caller: Caller): Promise<DryRun>;
  /** @returns undefined when there is no such case, or not for this caller */
  readCase(caseId: string, caller: Caller): Promise<CaseView | undefined>;
  /** What was, or would be, sent for the newest state. */
  readBundle(caseId: string, caller: Caller): Promise<Bundle | undefined>;
  searchCases(search: CaseSearch, caller: Caller): Promise<readonly SearchHit[]>;
  /** Rejects when the store cannot be written. */
  ready(): Promise<void>;
}

/** Who asks. A caller with a source sees and sends that source's cases only. */
export interface Caller {
  readonly source?: string;
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
  readonly timeline: readonly TimelineEvent[];
}

export type CaseView = CaseStanding &
  (WaitingAnswer | (Answer & { readonly case: Identified; readonly revision: number }));

export interface CaseSearch {
  readonly case?: Identified;
  readonly patient?: Identified;
  readonly session?: Identified;
  readonly delivery?: DeliveryState['name'];
  readonly limit: number;
  readonly after?: string;
}
