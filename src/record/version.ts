import type { Assessment } from '../assessment/index.js';
import type { EsdCase } from '../contract/index.js';

/** A message of a case that passed the contract, as the fold sees it. */
export interface CaseMessage {
  readonly esdCase: EsdCase;
  /** SHA-256 of the bytes that came, hexadecimal. */
  readonly sha256: string;
}

/** A message that a later revision has replaced, with what it meant at its time. */
export interface EarlierMessage extends CaseMessage {
  readonly assessment: Assessment;
}

/** Everything that is known of a case after a set of messages; plain JSON. */
export interface RecordVersion {
  readonly caseId: string;
  /** Count of the distinct messages. */
  readonly state: number;
  /** The greatest `sentAt` of the messages, as sent. */
  readonly stateAt: string;
  /** The message of the highest revision. */
  readonly current: CaseMessage;
  /** Those of lower revisions, rising: what they said and `current` does not is retracted. */
  readonly earlier: readonly EarlierMessage[];
  readonly assessment: Assessment;
  /** Version of the unit's settings under which this was computed. */
  readonly settingsVersion: number;
}

/** Reads back what `JSON.stringify` made of a record version: our own writing, not parsed again. */
export function readVersion(text: string): RecordVersion {
  return JSON.parse(text) as RecordVersion;
}
