/** Of a window that is proposed, of a booked day, and of one that is no more. */
export type EventStatus = 'tentative' | 'confirmed' | 'cancelled';

/** An open window or a booked day of one follow-up, as a calendar is to show it. */
export interface CalendarEvent {
  /** Keyed id of the follow-up: says nothing about the patient, and stays for ever. */
  readonly id: string;
  /** The id by which the scheduler knows the case: opaque, no number of the patient's. */
  readonly caseId: string;
  /** 0 at first, one more with each revision. */
  readonly sequence: number;
  readonly status: EventStatus;
  /** First day of the window, or the booked day; YYYY-MM-DD. */
  readonly firstOn: string;
  /** Last day, itself a part of the window. */
  readonly lastOn: string;
  /** When the event last changed, an instant with offset. */
  readonly changedAt: string;
}
