import type { Assessment } from '../assessment/index.js';
import type { Problem } from '../kernel/index.js';
import type { FollowUpPlan } from '../surveillance/index.js';
import type { Change } from './change.js';
import type { MessageKind, RecordMessage } from './message.js';

/** Everything that is known of a case after a set of messages; plain JSON. */
export interface RecordVersion {
  readonly caseId: string;
  /** Count of the distinct messages. */
  readonly state: number;
  /** The greatest `sentAt` of the messages, as sent. */
  readonly stateAt: string;
  /** Version of the unit's settings under which this was computed. */
  readonly settingsVersion: number;
  /** Every message of the case, in the order of a record. */
  readonly messages: readonly RecordMessage[];
  readonly assessment: Assessment;
  /** What comes after the case, and what an earlier plan may have asked for and this one does not. */
  readonly plan: FollowUpPlan;
  /** What the message that was sent last has changed; absent for the first one. */
  readonly change?: Change;
  /** Messages that contradict the case; kept, not applied, and in need of a person. */
  readonly setAside: readonly {
    readonly kind: MessageKind;
    readonly source: string;
    /** The sender's identifier of the message; absent where a case has one of the kind. */
    readonly key?: { readonly system: string; readonly value: string };
    readonly revision: number;
    readonly problems: readonly Problem[];
  }[];
}

/** Reads back what `JSON.stringify` made of a record version: our own writing, not parsed again. */
export function readVersion(text: string): RecordVersion {
  return JSON.parse(text) as RecordVersion;
}
