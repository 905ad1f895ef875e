/** Everything that the delivery says about itself. */
export type DeliveryEvent =
  | 'delivered'
  | 'waiting-patient'
  | 'retry-planned'
  | 'dead-letter'
  | 'released'
  | 'claim-lost'
  | 'non-conformant-server'
  | 'store-unavailable'
  | 'target-down'
  | 'target-up';

/** The only fields that may reach a log: no body, no identifier, no URL. */
export interface DeliveryLogFields {
  /** Our own opaque case id. */
  readonly caseId?: string;
  /** State number of the case. */
  readonly state?: number;
  /** HTTP status. */
  readonly status?: number;
  /** Failure class. */
  readonly class?: string;
  /** Which attempt this was, counted from 1. */
  readonly attempt?: number;
  /** A word of our own for what went wrong. */
  readonly fault?: string;
}

export type DeliveryLog = (event: DeliveryEvent, fields: DeliveryLogFields) => void;
