import type { CancelReason, Identifier, Route } from '../../contract/index.js';
import type { Basis, Citation } from '../../kernel/index.js';
import type { Told } from '../../rules/index.js';
import type { FollowUpTask } from '../schedule.js';
import type { ReasonCode } from './reasons.table.js';

/** Calendar days, earliest <= target <= latest. */
export interface Window {
  readonly earliest: string;
  readonly target: string;
  readonly latest: string;
}

/** What a person is to do where no examination is planned, or beside one. */
export type PlanTask =
  | FollowUpTask
  | 'return-to-screening'
  | 'surgery-referral'
  | 'additional-treatment'
  | 'recurrence-treatment'
  | 'stricture-call'
  | 'booking-check'
  | 'helicobacter-test'
  | 'helicobacter-treatment'
  | 'helicobacter-confirmation';

/**
 * `provisional`: pathology is not final, so that nothing is booked on it. `open`: due.
 * `to-confirm`: a person says first whether it stays. `done`: an examination or event answered it.
 * `superseded`: an earlier plan had it, this one has not. `revoked`: it is not wanted any more.
 */
export type ItemState = 'provisional' | 'open' | 'to-confirm' | 'done' | 'superseded' | 'revoked';

/** Why an item is in its state. */
export interface PlanReason {
  readonly code: ReasonCode;
  /** For people. */
  readonly says: string;
}

/** The examination, event or report that answered an item. */
export interface DoneBy {
  readonly kind: 'examination' | 'event' | 'report';
  readonly id: Identifier;
  readonly on: string;
  /** Beside the window that was due. */
  readonly timing: 'early' | 'in-window' | 'late';
}

/** Another row that asks for the same examination at another date, or the same. */
export interface Overlap {
  readonly row: string;
  readonly rule: string;
  readonly target?: string;
}

/** What the scheduler last said of the appointment for an item. */
export interface Booking {
  readonly status: 'booked' | 'cancelled' | 'did-not-attend';
  /** ISO 8601 instants with offset, as the scheduler said them. */
  readonly startsAt: string;
  readonly endsAt: string;
  /** Calendar day of `startsAt` in its own offset. */
  readonly on: string;
  /** Whether it had been booked at another time before. */
  readonly moved: boolean;
  /** Scheduler's instant of saying so. */
  readonly toldAt: string;
  /** Why it was cancelled, where that was told. */
  readonly reason?: CancelReason;
  /**
   * Whose Appointment it is on the FHIR server: ours, made of the word of a scheduler that has
   * none there, or another system's, which we read and never write.
   */
  readonly heldBy: 'service' | 'server';
  /** Reference of another system's Appointment, `Appointment/id`. */
  readonly appointment?: string;
}

/** One examination or task of a plan; a request to a scheduler. */
export interface PlanItem {
  /** `row.sequence`; the same as long as it means the same, within its case. */
  readonly key: string;
  readonly kind: 'endoscopy' | 'task';
  readonly task?: PlanTask;
  /** Row of the follow-up table, or of the tables of other timed items. */
  readonly row: string;
  /** 1 for the first of its row, one more for each that follows. */
  readonly sequence: number;
  /** Whether it is the first examination of its series. */
  readonly first: boolean;
  /** The rule that found the row, and its version. */
  readonly rule: string;
  readonly version: number;
  /** The rule set that the row belongs to. */
  readonly ruleSet: string;
  readonly route: Route;
  /** How and for what to look, or what to do. */
  readonly look: string;
  /** Why this row. */
  readonly says: readonly string[];
  readonly cites: readonly Citation[];
  /** The weakest of the sources. */
  readonly basis: Basis;
  /** What the rule was told. */
  readonly inputs: Told;
  /** The day that its series counts from; of a task the day that its window counts from. */
  readonly anchorOn: string;
  /** The day that the window counts from. */
  readonly countsFrom: string;
  /** By the rule; absent for a task without a day. */
  readonly due?: Window;
  /** The same moved off closed days and never out of `due`. */
  readonly proposed?: Window;
  /**
   * Where the rule names one day: the days around it on which it may as well be. `due` stays what
   * the rule says.
   */
  readonly room?: Window;
  /** Every day of the window is closed: another one is to be agreed on. */
  readonly noOpenDay?: true;
  /** What follows, as in a follow-up answer: `6,12*`; empty where nothing is planned. */
  readonly follows: string;
  /** How soon it is wanted beside its window, in words of FHIR R4 `request-priority`. */
  readonly urgency: 'routine' | 'urgent';
  readonly state: ItemState;
  readonly reasons: readonly PlanReason[];
  readonly doneBy?: DoneBy;
  readonly booking?: Booking;
  /** Of the check of a booking: key of the item that is booked. */
  readonly about?: string;
  /** Key of the item that stands instead of a superseded one. */
  readonly replacedBy?: string;
  readonly overlaps: readonly Overlap[];
}

/** What comes after a case. Plain JSON; a pure function of what is known. */
export interface FollowUpPlan {
  /** The greatest `sentAt` of what it rests on: its date of calculation. */
  readonly calculatedAt: string;
  readonly settingsVersion: number;
  /** By date and key. */
  readonly items: readonly PlanItem[];
  /** Examinations that no item had asked for; kept, and looked at for what they found. */
  readonly unplanned: readonly { readonly id: Identifier; readonly on: string }[];
  /** What is not planned, and why. */
  readonly notes: readonly PlanNote[];
}

export interface PlanNote {
  readonly note: string;
  readonly says: string;
  readonly cites: readonly Citation[];
}
